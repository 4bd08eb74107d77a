"""Floors against shapely: outlines on rectangles and L shapes, hulls, sector lines, and the footprint of every kind.

A refusal is tried with 7200 angles of half a turn, each with the outline's extents, and refined round the best of
them; so it is no proof, but nothing that leaves a millionth of the floor's side to spare escapes it."""

import json
import math
import random
import re

import numpy
import shapely
from program import AS_OF, ask, fresh_folder, run
from shapely import LineString, MultiPoint, Point, Polygon, affinity, box
from stress_pack import bare, write_yaml

AGAINST = "shapely, every angle tried with numpy, Carver's condition and the sector rule of World Athletics"

HULLS, RECTANGLES, CARVERS, ELLS, CHORDS, FOOTPRINTS = 400, 600, 400, 500, 400, 160
ANGLES = numpy.arange(7200) * math.pi / 7200
# Less than this, in parts of the side, is a touch: neither answer would be wrong.
TOUCH = 1e-6
# Millimetres that a placed outline may lie outside.
DUST = 1e-3
# A tape's kinds of lengths where a part says none (mm), as the file format names them.
ROOM, LANE, RUN_UP, STOP, THROW_MARGIN, SIDE = 2000, 1000, 1000, 1000, 1000, 500


def crowding(outline, length, width, angles=ANGLES):
    """At each angle, the outline's extents as parts of the floor's sides, the larger of the two: up to 1 it fits."""
    points = numpy.array(outline)
    along = numpy.outer(numpy.cos(angles), points[:, 0]) - numpy.outer(numpy.sin(angles), points[:, 1])
    away = numpy.outer(numpy.sin(angles), points[:, 0]) + numpy.outer(numpy.cos(angles), points[:, 1])
    return numpy.maximum(numpy.ptp(along, axis=1) / length, numpy.ptp(away, axis=1) / width)


def least_crowding(outline, length, width):
    """The best of all angles, refined three times round the five best and round the quarters and edges."""
    found = crowding(outline, length, width)
    points = numpy.array(outline)
    edges = numpy.roll(points, -1, axis=0) - points
    lying = -numpy.arctan2(edges[:, 1], edges[:, 0])
    exact = numpy.concatenate([lying, lying + math.pi / 2])
    best, step = ANGLES[numpy.argsort(found)[:5]], math.pi / 7200
    least = min(found.min(), crowding(outline, length, width, exact).min())
    for _ in range(3):
        near = (best[:, None] + numpy.linspace(-step, step, 81)).ravel()
        finer = crowding(outline, length, width, near)
        best, step = near[numpy.argsort(finer)[:5]], step / 30
        least = min(least, finer.min())
    return least


def corners(shape):
    """Against the clock, the last not said again."""
    return list(shapely.geometry.polygon.orient(shape).exterior.coords)[:-1]


def random_outline(dice):
    """A rectangle, a strip, a throwing sector or any convex polygon, often turned."""
    kind, size = dice.choice(["rectangle", "strip", "sector", "polygon"]), dice.uniform(500, 6000)
    if kind == "sector":
        half, radius = math.radians(dice.uniform(5, 45)), size
        arc = [(radius * math.sin(half * k / 12), radius * math.cos(half * k / 12)) for k in range(-12, 13)]
        shape = MultiPoint([(-300, -800), (300, -800), (-300, 0), (300, 0), *arc]).convex_hull
    elif kind == "polygon":
        spread = dice.uniform(0.2, 1)
        shape = MultiPoint([(dice.gauss(0, size / 2), dice.gauss(0, size * spread / 2)) for _ in range(dice.randint(5, 14))]).convex_hull
    else:
        shape = box(0, 0, size, size * dice.uniform(*((0.3, 1) if kind == "rectangle" else (0.03, 0.25))))
    return corners(affinity.rotate(shape, dice.choice([0, dice.uniform(0, 360)]), origin=(0, 0)))


def random_floor(dice, outline):
    """A floor near the limit: its length is any that the outline can take, its width the least for that length, but for 3 %."""
    points = numpy.array(outline)
    along = numpy.outer(numpy.cos(ANGLES), points[:, 0]) - numpy.outer(numpy.sin(ANGLES), points[:, 1])
    spans = numpy.ptp(along, axis=1)
    length = dice.uniform(spans.min(), spans.max() * 1.02)
    width = numpy.roll(spans, len(ANGLES) // 2)[spans <= length].min()
    near = dice.choice([0.03, 0.03, 0.002])
    return [max(1, round(side * (1 + dice.uniform(-near, near)))) for side in (length, width)]


def check_placed(tally, what, outline, placed, room):
    """The outline lies in the room, whole and undistorted. Gives how far it reaches out, in mm."""
    shape, own = Polygon(placed), Polygon(outline)
    out = max(Point(point).distance(room) for point in placed)
    tally.holds(f"{what}: lies on the floor", out <= DUST and room.buffer(DUST, join_style="mitre").covers(shape), f"{out:.2e} mm outside")
    sides = [math.dist(a, b) - math.dist(c, d) for a, b, c, d in zip(placed, placed[1:] + placed[:1], outline, outline[1:] + outline[:1])]
    alike = max(map(abs, sides)) < DUST and math.isclose(shape.area, own.area, rel_tol=1e-9) and shape.exterior.is_ccw == own.exterior.is_ccw
    tally.holds(f"{what}: is neither stretched nor turned over", alike, str(max(map(abs, sides))))
    return out


def fits_of(cases):
    return ask([{"ask": "space", "of": "fit", "outline": outline, "floor": floor} for outline, floor in cases])


def check_rectangles(tally, dice):
    cases = [(outline, random_floor(dice, outline)) for outline in (random_outline(dice) for _ in range(RECTANGLES))]
    said_yes = askew = near = 0
    furthest, tightest = 0, math.inf
    for number, ((outline, (length, width)), answer) in enumerate(zip(cases, fits_of(cases))):
        what, least = f"rectangle {number}", least_crowding(outline, length, width)
        straight = crowding(outline, length, width, numpy.array([0, math.pi / 2])).min()
        near += abs(least - 1) < 0.03
        if answer["fits"]:
            said_yes, askew = said_yes + 1, askew + answer["askew"]
            furthest = max(furthest, check_placed(tally, what, outline, answer["placed"], box(0, 0, length, width)))
            tally.holds(f"{what}: at a slant only where it must be", answer["askew"] == (straight > 1) or abs(straight - 1) < TOUCH, str(straight))
        else:
            tightest = min(tightest, least)
            tally.holds(f"{what}: no angle takes it", least > 1 - TOUCH, f"{least - 1:.2e} of {outline} on {length} × {width}")
    tally.holds("rectangles: both answers, straight and askew", min(said_yes, askew, RECTANGLES - said_yes) > 50)
    tally.note(f"{RECTANGLES} outlines on rectangles, {near} within 3 % of the limit: {said_yes} fit ({askew} askew), at most {furthest:.0e} mm "
               f"outside by shapely; of {RECTANGLES - said_yes} refused the least crowded of 7200 angles and finer is {tightest - 1:+.1e} too large")


def carver_side(p, q, a):
    """The least width of a floor as long as a that takes p × q: Carver (1957), solution to problem E 1225,
    American Mathematical Monthly 64, 114-116 (the formula from memory)."""
    if p <= a:
        return q
    return (2 * p * q * a + (p * p - q * q) * math.sqrt(p * p + q * q - a * a)) / (p * p + q * q)


def random_carver(dice):
    p, q = dice.randint(1000, 8000), dice.randint(50, 3000)
    p, q = max(p, q), min(p, q)
    a = dice.randint(round(p * 0.85), round(p * 1.02))
    b = max(1, min(a, round(carver_side(p, q, a) * (1 + dice.uniform(-0.03, 0.03)))))
    return p, q, a, b


def check_carver(tally, dice):
    cases, yes = [random_carver(dice) for _ in range(CARVERS)], 0
    answers = fits_of([(corners(box(0, 0, p, q)), [a, b]) for p, q, a, b in cases])
    for (p, q, a, b), answer in zip(cases, answers):
        theirs = b >= q and b >= carver_side(p, q, a)
        yes += theirs
        tally.same(f"Carver: {p} × {q} in {a} × {b}", answer["fits"], theirs)
    tally.holds("Carver: both answers", 50 < yes < CARVERS - 50, str(yes))
    tally.note(f"{CARVERS} rectangles in rectangles by Carver's condition (1957): the same answer each time, {yes} fit")


def ell(length, width, notch, spare=0.0):
    """The floor, or what is left of it when `spare` is kept from every edge."""
    short, narrow = length - notch[0] - spare, width - notch[1] - spare
    s = spare
    return Polygon([(s, s), (length - s, s), (length - s, narrow), (short, narrow), (short, width - s), (s, width - s)])


def random_ell(dice):
    """Near the limit: the inner corner lies about where a straight outline's far right side runs."""
    outline = random_outline(dice)
    points = numpy.array(outline)
    points = points - points.min(axis=0)
    spans = points.max(axis=0)
    length, width = (round(span * dice.choice([1, 1.01, 1.1, 1.3]) * dice.uniform(0.99, 1.2)) + 1 for span in spans)
    ring = Polygon(points).exterior
    at = ring.interpolate(dice.random(), normalized=True)
    near = 1 + dice.uniform(-0.05, 0.05)
    short, narrow = (min(max(1, round(value * near)), side - 1) for value, side in ((at.x, length), (at.y, width)))
    return outline, [length, width, [length - short, width - narrow]]


def quarters_tried(outline, length, width, notch):
    """Whether the outline, turned by quarters and moved over a grid of places, lies anywhere within the L."""
    room, steps = ell(length, width, notch, TOUCH * length), numpy.linspace(0, 1, 21)
    shapely.prepare(room)
    for quarter in range(4):
        points = numpy.array(affinity.rotate(Polygon(outline), 90 * quarter, origin=(0, 0)).exterior.coords)
        points = points - points.min(axis=0)
        spare = numpy.array([length, width]) - points.max(axis=0)
        if spare.min() < 0:
            continue
        moves = numpy.stack(numpy.meshgrid(steps * (spare[0]), steps * spare[1]), axis=-1).reshape(-1, 1, 2)
        inset = numpy.array([TOUCH * length * 2] * 2)
        if shapely.covers(room, shapely.polygons(points[None] + numpy.concatenate([moves, [[inset]]]))).any():
            return True
    return False


def check_ells(tally, dice):
    cases = [random_ell(dice) for _ in range(ELLS)]
    said_yes = askew = round_corner = 0
    for number, ((outline, floor), answer) in enumerate(zip(cases, fits_of(cases))):
        what, (length, width, notch) = f"L {number}", floor
        arms = [least_crowding(outline, length - notch[0], width), least_crowding(outline, length, width - notch[1])]
        if answer["fits"]:
            said_yes, askew, round_corner = said_yes + 1, askew + answer["askew"], round_corner + (min(arms) > 1)
            check_placed(tally, what, outline, answer["placed"], ell(length, width, notch))
        else:
            tally.holds(f"{what}: neither rectangle takes it", min(arms) > 1 - TOUCH, f"{arms} of {outline} on {floor}")
            tally.holds(f"{what}: no quarter turn takes it", not quarters_tried(outline, *floor), f"{outline} on {floor}")
    tally.holds("Ls: every answer", min(said_yes, ELLS - said_yes) > 80 and min(askew, round_corner) > 10, str((said_yes, askew, round_corner)))
    tally.note(f"{ELLS} outlines on L shapes: {said_yes} fit within them by shapely, {askew} askew in an arm and {round_corner} round the corner "
               f"where neither arm takes them; {ELLS - said_yes} refused, and 4 turns at 442 places each, and either arm at every angle, agree")


def check_hulls(tally, dice):
    """Points on a coarse grid often lie on one line or on each other; others lie anywhere."""
    sets, furthest = [], 0
    for _ in range(HULLS):
        coarse, count = dice.choice([0, 3, 6, 20]), dice.randint(1, 40)
        sets.append([[dice.randint(0, coarse), dice.randint(0, coarse)] if coarse else [round(dice.gauss(0, 2000), 3), round(dice.gauss(0, 2000), 3)]
                     for _ in range(count)])
    answers = ask([{"ask": "space", "of": "hull", "points": points} for points in sets])
    for number, (points, answer) in enumerate(zip(sets, answers)):
        ours, theirs = answer["hull"], MultiPoint(points).convex_hull
        known = corners(theirs) if theirs.geom_type == "Polygon" else list(theirs.coords)
        is_same = tally.same(f"hull {number}: corners", sorted(map(tuple, ours)), sorted(known))
        if is_same and theirs.geom_type == "Polygon":
            shape = Polygon(ours)
            furthest = max(furthest, abs(shape.area - theirs.area) / theirs.area)
            tally.holds(f"hull {number}: shape", shape.equals(theirs) and shape.exterior.is_ccw, shape.wkt)
    tally.note(f"{HULLS} hulls against shapely's: the same corners; largest relative difference in area {furthest:.0e}")


def check_chords(tally, dice):
    """World Athletics technical rules: at 34.92° the sector lines are 12 m apart 20 m along them, at 28.96° half the distance."""
    ruled = [(20_000, 3492, 12_000), *((metres * 1000, 2896, metres * 500) for metres in (2, 6, 10, 20))]
    asked = [(dice.randint(50, 40_000), dice.choice([3492, 2896, dice.randint(1, 9000)])) for _ in range(CHORDS)]
    answers = ask([{"ask": "space", "of": "chord", "along": a, "sector": s} for a, s, *_ in ruled + asked])
    for (along, sector, apart), answer in zip(ruled, answers):
        tally.same(f"the sector of {sector / 100}° at {along} mm", answer["apart"], apart)
    furthest = 0
    for (along, sector), answer in zip(asked, answers[len(ruled):]):
        exact = 2 * along * math.sin(math.radians(sector / 200))
        furthest = max(furthest, abs(answer["apart"] - exact))
        tally.holds(f"chord of {sector / 100}° at {along} mm", answer["apart"] % 10 == 0 and abs(answer["apart"] - exact) <= 5 + 1e-6,
                    f"{answer['apart']} for {exact}")
    tally.note(f"{len(ruled)} chords of the rule book and {CHORDS} others to the centimetre; furthest from 2·L·sin(θ/2) {furthest:.2f} mm")


def random_space(dice, kind):
    """A part's space, in centimetres, with keys left out now and then."""
    sizes = {"length": (50, 600), "width": (40, 300), "margin": (0, 150), "run_up": (0, 300), "stopping": (0, 300),
             "reach": (20, 1200), "people": (1, 4), "sector": (500, 9000)}
    asked = {"area": ["length", "width", "margin", "people"], "strip": ["length", "width", "run_up", "stopping", "people"],
             "jump": ["reach", "width", "run_up", "margin", "people"], "wall": ["length", "width"],
             "throw": ["reach", "width", "run_up", "margin", "people", "sector"]}[kind]
    return {"kind": kind, **{key: dice.randint(*sizes[key]) for key in asked if key == "reach" or dice.random() < 0.75}}


def written(space):
    """The same as a teacher writes it."""
    plain = {"kind": str, "people": str, "sector": lambda angle: f"{angle / 100}"}
    return {key: plain.get(key, lambda cm: f"{cm} cm")(value) for key, value in space.items()}


def footprint(space):
    """By the rules of the file format, in mm: the line lies on y = 0 and what is done goes along y."""
    kind, n = space["kind"], space.get("people", 1)
    said = lambda key, usual: space[key] * 10 if key in space else usual
    if kind == "area":
        margin = said("margin", 0)
        return box(-margin, -margin, said("width", ROOM) * n + margin, said("length", ROOM) + margin)
    if kind == "wall":
        return box(0, 0, said("length", ROOM), said("width", ROOM))
    lane = said("width", LANE) * n
    if kind == "strip":
        return box(0, -said("run_up", 0), lane, said("length", ROOM) + said("stopping", STOP))
    if kind == "jump":
        return box(0, -said("run_up", RUN_UP), lane, space["reach"] * 10 + said("margin", STOP))
    return throw_footprint(space, lane, said("run_up", RUN_UP), said)


def throw_footprint(space, lane, run_up, said):
    """The place to stand, and the sector to the end of the margin, its lines moved outwards by half a metre at most."""
    reach, half = space["reach"] * 10, math.radians(space.get("sector", 3492) / 200)
    margin = said("margin", max(THROW_MARGIN, math.ceil(reach / 4)))
    side, radius = min(margin, SIDE), reach + margin
    foot, far = side / math.cos(half), 4 * radius
    lines = Polygon([(-foot, 0), (foot, 0), (foot + far * math.tan(half), far), (-foot - far * math.tan(half), far)])
    clear = lines.buffer(0).intersection(Point(0, 0).buffer(radius, quad_segs=512))
    middle = LineString([(0, 0), (0, radius)])
    return shapely.union_all([clear, middle, box(-lane / 2, -run_up, lane / 2, 0)]).convex_hull


def cut_corners(shape, space):
    """An arc is set out with twelve chords: how much of a throw, in parts, they may cut off."""
    if space["kind"] != "throw" or shape.bounds[3] == 0:
        return 0
    radius = shape.bounds[3]
    lean = math.asin(min(1, min(SIDE, radius - space["reach"] * 10) / radius))
    return 1 - math.cos((math.radians(space.get("sector", 3492) / 200) + lean) / 12)


def spoken_length(millimetres):
    return f"{millimetres / 1000:g} m" if millimetres >= 1000 else f"{millimetres / 10:g} cm" if millimetres % 10 == 0 else f"{millimetres} mm"


def write_floors(spaces, floors):
    """A session for each space and its floor, and one of a hand's breadth that no part fits, so that each size is said."""
    pack = fresh_folder("floors")
    write_yaml(pack / "pack.yaml", {"title": "Floors", "cautions": ["Clear the floor."]})
    part = lambda n: {"title": f"Case {n}", "time": "1 min", "how": "Walk.", "space": written(spaces[n])}
    for n, (length, width) in enumerate(floors):
        write_yaml(pack / f"case-{n}.yaml", {**bare(), "space": {"length": f"{length} mm", "width": f"{width} mm"}, "technique": [part(n)]})
    write_yaml(pack / "tiny.yaml", {**bare(), "space": {"length": "9 cm", "width": "9 cm"}, "technique": [part(n) for n in range(len(spaces))]})
    return pack


def unfit_of(pack):
    """{("case-3", "3"): "4 m × 2 m"}: what is reported as too large, and the size that is said of it."""
    findings = json.loads(run("inspect", pack, "--report", "json", "--as-of", AS_OF).stdout)
    own = [finding for finding in findings if finding["code"] == "space-unfit"]
    pattern = r"“Case (\d+)” takes a floor of (.+?) with its margins"
    return {(f["file"].removesuffix(".yaml"), re.search(pattern, f["message"])[1]): re.search(pattern, f["message"])[2] for f in own}


def check_size(tally, what, shape, said):
    left, near, right, far = shape.bounds
    # Our own arc lies a few hundredths of a millimetre within the true one.
    sizes = [{spoken_length(math.ceil(span - 1e-6)), spoken_length(math.ceil(span + 0.02))} for span in (far - near, right - left)]
    is_right = said is not None and all(one in size for one, size in zip(said.split(" × "), sizes))
    tally.holds(f"{what}: its size", is_right, f"ours {said}, theirs {sizes}")


# The ends of what can be written: no reach and nothing kept clear, a sector of nothing and of a right angle.
ENDS = [{"kind": "throw", "reach": 0, "margin": 0}, {"kind": "throw", "reach": 0}, {"kind": "throw", "reach": 300, "sector": 0, "margin": 0},
        {"kind": "throw", "reach": 300, "sector": 9000}, {"kind": "jump", "reach": 0, "run_up": 0, "margin": 50}]


def check_footprints(tally, dice):
    kinds = ["area", "strip", "jump", "wall", "throw", "throw"]
    spaces = [random_space(dice, kinds[n % len(kinds)]) for n in range(FOOTPRINTS - len(ENDS))] + ENDS
    shapes = [footprint(space) for space in spaces]
    floors = [random_floor(dice, corners(shape)) for shape in shapes]
    unfit = unfit_of(write_floors(spaces, floors))
    undecided = cut = yes = 0
    for n, (space, shape, floor) in enumerate(zip(spaces, shapes, floors)):
        what, least = f"footprint {n} {written(space)}", least_crowding(corners(shape), *floor)
        check_size(tally, what, shape, unfit.get(("tiny", str(n))))
        if 1 - TOUCH < least < 1 + TOUCH + cut_corners(shape, space):
            undecided, cut = undecided + 1, cut + ((f"case-{n}", str(n)) not in unfit)
            continue
        yes += least < 1
        tally.same(f"{what}: fits {floor}", (f"case-{n}", str(n)) not in unfit, least < 1)
    is_varied = min(yes, FOOTPRINTS - yes) > 40 and undecided < FOOTPRINTS / 10
    tally.holds("footprints: both answers, and few at the very limit", is_varied, str((yes, undecided)))
    tally.note(f"{FOOTPRINTS} footprints of every kind through inspect: sizes to the millimetre and {FOOTPRINTS - undecided} "
               f"answers the same ({yes} fit); {undecided} throws lie within what the twelve chords of their arc may cut off, and {cut} of them are said to fit")


def check(tally):
    dice = random.Random(20260601)
    check_hulls(tally, dice)
    check_rectangles(tally, dice)
    check_carver(tally, dice)
    check_ells(tally, dice)
    check_chords(tally, dice)
    check_footprints(tally, dice)
