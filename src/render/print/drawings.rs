//! A drawing on paper: its lines and shapes as items, its words shaped.

use super::page::{Grey, Item, Stroke};
use super::scale::Type;
use super::shaper::Shaper;
use super::sheets::one;
use super::strip::placed;
use crate::drawing::{
    Anchor, At, Corner, Drawing, Mark, Pen, Tone, curves_of, hatch_lines, start_of,
};

/// The grey of a tone on white paper.
const fn grey(tone: Tone) -> Grey {
    match tone {
        Tone::Ground => 1.0,
        Tone::Pale => 0.93,
        Tone::Measured => 0.78,
        Tone::Soft => 0.62,
        Tone::Ink => 0.0,
    }
}

/// The items of a drawing, from its top left corner; none where only measures are wanted.
pub fn place_drawing(shaper: &mut Shaper<'_>, drawing: &Drawing) -> Vec<Item> {
    if shaper.is_trial() {
        return Vec::new();
    }
    let was = std::mem::replace(&mut shaper.is_tight, true);
    let items = drawing.marks.iter().flat_map(|mark| place_mark(shaper, mark)).collect();
    shaper.is_tight = was;
    items
}

/// Marks that hold no words; the lines of figures are no thinner than `thinnest`, in points.
pub fn place_marks(marks: Vec<Mark>, thinnest: f32) -> impl Iterator<Item = Item> {
    marks.into_iter().flat_map(in_strokes).filter_map(move |mark| match mark {
        Mark::Line { from, to, pen } => Some(line(from, to, pen)),
        Mark::Shape { outline, fill, pen } => Some(Item::Shape {
            outline,
            fill: fill.map(grey),
            stroke: pen.map(|pen| Stroke {
                thickness: pen.thickness,
                grey: grey(pen.tone),
                dash: pen.dash,
                is_open: false,
            }),
        }),
        Mark::Smooth { around, look, is_open, scale } => Some(Item::Shape {
            outline: corners_of(&around, is_open),
            fill: look.fill().map(grey),
            stroke: look.pen().map(|(thickness, tone)| Stroke {
                thickness: (thickness * scale).max(thinnest),
                grey: grey(tone),
                dash: None,
                is_open,
            }),
        }),
        Mark::Words { .. } | Mark::Hatched { .. } => None,
    })
}

/// Paper has no hatching of its own: each stroke is drawn.
fn in_strokes(mark: Mark) -> Vec<Mark> {
    match mark {
        Mark::Hatched { outline, apart, pen } => hatch_lines(&outline, apart, pen),
        other => vec![other],
    }
}

/// A thinner line is lost on a cheap printer.
pub const THINNEST: f32 = 0.5;

/// A smooth line as corners of cubic curves.
fn corners_of(around: &[At], is_open: bool) -> Vec<Corner> {
    let mut pen = start_of(around, is_open);
    let mut corners = vec![Corner { at: pen, is_bent: false }];
    for (control, end) in curves_of(around, is_open) {
        // A quadratic curve as a cubic one: control points two thirds of the way to its own.
        let bent = [pen, end].map(|from| {
            let third = |a: f32, b: f32| a + (b - a) * 2.0 / 3.0;
            Corner { at: (third(from.0, control.0), third(from.1, control.1)), is_bent: true }
        });
        corners.extend(bent);
        corners.push(Corner { at: end, is_bent: false });
        pen = end;
    }
    corners
}

const fn line(from: At, to: At, pen: Pen) -> Item {
    Item::Line { from, to, thickness: pen.thickness, dash: pen.dash, grey: grey(pen.tone) }
}

fn place_mark(shaper: &mut Shaper<'_>, mark: &Mark) -> Vec<Item> {
    let Mark::Words { at, text, size, anchor, is_bold } = mark else {
        return place_marks(vec![mark.clone()], THINNEST).collect();
    };
    let kind = Type { is_bold: *is_bold, ..Type::body(*size) };
    let Some(shaped) = shaper.shape(&one(text.as_str()), kind, f32::MAX / 4.0).into_iter().next()
    else {
        return Vec::new();
    };
    let left = match anchor {
        Anchor::Start => at.0,
        Anchor::Middle => at.0 - shaped.width / 2.0,
        Anchor::End => at.0 - shaped.width,
    };
    let baseline = shaped.runs.first().map_or(0.0, |run| run.at.1);
    placed(shaped, left).map(|item| item.moved(0.0, at.1 - baseline)).collect()
}
