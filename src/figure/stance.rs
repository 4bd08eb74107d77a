//! A pose on the ground: what the pose leaves open – how hips and ankles keep the balance, how far a body
//! on its hands leans – is found, and the body set down.

use super::balance::lowest;
use super::body::{Body, Flat};
use super::crossing::find_crossing;
use super::joint::{Angles, Joint, Motion, Side};
use super::pose::Pose;
use super::proportions::Proportions;
use super::space::Point;
use super::support::Support;

/// How far above the floor the lowest point of a body in flight is drawn.
const FLIGHT: f64 = 0.10;

/// The ankle of a lifted heel is bent so far (the published range of dorsiflexion) …
const ANKLE_GIVES: f64 = 20.0;

/// … and under the weight of the body a shin leans so far before the heel lifts (a usual result of the
/// weight-bearing lunge test; from memory).
const SHIN_LEANS: f64 = 40.0;

/// Finds the body of a pose; see [`super::place_body`], which keeps it.
pub(super) fn find_stance(pose: &Pose, proportions: Proportions) -> (Body, Angles) {
    let mut angles = with_usual_lean(pose);
    match pose.on {
        Support::Feet => stand_on_both(&mut angles, proportions),
        Support::LeftFoot => stand_on_one(&mut angles, proportions, Side::Left),
        Support::RightFoot => stand_on_one(&mut angles, proportions, Side::Right),
        Support::HandsAndFeet | Support::HandsAndKnees => {
            // The one changes what the other has found: a few turns settle both.
            for _ in 0..4 {
                rest_on_shins(&mut angles, proportions, pose);
                lean_on_hands(&mut angles, proportions, pose.on);
            }
        }
        Support::Knees | Support::OneKnee | Support::Seat => {
            rest_on_shins(&mut angles, proportions, pose);
        }
        _ => {}
    }
    let body = set(&angles, proportions, pose.on);
    let lift = if pose.on == Support::Air { FLIGHT } else { 0.0 };
    let down = Point::new(0.0, 0.0, lift - lowest(&body));
    (body.moved(down), angles)
}

/// What lying and sitting say of trunk and legs, where the pose says nothing else.
fn with_usual_lean(pose: &Pose) -> Angles {
    let mut usual = Angles::default();
    // Thighs keep their place in the room when the trunk leans.
    let lean = pose.angles.of(Joint::Trunk, Motion::Forward);
    let mut both = |joint: fn(Side) -> Joint, degrees: f64| {
        for side in Side::BOTH {
            usual.set(joint(side), Motion::Forward, degrees);
        }
    };
    match pose.on {
        Support::Chair | Support::Wheelchair => {
            both(Joint::Leg, 90.0 + lean);
            both(Joint::Knee, 90.0);
        }
        Support::Seat => both(Joint::Leg, 90.0 + lean),
        Support::Knees => {
            both(Joint::Leg, lean);
            both(Joint::Knee, 90.0);
            both(Joint::Foot, 50.0);
        }
        Support::HandsAndKnees => {
            both(Joint::Leg, 90.0);
            both(Joint::Knee, 90.0);
            both(Joint::Foot, 50.0);
            both(Joint::Arm, 90.0);
            both(Joint::Elbow, 0.0);
        }
        Support::HandsAndFeet => {
            both(Joint::Arm, 90.0);
            both(Joint::Elbow, 0.0);
        }
        Support::OneKnee => {
            both(Joint::Knee, 90.0);
            both(Joint::Leg, lean);
            usual.set(Joint::Leg(Side::Left), Motion::Forward, 90.0 + lean);
        }
        _ => {}
    }
    let usual_lean = match pose.on {
        Support::Back => -90.0,
        Support::Front | Support::HandsAndKnees => 90.0,
        Support::HandsAndFeet => 75.0,
        _ => 0.0,
    };
    usual.set(Joint::Trunk, Motion::Forward, usual_lean);
    let side = match pose.on {
        Support::LeftSide => 90.0,
        Support::RightSide => -90.0,
        _ => 0.0,
    };
    usual.set(Joint::Trunk, Motion::Sideways, side);
    usual.with(&pose.angles)
}

/// The body of angles that are all settled.
fn set(angles: &Angles, proportions: Proportions, on: Support) -> Body {
    let hands = matches!(on, Support::HandsAndFeet | Support::HandsAndKnees);
    let upright = Body::of(angles, proportions, Flat { hands, feet: [false; 2] });
    set_legs(&upright, angles, on)
}

/// The same, where only the legs differ from a body that is known.
fn set_legs(known: &Body, angles: &Angles, on: Support) -> Body {
    let stands = |side: Side| match on {
        Support::Feet | Support::Chair | Support::Wheelchair => true,
        Support::LeftFoot => side == Side::Left,
        Support::RightFoot => side == Side::Right,
        Support::OneKnee => angles.of(Joint::Leg(side), Motion::Forward) > 45.0,
        _ => false,
    };
    let feet =
        Side::BOTH.map(|side| stands(side) && !angles.is_said(Joint::Foot(side), Motion::Forward));
    let flat = known.with_legs(angles, Flat { hands: false, feet });
    // A foot that its ankle can’t lay flat stands on its ball.
    let mut stepped = *angles;
    let mut kept = feet;
    for side in Side::BOTH.into_iter().filter(|side| feet[*side as usize]) {
        if shank_lean(&flat, side) > SHIN_LEANS {
            stepped.set(Joint::Foot(side), Motion::Forward, -ANKLE_GIVES);
            kept[side as usize] = false;
        }
    }
    if kept == feet { flat } else { flat.with_legs(&stepped, Flat { hands: false, feet: kept }) }
}

/// How far the knee is in front of the ankle, in degrees from upright, along the foot.
fn shank_lean(body: &Body, side: Side) -> f64 {
    let leg = body.leg(side);
    let shank = leg.bend.plus(leg.end.times(-1.0));
    shank.dot(leg.frame.forward).atan2(shank.z).to_degrees()
}

/// The middle of a sole.
fn middle_of_sole(body: &Body, side: Side) -> Point {
    let [heel, ball, toes] = body.sole(side);
    if heel.z - ball.z > 0.03 { ball.toward(toes, 0.5) } else { heel.toward(ball, 0.55) }
}

/// On both feet: hips that the pose leaves open swing so that the centre of mass is over the feet; then a
/// knee it leaves open bends so that both feet reach the floor.
fn stand_on_both(angles: &mut Angles, proportions: Proportions) {
    let open = |joint: fn(Side) -> Joint, angles: &Angles| {
        Side::BOTH
            .into_iter()
            .filter(|side| !angles.is_said(joint(*side), Motion::Forward))
            .collect::<Vec<_>>()
    };
    let hips = open(Joint::Leg, angles);
    let knees = open(Joint::Knee, angles);
    if !hips.is_empty() {
        let swung = |degrees: f64, angles: &Angles| {
            let mut tried = *angles;
            for side in &hips {
                tried.set(Joint::Leg(*side), Motion::Forward, degrees);
            }
            tried
        };
        let known = set(angles, proportions, Support::Feet);
        let off = |degrees: f64| {
            let body = set_legs(&known, &swung(degrees, angles), Support::Feet);
            let [left, right] = Side::BOTH.map(|side| middle_of_sole(&body, side));
            body.centre_of_mass().x - left.toward(right, 0.5).x
        };
        if let Some(found) =
            find_crossing(-60.0, 150.0, angles.of(Joint::Trunk, Motion::Forward), off)
        {
            *angles = swung(found, angles);
        }
    }
    if hips.len() == 2 && knees.len() != 1 {
        return;
    }
    let Some(side) = knees.first().copied() else { return };
    let standing = *angles;
    let bent = |degrees: f64| standing.but(Joint::Knee(side), Motion::Forward, degrees);
    let known = set(angles, proportions, Support::Feet);
    let gap = |degrees: f64| {
        let body = set_legs(&known, &bent(degrees), Support::Feet);
        let low = |side: Side| body.sole(side).iter().map(|p| p.z).fold(f64::MAX, f64::min);
        low(side) - low(side.other())
    };
    if let Some(found) = find_crossing(0.0, 130.0, 10.0, gap) {
        *angles = bent(found);
    }
}

/// On one foot: the standing leg swings forwards or back, and a little inwards, until the centre of mass is
/// over the foot.
fn stand_on_one(angles: &mut Angles, proportions: Proportions, side: Side) {
    let on = if side == Side::Left { Support::LeftFoot } else { Support::RightFoot };
    let lean = angles.of(Joint::Trunk, Motion::Forward);
    let known = set(angles, proportions, on);
    for _ in 0..3 {
        for (motion, from, to, near) in
            [(Motion::Forward, -60.0, 150.0, lean), (Motion::Sideways, -30.0, 30.0, -5.0)]
        {
            if is_open(angles, side, motion) {
                let standing = *angles;
                let tried = |degrees: f64| standing.but(Joint::Leg(side), motion, degrees);
                let off = |degrees: f64| {
                    let body = set_legs(&known, &tried(degrees), on);
                    let gap = body.centre_of_mass().plus(middle_of_sole(&body, side).times(-1.0));
                    // Along the foot and across it, whichever way the body has turned.
                    let frame = body.pelvis.levelled();
                    gap.dot(if motion == Motion::Forward { frame.forward } else { frame.left })
                };
                if let Some(found) = find_crossing(from, to, near, off) {
                    *angles = tried(found);
                    angles.mark_found(Joint::Leg(side), motion);
                }
            }
        }
    }
}

/// Whether the pose leaves it open; what was found before may be found anew.
fn is_open(angles: &Angles, side: Side, motion: Motion) -> bool {
    !angles.is_said(Joint::Leg(side), motion) || angles.is_found(Joint::Leg(side), motion)
}

/// Kneeling: a knee that the pose leaves open bends until the foot lies beside it. Sitting: until the foot
/// stands on the floor.
fn rest_on_shins(angles: &mut Angles, proportions: Proportions, pose: &Pose) {
    let is_sitting = pose.on == Support::Seat;
    for side in Side::BOTH {
        let is_kneeling = match pose.on {
            Support::HandsAndFeet => false,
            Support::OneKnee => side == Side::Right,
            _ => true,
        };
        let is_open = !pose.angles.is_said(Joint::Knee(side), Motion::Forward);
        let is_lying = is_sitting && !pose.angles.is_said(Joint::Leg(side), Motion::Forward);
        if !is_kneeling || !is_open || is_lying {
            continue;
        }
        let kneeling = *angles;
        let bent = |degrees: f64| kneeling.but(Joint::Knee(side), Motion::Forward, degrees);
        let known = set(angles, proportions, pose.on);
        let gap = |degrees: f64| {
            let body = set_legs(&known, &bent(degrees), pose.on);
            let foot = body.sole(side).iter().map(|p| p.z).fold(f64::MAX, f64::min);
            let floor =
                if is_sitting { body.hips.z - 0.062 } else { body.leg(side).bend.z - 0.042 };
            foot - floor
        };
        if let Some(found) = find_crossing(40.0, 134.0, 90.0, gap) {
            *angles = bent(found);
        }
    }
}

/// On hands and feet or knees: the trunk leans until both touch the floor.
fn lean_on_hands(angles: &mut Angles, proportions: Proportions, on: Support) {
    let before = *angles;
    let leaning = |degrees: f64| before.but(Joint::Trunk, Motion::Forward, degrees);
    let gap = |degrees: f64| {
        let body = set(&leaning(degrees), proportions, on);
        let hands = body.arms.iter().map(|arm| arm.end.z.min(arm.tip.z));
        let hands = hands.fold(f64::MAX, f64::min) - 0.018;
        let low = match on {
            Support::HandsAndKnees => {
                body.legs.iter().map(|leg| leg.bend.z - 0.042).fold(f64::MAX, f64::min)
            }
            _ => Side::BOTH
                .iter()
                .flat_map(|side| body.sole(*side))
                .map(|p| p.z)
                .fold(f64::MAX, f64::min),
        };
        hands - low
    };
    let near = angles.of(Joint::Trunk, Motion::Forward);
    if let Some(found) = find_crossing(-130.0, 150.0, near, gap) {
        *angles = leaning(found);
    }
}
