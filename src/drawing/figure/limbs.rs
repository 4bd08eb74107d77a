//! Arms with hands, legs with feet.

use super::Sketch;
use super::camera::small;
use super::outline::{Node, between, closed, gap, hull, plus, round, sides_of, way};
use crate::drawing::{At, Look};
use crate::figure::proportions::{HEEL_SHARE, Segment};
use crate::figure::{Limb, Side};

/// A limb and where it lies to the trunk.
pub(super) struct Seen {
    pub limb: Limb,
    pub is_leg: bool,
    /// Drawn before the trunk.
    pub is_behind: bool,
    /// In the shade.
    is_far: bool,
    depth: f32,
}

/// All four limbs, those behind the trunk first, then the nearer the later.
pub(super) fn limbs_by_depth(sketch: &Sketch<'_>) -> Vec<Seen> {
    let body = sketch.body;
    let see = |limb: Limb, is_leg: bool| {
        let depth = |at| sketch.camera.depth(at);
        let trunk = if is_leg { body.hips } else { body.chest };
        let root = depth(limb.root) - depth(trunk);
        let upper = root.midpoint(depth(limb.bend) - depth(trunk));
        let is_far = root < -0.03;
        // A shin that is bent back leaves the thigh in front.
        let is_behind = if is_leg { is_far || upper < -0.06 } else { upper < -0.025 };
        Seen { limb, is_leg, is_behind, is_far, depth: upper }
    };
    let mut limbs: Vec<Seen> = Side::BOTH
        .into_iter()
        .flat_map(|side| [see(*body.leg(side), true), see(*body.arm(side), false)])
        .collect();
    // Of limbs on one side of the trunk, arms lie further from its middle than legs.
    limbs.sort_by(|a, b| {
        let rank = |seen: &Seen| (!seen.is_behind, seen.is_behind == seen.is_leg);
        rank(a).cmp(&rank(b)).then(a.depth.total_cmp(&b.depth))
    });
    limbs
}

pub(super) fn draw_limb(sketch: &mut Sketch<'_>, seen: &Seen) {
    let look = if seen.is_far { Look::Far } else { Look::Near };
    if seen.is_leg { draw_leg(sketch, seen, look) } else { draw_arm(sketch, seen, look) }
}

fn draw_arm(sketch: &mut Sketch<'_>, seen: &Seen, look: Look) {
    let g = sketch.girth();
    let limb = &seen.limb;
    let [root, bend, end, tip] =
        [limb.root, limb.bend, limb.end, limb.tip].map(|at| sketch.camera.see(at));
    let fingers = between(end, tip, 0.8);
    let nodes: [Node; 7] = [
        (root, 0.036 * g),
        (bend, 0.027 * g),
        (between(bend, end, 0.3), 0.029 * g),
        (between(bend, end, 0.9), 0.019 * g),
        (end, 0.019 * g),
        (between(end, tip, 0.4), 0.026 * g),
        (fingers, 0.016 * g),
    ];
    let long: f32 = nodes.windows(2).map(|pair| gap(pair[0].0, pair[1].0)).sum();
    if long < 0.09 {
        sketch.push(round(root, 0.034 * g), look, false);
        sketch.push(round(tip, 0.026 * g), look, false);
        return;
    }
    sketch.push(closed(&nodes, [0.034 * g, 0.015 * g]), look, false);
}

fn draw_leg(sketch: &mut Sketch<'_>, seen: &Seen, look: Look) {
    let g = sketch.girth();
    let limb = &seen.limb;
    let [root, bend, end] = [limb.root, limb.bend, limb.end].map(|at| sketch.camera.see(at));
    let nodes: [Node; 6] = [
        (between(root, bend, if seen.is_behind { 0.0 } else { 0.03 }), 0.061 * g),
        (between(root, bend, 0.5), 0.054 * g),
        (bend, 0.04 * g),
        (between(bend, end, 0.35), 0.042 * g),
        (between(bend, end, 0.85), 0.025 * g),
        (end, 0.025 * g),
    ];
    let foot = foot_outline(sketch, limb);
    let long: f32 = nodes.windows(2).map(|pair| gap(pair[0].0, pair[1].0)).sum();
    if long < 0.12 {
        sketch.push(round(bend, 0.045 * g), look, false);
        sketch.push(foot, look, false);
        return;
    }
    let sides = sides_of(&nodes);
    if !seen.is_behind {
        sketch.push(round(between(root, bend, 0.08), 0.056 * g), Look::Patch, false);
    }
    let foot = foot_below(&foot, (bend, end), sides.one.last().copied().unwrap_or(end));
    let mut around = sides.one;
    around.extend(foot);
    around.extend(sides.other.into_iter().rev());
    sketch.push(around, look, true);
}

/// The outline of a foot: its profile from heel to toes, at both edges.
fn foot_outline(sketch: &Sketch<'_>, limb: &Limb) -> Vec<At> {
    let body = sketch.body;
    let long = body.proportions.length(Segment::Foot);
    let low = body.proportions.ankle();
    // Along the foot from heel to toe, height from sole to ankle, half the width.
    let profile = [
        (0.03, 0.55, 0.010),
        (0.0, 0.22, 0.012),
        (0.06, -0.06, 0.014),
        (0.5, 0.0, 0.014),
        (0.93, -0.06, 0.018),
        (1.02, 0.2, 0.012),
        (0.9, 0.5, 0.014),
        (0.62, 0.78, 0.016),
        (0.42, 1.0, 0.014),
        (0.14, 1.0, 0.012),
    ];
    let corners: Vec<At> = profile
        .iter()
        .flat_map(|(along, up, half)| {
            [-1.0, 1.0].map(|edge| {
                let ahead = long * (along - HEEL_SHARE);
                let at = limb.frame.way(ahead, half * edge, low * (up - 1.0));
                sketch.camera.see(limb.end.plus(at))
            })
        })
        .collect();
    hull(&corners)
}

/// The corners of a foot that are not in the shin, beginning beside the shin’s side `from`.
fn foot_below(foot: &[At], (knee, ankle): (At, At), from: At) -> Vec<At> {
    let shin = way(knee, ankle, (0.0, 1.0));
    let is_kept = |at: &At| {
        let out = (at.0 - ankle.0, at.1 - ankle.1);
        let (along, aside) = (out.0 * shin.0 + out.1 * shin.1, out.0 * shin.1 - out.1 * shin.0);
        along > 0.006 || aside.abs() > 0.036
    };
    let count = foot.len();
    let begins = (0..count)
        .find(|index| is_kept(&foot[*index]) && !is_kept(&foot[(index + count - 1) % count]));
    let begins = begins.unwrap_or(0);
    let mut kept: Vec<At> =
        (0..count).map(|step| foot[(begins + step) % count]).filter(is_kept).collect();
    if let [first, .., last] = kept[..]
        && gap(last, from) < gap(first, from)
    {
        kept.reverse();
    }
    kept
}

/// The middle of the palm of a hand.
pub(super) fn palm(sketch: &Sketch<'_>, side: Side) -> At {
    let arm = sketch.body.arm(side);
    let (end, tip) = (sketch.camera.see(arm.end), sketch.camera.see(arm.tip));
    plus(end, (tip.0 - end.0, tip.1 - end.1), small(0.6))
}
