//! The outline round a bent stick that is thick here and thin there.

use crate::drawing::At;

/// A point of the middle line and how thick it is there, to either side.
pub(super) type Node = (At, f32);

pub(super) fn plus(a: At, b: At, times: f32) -> At {
    (a.0 + b.0 * times, a.1 + b.1 * times)
}

pub(super) fn between(a: At, b: At, share: f32) -> At {
    (a.0 + (b.0 - a.0) * share, a.1 + (b.1 - a.1) * share)
}

pub(super) fn gap(a: At, b: At) -> f32 {
    // Bodies are a stature tall: nothing overflows that `hypot` would guard against, at five times the time.
    let (across, down) = (a.0 - b.0, a.1 - b.1);
    (across * across + down * down).sqrt()
}

/// The way from one point to another, one unit long; `otherwise` where they are one.
pub(super) fn way(from: At, to: At, otherwise: At) -> At {
    let length = gap(from, to);
    if length < 1e-4 {
        return otherwise;
    }
    ((to.0 - from.0) / length, (to.1 - from.1) / length)
}

const fn beside(way: At) -> At {
    (way.1, -way.0)
}

/// The two sides of a stick, both from its root to its end.
pub(super) struct Sides {
    pub one: Vec<At>,
    pub other: Vec<At>,
    /// The way that the stick ends in.
    pub ends: At,
}

/// Walks along a stick and sets points to both sides; none stands inside another stretch of it.
pub(super) fn sides_of(nodes: &[Node]) -> Sides {
    let nodes = apart(nodes);
    let last = nodes.len() - 1;
    let mut sides = Sides { one: Vec::new(), other: Vec::new(), ends: (0.0, 1.0) };
    let mut before = (0.0, 1.0);
    if last > 0 {
        before = way(nodes[0].0, nodes[1].0, before);
    }
    for (index, (at, thick)) in nodes.iter().enumerate() {
        let after = if index == last { before } else { way(*at, nodes[index + 1].0, before) };
        set_beside((*at, *thick), before, after, &mut sides);
        before = after;
    }
    sides.ends = before;
    sides.one.retain(|at| !is_inside(*at, &nodes));
    sides.other.retain(|at| !is_inside(*at, &nodes));
    sides
}

/// Leaves out nodes that fall on their neighbours: a limb that points at the eye.
fn apart(nodes: &[Node]) -> Vec<Node> {
    let mut kept: Vec<Node> = Vec::with_capacity(nodes.len());
    for node in nodes {
        match kept.last_mut() {
            Some(last) if gap(last.0, node.0) < 0.012 => last.1 = last.1.max(node.1),
            _ => kept.push(*node),
        }
    }
    kept
}

fn set_beside((at, thick): Node, before: At, after: At, sides: &mut Sides) {
    let turn =
        (before.0 * after.1 - before.1 * after.0).atan2(before.0 * after.0 + before.1 * after.1);
    let (a, b) = (beside(before), beside(after));
    let middle = way((0.0, 0.0), (a.0 + b.0, a.1 + b.1), a);
    if turn.abs() < 0.35 {
        sides.one.push(plus(at, middle, thick));
        sides.other.push(plus(at, middle, -thick));
        return;
    }
    // The outer side goes round the joint, the inner meets in a crease.
    let crease = thick / (turn / 2.0).cos().max(0.45);
    let round = [a, middle, b];
    if turn > 0.0 {
        sides.one.extend(round.map(|n| plus(at, n, thick)));
        sides.other.extend([plus(at, middle, -crease); 2]);
    } else {
        sides.other.extend(round.map(|n| plus(at, n, -thick)));
        sides.one.extend([plus(at, middle, crease); 2]);
    }
}

/// Whether a point lies well inside the stick.
fn is_inside(point: At, nodes: &[Node]) -> bool {
    nodes.windows(2).any(|pair| {
        let [(from, thick), (to, thin)] = pair else { return false };
        let long = gap(*from, *to).max(1e-4);
        let along =
            ((point.0 - from.0) * (to.0 - from.0) + (point.1 - from.1) * (to.1 - from.1)) / long;
        let share = (along / long).clamp(0.0, 1.0);
        gap(point, between(*from, *to, share)) < (thick + (thin - thick) * share) * 0.86
    })
}

/// A closed outline with ends that are so far round.
pub(super) fn closed(nodes: &[Node], [first_cap, last_cap]: [f32; 2]) -> Vec<At> {
    let sides = sides_of(nodes);
    let (first, last) = (nodes[0], nodes[nodes.len() - 1]);
    let begins = nodes.get(1).map_or((0.0, 1.0), |second| way(first.0, second.0, (0.0, 1.0)));
    let mut around = sides.one;
    around.extend(cap(last, sides.ends, last_cap));
    around.extend(sides.other.into_iter().rev());
    around.extend(cap(first, (-begins.0, -begins.1), first_cap));
    around
}

/// The round end of a stick.
pub(super) fn cap((at, thick): Node, way: At, high: f32) -> [At; 2] {
    let tip = plus(at, way, high);
    let side = beside(way);
    [plus(tip, side, thick * 0.55), plus(tip, side, -thick * 0.55)]
}

/// The convex outline round points.
pub(super) fn hull(points: &[At]) -> Vec<At> {
    let points = points.iter().map(|(x, y)| (f64::from(*x), f64::from(*y))).collect();
    let around = crate::figure::balance::outline_round(points);
    around.into_iter().map(|(x, y)| (super::camera::small(x), super::camera::small(y))).collect()
}

/// A circle as a smooth outline.
pub(super) fn round(at: At, r: f32) -> Vec<At> {
    // Control points of a smooth curve lie outside it.
    let out = r * 1.11;
    (0_u8..6)
        .map(|step| {
            let (sin, cos) = (f32::from(step) * std::f32::consts::FRAC_PI_3).sin_cos();
            plus(at, (cos, sin), out)
        })
        .collect()
}
