//! Whether a body would stay where it is: the centre of mass over the base of support.
//!
//! The base is the outline round everything that touches the floor, a seat or a wall. Contacts are reckoned
//! by round joints and flat soles; their sizes are our choice, in fractions of stature.

use super::body::Body;
use super::joint::Side;
use super::pose::{Pose, Scene};
use super::space::Point;
use super::support::Support;

/// So near to the floor a point touches it.
const TOUCH: f64 = 0.02;

/// A body that sits or lies is soft.
const SOFT_TOUCH: f64 = 0.06;

/// A figure may be out by so much before we say that it falls: half a toe.
const SLACK: f64 = 0.012;

/// The round points of a body that can touch the floor: middle and radius.
fn rounds(body: &Body) -> Vec<(Point, f64)> {
    let girth = body.proportions.girth();
    let mut rounds = vec![
        (body.head, body.proportions.head / 2.0),
        (body.waist, 0.052 * girth),
        (body.chest.toward(body.waist, 0.3), 0.062 * girth),
    ];
    for side in Side::BOTH {
        let (arm, leg) = (body.arm(side), body.leg(side));
        rounds.extend([
            (arm.root, 0.036 * girth),
            (arm.bend, 0.026 * girth),
            (arm.end, 0.018 * girth),
            (arm.tip, 0.012 * girth),
            (leg.root, 0.062 * girth),
            (leg.bend, 0.042 * girth),
        ]);
    }
    rounds
}

/// The soles: heel, ball and toes, at both edges.
fn soles(body: &Body) -> impl Iterator<Item = Point> + '_ {
    let half = body.proportions.foot_width() / 2.0;
    Side::BOTH.into_iter().flat_map(move |side| {
        let edge = body.leg(side).frame.left;
        body.sole(side)
            .into_iter()
            .flat_map(move |at| [at.plus(edge.times(half)), at.plus(edge.times(-half))])
    })
}

/// The height of the lowest point of a body.
pub fn lowest(body: &Body) -> f64 {
    let round = rounds(body).into_iter().map(|(at, r)| at.z - r);
    round.chain(soles(body).map(|at| at.z)).fold(f64::MAX, f64::min)
}

/// Everything that carries a body, seen from above.
pub fn contacts(pose: &Pose, body: &Body) -> Vec<(f64, f64)> {
    let mut points = Vec::new();
    let mut disc = |at: Point, r: f64| {
        points.extend([(at.x - r, at.y), (at.x + r, at.y), (at.x, at.y - r), (at.x, at.y + r)]);
    };
    let touch = match pose.on {
        Support::Back | Support::Front | Support::LeftSide | Support::RightSide | Support::Seat => {
            SOFT_TOUCH
        }
        _ => TOUCH,
    };
    for (at, r) in rounds(body).into_iter().filter(|(at, r)| at.z - r < touch) {
        disc(at, r * 0.6);
    }
    for at in soles(body).filter(|at| at.z < TOUCH) {
        disc(at, 0.004);
    }
    if pose.on.is_seated() {
        // The seat carries from the hips to half the thigh.
        for side in Side::BOTH {
            let leg = body.leg(side);
            disc(leg.root, 0.06);
            disc(leg.root.toward(leg.bend, 0.5), 0.04);
        }
    }
    if pose.with.contains(&Scene::Wall) || pose.with.contains(&Scene::ChairBeside) {
        for side in Side::BOTH {
            disc(body.arm(side).tip, 0.01);
        }
    }
    points
}

/// How far the centre of mass is inside the base of support: below zero it is outside. `None` in flight.
pub fn steadiness(pose: &Pose, body: &Body) -> Option<f64> {
    if pose.on == Support::Air {
        return None;
    }
    let centre = body.centre_of_mass();
    Some(depth_inside(&outline_round(contacts(pose, body)), (centre.x, centre.y)))
}

/// Whether a pose would fall over.
pub fn falls(pose: &Pose, body: &Body) -> bool {
    steadiness(pose, body).is_some_and(|inside| inside < -SLACK)
}

/// The way a pose falls, for a message: from its middle of support to its centre of mass.
pub fn outward(pose: &Pose, body: &Body) -> &'static str {
    let points = contacts(pose, body);
    let Some((low, high)) = points.iter().map(|p| p.0).fold(None, |span, x| match span {
        None => Some((x, x)),
        Some((low, high)) => Some((f64::min(low, x), f64::max(high, x))),
    }) else {
        return "over";
    };
    let centre = body.centre_of_mass();
    match centre.x {
        x if x > high => "forwards",
        x if x < low => "backwards",
        _ => "sideways",
    }
}

type Flat = (f64, f64);

fn cross(o: Flat, a: Flat, b: Flat) -> f64 {
    (a.0 - o.0) * (b.1 - o.1) - (a.1 - o.1) * (b.0 - o.0)
}

/// The convex outline round points, against the clock (Andrew’s monotone chain).
pub fn outline_round(mut points: Vec<Flat>) -> Vec<Flat> {
    points.sort_by(|a, b| a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1)));
    points.dedup();
    if points.len() < 3 {
        return points;
    }
    let chain = |points: &mut dyn Iterator<Item = Flat>| {
        let mut chain: Vec<Flat> = Vec::new();
        for point in points {
            while let [.., a, b] = chain[..]
                && cross(a, b, point) <= 0.0
            {
                chain.pop();
            }
            chain.push(point);
        }
        chain.pop();
        chain
    };
    let mut lower = chain(&mut points.iter().copied());
    lower.extend(chain(&mut points.iter().rev().copied()));
    lower
}

/// The least distance inside the edges of a convex outline; below zero, outside.
fn depth_inside(outline: &[Flat], point: Flat) -> f64 {
    if outline.len() < 3 {
        return -1.0;
    }
    let edges = outline.iter().zip(outline.iter().cycle().skip(1));
    edges
        .map(|(a, b)| cross(*a, *b, point) / (b.0 - a.0).hypot(b.1 - a.1).max(1e-9))
        .fold(f64::MAX, f64::min)
}
