//! The head: an egg with a nose, an ear, eyes and a mouth as far as they are seen, so that its way of
//! facing is told.

use super::Sketch;
use super::camera::small;
use super::outline::{gap, plus, round};
use crate::drawing::{At, Look};
use crate::figure::Point;

/// Half the depth, width and height of a head, over its height.
const DEEP: f64 = 0.445;
const WIDE: f64 = 0.405;
const TALL: f64 = 0.5;

pub(super) fn draw_head(sketch: &mut Sketch<'_>) {
    let around = head_outline(sketch);
    sketch.push(around, Look::Near, false);
    draw_ear(sketch);
    draw_eyes(sketch);
    draw_mouth(sketch);
}

/// A point of the head: forwards, to the left, up, in its own half measures.
fn point(sketch: &Sketch<'_>, x: f64, y: f64, z: f64) -> Point {
    let (body, tall) = (sketch.body, sketch.body.proportions.head);
    body.head.plus(body.face.way(x * DEEP * tall, y * WIDE * tall, z * TALL * tall))
}

fn see(sketch: &Sketch<'_>, x: f64, y: f64, z: f64) -> At {
    sketch.camera.see(point(sketch, x, y, z))
}

/// The outline of an egg from any side: of all its points, the furthest each way.
fn head_outline(sketch: &Sketch<'_>) -> Vec<At> {
    let centre = sketch.camera.see(sketch.body.head);
    let axes = [(1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0)].map(|(x, y, z)| {
        let at = see(sketch, x, y, z);
        (at.0 - centre.0, at.1 - centre.1)
    });
    let nose = see(sketch, 1.15, 0.0, -0.12);
    let facing = (nose.1 - centre.1).atan2(nose.0 - centre.0);
    let edge = |angle: f32| {
        let (sin, cos) = angle.sin_cos();
        let reach = axes.map(|axis| axis.0 * cos + axis.1 * sin);
        let whole = reach.iter().map(|r| r * r).sum::<f32>().sqrt().max(1e-4);
        let at =
            axes.iter().zip(reach).fold((0.0, 0.0), |sum, (axis, r)| plus(sum, *axis, r / whole));
        plus(centre, at, 1.055)
    };
    let steps = 10_u8;
    let turn = std::f32::consts::TAU / f32::from(steps);
    let has_nose = gap(nose, centre) > gap(edge(facing), centre) * 1.02;
    let mut around = Vec::new();
    for step in 0..steps {
        let angle = facing + f32::from(step) * turn;
        if step == 0 && has_nose {
            around.extend([edge(facing - 0.19), nose, nose, edge(facing + 0.19)]);
        } else {
            around.push(edge(angle));
        }
    }
    around
}

fn draw_eyes(sketch: &mut Sketch<'_>) {
    let tall = small(sketch.body.proportions.head);
    for side in [-1.0, 1.0] {
        let (x, y) = (0.74, 0.42 * side);
        let eye = point(sketch, x, y, 0.1);
        let outward = sketch.body.face.way(x, y, 0.0);
        if sketch.camera.depth(outward) > -0.05 {
            let at = sketch.camera.see(eye);
            sketch.push(round(at, 0.058 * tall), Look::Ink, false);
        }
    }
}

fn draw_mouth(sketch: &mut Sketch<'_>) {
    let ends = [-0.32, 0.32].map(|y| (0.8, y, -0.38));
    let seen =
        |(x, y, _): (f64, f64, f64)| sketch.camera.depth(sketch.body.face.way(x, y, 0.0)) > -0.1;
    let middle = (0.93, 0.0, -0.62);
    if !ends.iter().any(|end| seen(*end)) || !seen((0.9, 0.0, 0.0)) {
        return;
    }
    let mut line: Vec<At> = Vec::new();
    for at in [ends[0], middle, ends[1]] {
        if seen(at) || at == middle {
            line.push(see(sketch, at.0, at.1, at.2));
        }
    }
    sketch.push(line, Look::Thin, true);
}

fn draw_ear(sketch: &mut Sketch<'_>) {
    for side in [-1.0, 1.0] {
        let outward = sketch.body.face.way(-0.1, side, 0.0);
        if sketch.camera.depth(outward) > 0.5 {
            let ear = [(-0.02, 0.16), (-0.24, 0.2), (-0.26, -0.1), (-0.06, -0.2)];
            let line = ear.map(|(x, z)| see(sketch, x, side, z)).to_vec();
            sketch.push(line, Look::Thin, true);
        }
    }
}
