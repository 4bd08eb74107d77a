//! Forward kinematics: angles → the points of a body.

use super::joint::{Angles, Joint, Motion, Side};
use super::proportions::{BALL_SHARE, HEEL_SHARE, PELVIS_SHARE, Proportions, Segment};
use super::space::{Frame, Point};

/// The points of a body, in fractions of stature; x forwards, y to its left, z up.
#[derive(Clone, Debug, PartialEq)]
pub struct Body {
    pub proportions: Proportions,
    /// Between the hip joints.
    pub hips: Point,
    /// Where the back bends.
    pub waist: Point,
    /// Between the shoulder joints.
    pub chest: Point,
    /// Chin height, on the neck.
    pub chin: Point,
    pub head: Point,
    pub pelvis: Frame,
    pub ribs: Frame,
    pub face: Frame,
    pub arms: [Limb; 2],
    pub legs: [Limb; 2],
}

/// An arm or a leg: shoulder, elbow, wrist, fingertips; or hip, knee, ankle, toes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limb {
    pub side: Side,
    pub root: Point,
    pub bend: Point,
    pub end: Point,
    pub tip: Point,
    /// Of the hand or foot.
    pub frame: Frame,
}

/// Which hands and feet lie flat on the floor, whatever wrists and ankles say.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Flat {
    pub hands: bool,
    pub feet: [bool; 2],
}

impl Body {
    /// Places every segment, the hips at the origin.
    pub fn of(angles: &Angles, proportions: Proportions, flat: Flat) -> Self {
        let of = |joint, motion| angles.of(joint, motion);
        let lean = |frame: Frame, joint| {
            frame
                .turned(of(joint, Motion::Turned))
                .pitched(of(joint, Motion::Forward))
                .rolled(-of(joint, Motion::Sideways))
        };
        let trunk = proportions.length(Segment::Trunk);
        let hips = Point::default();
        let pelvis = lean(Frame::UPRIGHT, Joint::Trunk);
        let waist = hips.plus(pelvis.way(0.0, 0.0, trunk * PELVIS_SHARE));
        let ribs = lean(pelvis, Joint::Back);
        let chest = waist.plus(ribs.way(0.0, 0.0, trunk * (1.0 - PELVIS_SHARE)));
        let face = lean(ribs, Joint::Head);
        let chin = chest.plus(ribs.up.toward(face.up, 0.5).times(proportions.neck()));
        let head = chin.plus(face.way(0.012, 0.0, proportions.head / 2.0));
        let arms = Side::BOTH.map(|side| arm(angles, proportions, (ribs, chest), side, flat.hands));
        let legs = Side::BOTH
            .map(|side| leg(angles, proportions, (pelvis, hips), side, flat.feet[side as usize]));
        Self { proportions, hips, waist, chest, chin, head, pelvis, ribs, face, arms, legs }
    }

    /// The same body with its legs as other angles have them: what is above the hips stays.
    #[must_use]
    pub fn with_legs(&self, angles: &Angles, flat: Flat) -> Self {
        let from = (self.pelvis, self.hips);
        let legs = Side::BOTH
            .map(|side| leg(angles, self.proportions, from, side, flat.feet[side as usize]));
        Self { legs, ..self.clone() }
    }

    #[must_use]
    pub fn moved(mut self, by: Point) -> Self {
        let central =
            [&mut self.hips, &mut self.waist, &mut self.chest, &mut self.chin, &mut self.head];
        let limbs = self.arms.iter_mut().chain(&mut self.legs);
        let limbs = limbs.flat_map(|l| [&mut l.root, &mut l.bend, &mut l.end, &mut l.tip]);
        for point in central.into_iter().chain(limbs) {
            *point = point.plus(by);
        }
        self
    }

    pub const fn arm(&self, side: Side) -> &Limb {
        &self.arms[side as usize]
    }

    pub const fn leg(&self, side: Side) -> &Limb {
        &self.legs[side as usize]
    }

    /// Heel, ball and toes, on the sole.
    pub fn sole(&self, side: Side) -> [Point; 3] {
        let leg = self.leg(side);
        let foot = self.proportions.length(Segment::Foot);
        let below = -self.proportions.ankle();
        [0.0, BALL_SHARE, 1.0]
            .map(|share| leg.end.plus(leg.frame.way(foot * (share - HEEL_SHARE), 0.0, below)))
    }

    /// The centre of mass by the published masses and centres.
    pub fn centre_of_mass(&self) -> Point {
        let mut sum = Point::default();
        let mut add = |segment: Segment, from: Point, to: Point| {
            let at = from.toward(to, segment.centre());
            sum = sum.plus(at.times(segment.mass()));
        };
        add(Segment::Trunk, self.hips, self.chest);
        add(Segment::HeadAndNeck, self.chest, self.head);
        for side in Side::BOTH {
            let (arm, leg) = (self.arm(side), self.leg(side));
            add(Segment::UpperArm, arm.root, arm.bend);
            add(Segment::Forearm, arm.bend, arm.end);
            add(Segment::Hand, arm.end, arm.tip);
            add(Segment::Thigh, leg.root, leg.bend);
            add(Segment::Shank, leg.bend, leg.end);
            add(Segment::Foot, leg.end, self.sole(side)[1]);
        }
        sum
    }
}

fn turned_limb(angles: &Angles, frame: Frame, joint: Joint, side: Side) -> Frame {
    frame
        .pitched(-angles.of(joint, Motion::Forward))
        .rolled(side.sign() * angles.of(joint, Motion::Sideways))
        .turned(side.sign() * angles.of(joint, Motion::Turned))
}

fn arm(
    angles: &Angles,
    proportions: Proportions,
    (ribs, chest): (Frame, Point),
    side: Side,
    is_flat: bool,
) -> Limb {
    let bent = |joint| -angles.of(joint, Motion::Forward);
    let root = chest.plus(ribs.way(0.0, side.sign() * proportions.shoulders() / 2.0, 0.0));
    let upper = turned_limb(angles, ribs, Joint::Arm(side), side);
    let down = |frame: Frame, segment| frame.way(0.0, 0.0, -proportions.length(segment));
    let bend = root.plus(down(upper, Segment::UpperArm));
    let lower = upper.pitched(bent(Joint::Elbow(side)));
    let end = bend.plus(down(lower, Segment::Forearm));
    let mut frame = lower.pitched(bent(Joint::Wrist(side)));
    if is_flat {
        // Fingers forwards on the floor: the hand’s down is the floor’s forwards.
        let level = ribs.levelled();
        frame = level.pitched(-90.0);
    }
    let tip = end.plus(down(frame, Segment::Hand));
    Limb { side, root, bend, end, tip, frame }
}

fn leg(
    angles: &Angles,
    proportions: Proportions,
    (pelvis, hips): (Frame, Point),
    side: Side,
    is_flat: bool,
) -> Limb {
    let root = hips.plus(pelvis.way(0.0, side.sign() * proportions.hips() / 2.0, 0.0));
    let thigh = turned_limb(angles, pelvis, Joint::Leg(side), side);
    let down = |frame: Frame, segment| frame.way(0.0, 0.0, -proportions.length(segment));
    let bend = root.plus(down(thigh, Segment::Thigh));
    let shank = thigh.pitched(angles.of(Joint::Knee(side), Motion::Forward));
    let end = bend.plus(down(shank, Segment::Shank));
    let mut frame = shank.pitched(angles.of(Joint::Foot(side), Motion::Forward));
    if is_flat {
        frame = shank.levelled();
    }
    let foot = proportions.length(Segment::Foot) * (1.0 - HEEL_SHARE);
    let tip = end.plus(frame.way(foot, 0.0, -proportions.ankle()));
    Limb { side, root, bend, end, tip, frame }
}
