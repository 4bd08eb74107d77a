//! Shapes that several drawings share: circles, arrows, dimensions, hatching.

use super::{Anchor, At, Corner, Mark, Pen, Tone};

/// How far a curve’s control point lies for a quarter of a circle.
const QUARTER: f32 = 0.5523;

/// A whole circle.
pub fn circle((x, y): At, r: f32, fill: Option<Tone>, pen: Option<Pen>) -> Mark {
    let k = r * QUARTER;
    let corners = [
        (x + r, y, false),
        (x + r, y + k, true),
        (x + k, y + r, true),
        (x, y + r, false),
        (x - k, y + r, true),
        (x - r, y + k, true),
        (x - r, y, false),
        (x - r, y - k, true),
        (x - k, y - r, true),
        (x, y - r, false),
        (x + k, y - r, true),
        (x + r, y - k, true),
        (x + r, y, false),
    ];
    Mark::Shape { outline: corners_of(&corners), fill, pen }
}

/// The upper half of a disc, on its flat side.
pub fn half_disc((x, y): At, r: f32) -> Mark {
    let k = r * QUARTER;
    let corners = [
        (x - r, y, false),
        (x - r, y - k, true),
        (x - k, y - r, true),
        (x, y - r, false),
        (x + k, y - r, true),
        (x + r, y - k, true),
        (x + r, y, false),
    ];
    Mark::Shape { outline: corners_of(&corners), fill: Some(Tone::Ink), pen: None }
}

fn corners_of(corners: &[(f32, f32, bool)]) -> Vec<Corner> {
    corners.iter().map(|(x, y, is_bent)| Corner { at: (*x, *y), is_bent: *is_bent }).collect()
}

/// An arrow with a filled head.
pub fn arrow(from: At, to: At, thickness: f32) -> Vec<Mark> {
    let (dx, dy) = (to.0 - from.0, to.1 - from.1);
    let length = dx.hypot(dy).max(0.01);
    let (ux, uy) = (dx / length, dy / length);
    let head = (thickness * 5.0).min(length * 0.6);
    let neck = (to.0 - ux * head, to.1 - uy * head);
    let half = head * 0.45;
    let sides =
        [(neck.0 - uy * half, neck.1 + ux * half), (neck.0 + uy * half, neck.1 - ux * half)];
    vec![
        Mark::line(from, neck, Pen::ink(thickness)),
        Mark::polygon(&[to, sides[0], sides[1]], Some(Tone::Ink), None),
    ]
}

/// A dimension between two points: a thin line with a stroke at each end, and its figure beside it.
pub fn dimension(from: At, to: At, figure: &str, size: f32) -> Vec<Mark> {
    let is_level = (from.1 - to.1).abs() < (from.0 - to.0).abs();
    let tick = 3.0;
    let ends = [from, to].map(|(x, y)| {
        let (a, b) =
            if is_level { ((x, y - tick), (x, y + tick)) } else { ((x - tick, y), (x + tick, y)) };
        Mark::line(a, b, Pen::ink(0.8))
    });
    let middle = (f32::midpoint(from.0, to.0), f32::midpoint(from.1, to.1));
    let words = if is_level {
        Mark::words((middle.0, middle.1 + size * 1.15), figure, size, Anchor::Middle)
    } else {
        Mark::words((middle.0 + tick + 2.0, middle.1 + size * 0.36), figure, size, Anchor::Start)
    };
    let mut marks = vec![Mark::line(from, to, Pen::ink(0.8))];
    marks.extend(ends);
    marks.push(words);
    marks
}

/// The strokes of [`Mark::Hatched`], for a medium that draws each.
pub fn hatch_lines(outline: &[At], apart: f32, pen: Pen) -> Vec<Mark> {
    // Lines x + y = sum; each crosses a convex outline in two points at most.
    let sums = outline.iter().map(|(x, y)| x + y);
    let (low, high) = sums.fold((f32::MAX, f32::MIN), |(l, h), sum| (l.min(sum), h.max(sum)));
    let mut marks = Vec::new();
    let mut sum = (low / apart).floor() * apart + apart;
    while sum < high && marks.len() < 400 {
        let mut crossings =
            outline.iter().zip(outline.iter().cycle().skip(1)).filter_map(|(a, b)| {
                let (from, to) = (a.0 + a.1 - sum, b.0 + b.1 - sum);
                ((from < 0.0) != (to < 0.0)).then(|| {
                    let share = from / (from - to);
                    (a.0 + (b.0 - a.0) * share, a.1 + (b.1 - a.1) * share)
                })
            });
        if let (Some(from), Some(to)) = (crossings.next(), crossings.next()) {
            marks.push(Mark::line(from, to, pen));
        }
        sum += apart;
    }
    marks
}
