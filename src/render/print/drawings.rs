//! A drawing on paper: its lines and shapes as items, its words shaped.

use super::page::{Grey, Item, Stroke};
use super::scale::Type;
use super::shaper::Shaper;
use super::sheets::one;
use super::strip::placed;
use crate::drawing::{Anchor, At, Drawing, Mark, Pen, Tone};

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

/// The items of a drawing, from its top left corner.
pub fn place_drawing(shaper: &mut Shaper<'_>, drawing: &Drawing) -> Vec<Item> {
    let was = std::mem::replace(&mut shaper.is_tight, true);
    let items = drawing.marks.iter().flat_map(|mark| place_mark(shaper, mark)).collect();
    shaper.is_tight = was;
    items
}

/// Marks that hold no words.
pub fn place_marks(marks: Vec<Mark>) -> impl Iterator<Item = Item> {
    marks.into_iter().filter_map(|mark| match mark {
        Mark::Line { from, to, pen } => Some(line(from, to, pen)),
        Mark::Shape { outline, fill, pen } => Some(Item::Shape {
            outline,
            fill: fill.map(grey),
            stroke: pen.map(|pen| Stroke {
                thickness: pen.thickness,
                grey: grey(pen.tone),
                dash: pen.dash,
            }),
        }),
        Mark::Words { .. } => None,
    })
}

const fn line(from: At, to: At, pen: Pen) -> Item {
    Item::Line { from, to, thickness: pen.thickness, dash: pen.dash, grey: grey(pen.tone) }
}

fn place_mark(shaper: &mut Shaper<'_>, mark: &Mark) -> Vec<Item> {
    let Mark::Words { at, text, size, anchor, is_bold } = mark else {
        return place_marks(vec![mark.clone()]).collect();
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
