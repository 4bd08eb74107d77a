//! The trunk with its bib, and the neck.

use super::Sketch;
use super::outline::{Node, between, closed, sides_of};
use crate::drawing::Look;
use crate::figure::Point;

pub(super) fn draw_trunk(sketch: &mut Sketch<'_>) {
    let nodes = trunk_nodes(sketch);
    sketch.push(closed(&nodes, [0.045, 0.03].map(|high| high * sketch.girth())), Look::Near, false);
    // The bib lies from the shoulders to the waist, inside the line.
    let inset = |(at, thick): &Node| (*at, thick - 0.006);
    let bib: Vec<Node> = nodes[2..].iter().map(inset).collect();
    let sides = sides_of(&bib);
    let mut around = sides.one.clone();
    let top = super::outline::cap(bib[bib.len() - 1], sides.ends, 0.022 * sketch.girth());
    // Cut out for the neck.
    around.extend([top[0], between(top[0], top[1], 0.5), top[1]]);
    around.extend(sides.other.iter().rev());
    sketch.push(around, Look::Bib, false);
    if let (Some(one), Some(other)) = (sides.one.first(), sides.other.first()) {
        sketch.push(vec![*one, *other], Look::Thin, true);
    }
}

/// The middle line of the trunk from seat to shoulders, as thick as it looks from here.
fn trunk_nodes(sketch: &Sketch<'_>) -> Vec<Node> {
    let body = sketch.body;
    let g = sketch.girth();
    let node = |at: Point, frame: &crate::figure::Frame, broad: f32, deep: f32| {
        let wide = sketch.camera.extent(frame.left, frame.forward, broad * g, deep * g);
        (sketch.camera.see(at), wide)
    };
    let up = |share: f64| body.waist.toward(body.chest, share);
    let seat = body.hips.plus(body.pelvis.way(-0.004, 0.0, -0.022));
    vec![
        node(seat, &body.pelvis, 0.094, 0.064),
        node(body.hips.toward(body.waist, 0.3), &body.pelvis, 0.094, 0.07),
        node(body.waist, &body.ribs, 0.08, 0.06),
        node(up(0.45), &body.ribs, 0.1, 0.069),
        node(up(0.8), &body.ribs, 0.116, 0.07),
        node(up(0.98), &body.ribs, 0.116, 0.05),
    ]
}

pub(super) fn draw_neck(sketch: &mut Sketch<'_>) {
    let body = sketch.body;
    let g = sketch.girth();
    let from = sketch.camera.see(body.chest.toward(body.waist, 0.12));
    let to = sketch.camera.see(body.chin.toward(body.head, 0.5));
    let nodes: [Node; 3] =
        [(from, 0.05 * g), (between(from, to, 0.45), 0.033 * g), (to, 0.031 * g)];
    let sides = sides_of(&nodes);
    let mut around = sides.one;
    around.extend(sides.other.into_iter().rev());
    sketch.push(around, Look::Near, true);
}
