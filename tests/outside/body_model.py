"""A body in numpy, written apart from the program: joint angles → the ends of its segments.

Lengths: Drillis and Contini (1966); masses and centres: Dempster (1955); both as tabled in Winter,
Biomechanics and Motor Control of Human Movement, 4th ed., figure 4.1 and table 4.1 (from memory).
Rotations are built as matrices and multiplied from the trunk outwards; x forwards, y left, z up.
"""

import numpy as np

# Fractions of stature.
LENGTH = {
    "hand": 0.108, "forearm": 0.146, "upper arm": 0.186, "foot": 0.152,
    "shank": 0.246, "thigh": 0.245, "head and neck": 0.182, "trunk": 0.288,
}
# Fractions of body mass, of one limb.
MASS = {
    "hand": 0.006, "forearm": 0.016, "upper arm": 0.028, "foot": 0.0145,
    "shank": 0.0465, "thigh": 0.100, "head and neck": 0.081, "trunk": 0.497,
}
# From the proximal end.
CENTRE = {
    "hand": 0.506, "forearm": 0.430, "upper arm": 0.436, "foot": 0.50,
    "shank": 0.433, "thigh": 0.433, "head and neck": 1.0, "trunk": 0.50,
}
# Heights above the floor in the same figure, to be reached by stacking segments.
HEIGHT = {"ankle": 0.039, "knee": 0.285, "hip": 0.530, "shoulder": 0.818, "chin": 0.870}
SHOULDERS, HIPS, ANKLE, NECK, HEAD = 0.259, 0.0955, 0.039, 0.052, 0.130
# Choices of the program, as its documentation states them.
PELVIS_SHARE, HEEL_SHARE, BALL_SHARE = 0.35, 0.28, 0.76


def about(axis, degrees):
    """The rotation matrix about an axis (Rodrigues)."""
    x, y, z = axis
    skew = np.array([[0, -z, y], [z, 0, -x], [-y, x, 0]], float)
    angle = np.radians(degrees)
    return np.eye(3) + np.sin(angle) * skew + (1 - np.cos(angle)) * skew @ skew


def pitch(d):
    return about((0, 1, 0), d)


def roll(d):
    return about((1, 0, 0), d)


def yaw(d):
    return about((0, 0, 1), d)


def place(angles):
    """Points by name, the hips at the origin. `angles` has forward, sideways, turned by joint."""

    def of(joint, motion="forward"):
        return angles.get(joint, {}).get(motion, 0.0)

    def lean(joint):
        return yaw(of(joint, "turned")) @ pitch(of(joint)) @ roll(-of(joint, "sideways"))

    up = np.array([0, 0, 1.0])
    points = {"hips": np.zeros(3)}
    pelvis = lean("trunk")
    points["waist"] = pelvis @ (up * LENGTH["trunk"] * PELVIS_SHARE)
    ribs = pelvis @ lean("back")
    points["chest"] = points["waist"] + ribs @ (up * LENGTH["trunk"] * (1 - PELVIS_SHARE))
    face = ribs @ lean("head")
    middle = (ribs @ up + face @ up) / 2
    points["chin"] = points["chest"] + middle * NECK
    points["head"] = points["chin"] + face @ np.array([0.012, 0, HEAD / 2])
    for side, sign in (("left", 1), ("right", -1)):
        arm = ribs @ pitch(-of(f"{side}_arm")) @ roll(sign * of(f"{side}_arm", "sideways"))
        arm = arm @ yaw(sign * of(f"{side}_arm", "turned"))
        fore = arm @ pitch(-of(f"{side}_elbow"))
        hand = fore @ pitch(-of(f"{side}_wrist"))
        at = points["chest"] + ribs @ np.array([0, sign * SHOULDERS / 2, 0])
        points[f"{side} shoulder"] = at
        for name, turn, segment in (("elbow", arm, "upper arm"), ("wrist", fore, "forearm"), ("fingers", hand, "hand")):
            at = at - turn @ (up * LENGTH[segment])
            points[f"{side} {name}"] = at
        thigh = pelvis @ pitch(-of(f"{side}_leg")) @ roll(sign * of(f"{side}_leg", "sideways"))
        thigh = thigh @ yaw(sign * of(f"{side}_leg", "turned"))
        shank = thigh @ pitch(of(f"{side}_knee"))
        foot = shank @ pitch(of(f"{side}_foot"))
        at = pelvis @ np.array([0, sign * HIPS / 2, 0])
        points[f"{side} hip"] = at
        for name, turn, segment in (("knee", thigh, "thigh"), ("ankle", shank, "shank")):
            at = at - turn @ (up * LENGTH[segment])
            points[f"{side} {name}"] = at
        long = LENGTH["foot"]
        for name, share in (("heel", 0), ("ball", BALL_SHARE), ("toes", 1)):
            points[f"{side} {name}"] = at + foot @ np.array([long * (share - HEEL_SHARE), 0, -ANKLE])
    return points


# The ends of each segment.
ENDS = [("trunk", "hips", "chest"), ("head and neck", "chest", "head")] + [
    (segment, f"{side} {a}", f"{side} {b}")
    for side in ("left", "right")
    for segment, a, b in (
        ("upper arm", "shoulder", "elbow"), ("forearm", "elbow", "wrist"), ("hand", "wrist", "fingers"),
        ("thigh", "hip", "knee"), ("shank", "knee", "ankle"), ("foot", "ankle", "ball"),
    )
]


def centre_of_mass(points):
    """The mass-weighted mean of the centres of the segments."""
    total = np.zeros(3)
    for segment, a, b in ENDS:
        share = CENTRE[segment]
        total += MASS[segment] * (points[a] * (1 - share) + points[b] * share)
    return total
