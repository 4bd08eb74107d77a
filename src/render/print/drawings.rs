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

/// A smooth line as corners of cubic curves: one for each two pieces of the spline, as long as it does not turn
/// back. It begins, ends and passes the middle where they do, and in their directions.
fn corners_of(around: &[At], is_open: bool) -> Vec<Corner> {
    let mut pen = start_of(around, is_open);
    let curves = curves_of(around, is_open);
    let mut corners = Vec::with_capacity(1 + 3 * curves.len());
    corners.push(Corner { at: pen, is_bent: false });
    let mut rest = curves.as_slice();
    while let Some((first, after)) = rest.split_first() {
        let pair = after.first().filter(|second| goes_on(pen, first.0, **second));
        // Of a quadratic curve, control points lie two thirds of the way to its own; of two in one, twice as far.
        let (share, last) = pair.map_or((2.0 / 3.0, first), |second| (4.0 / 3.0, second));
        let toward = |from: At, to: At| between(from, to, share);
        let bent = [toward(pen, first.0), toward(last.1, last.0)];
        corners.extend(bent.map(|at| Corner { at, is_bent: true }));
        corners.push(Corner { at: last.1, is_bent: false });
        pen = last.1;
        rest = &after[usize::from(pair.is_some())..];
    }
    corners
}

fn between(from: At, to: At, share: f32) -> At {
    (from.0 + (to.0 - from.0) * share, from.1 + (to.1 - from.1) * share)
}

/// Whether two pieces of a spline turn by less than 60°.
fn goes_on(start: At, control: At, (second, end): (At, At)) -> bool {
    let (begins, ends) =
        ((control.0 - start.0, control.1 - start.1), (end.0 - second.0, end.1 - second.1));
    let dot = |a: At, b: At| a.0 * b.0 + a.1 * b.1;
    let along = dot(begins, ends);
    along > 0.0 && along * along > 0.25 * dot(begins, begins) * dot(ends, ends)
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::drawing::figure::{Strip, draw_moment};
    use crate::figure::Moment;
    use crate::figure::library::Library;
    use crate::figure::proportions::Proportions;

    /// Points of a curve of Bézier (de Casteljau’s way), so many pieces.
    fn points(mut bend: Vec<At>, share: f32) -> At {
        while bend.len() > 1 {
            bend = bend.windows(2).map(|pair| between(pair[0], pair[1], share)).collect();
        }
        bend[0]
    }

    /// Every outline of every pose keeps to the spline within a hundredth of a stature over three: a tenth of
    /// a millimetre at 30 mm.
    #[test]
    fn curves_keep_to_the_spline() {
        let mut worst = 0.0_f32;
        for named in &Library::shipped().poses {
            let moment = Moment::of(&named.name, named.pose.clone());
            let strip = Strip { stature: 1.0, is_rtl: false };
            for mark in draw_moment(&moment, Proportions::of_age(10.0), strip).marks {
                let Mark::Smooth { around, is_open, .. } = mark else { continue };
                let mut pen = start_of(&around, is_open);
                let mut spline = Vec::new();
                for (control, end) in curves_of(&around, is_open) {
                    spline.extend(
                        (0..=8_u8).map(|at| points(vec![pen, control, end], f32::from(at) / 8.0)),
                    );
                    pen = end;
                }
                let corners = corners_of(&around, is_open);
                for bend in corners.windows(4).step_by(3) {
                    let bend: Vec<At> = bend.iter().map(|corner| corner.at).collect();
                    for at in 0..=16_u8 {
                        let point = points(bend.clone(), f32::from(at) / 16.0);
                        let gap = |pair: &[At]| {
                            let (from, to) = (pair[0], pair[1]);
                            let (dx, dy) = (to.0 - from.0, to.1 - from.1);
                            let long = (dx * dx + dy * dy).max(1e-12);
                            let along = ((point.0 - from.0) * dx + (point.1 - from.1) * dy) / long;
                            let near = between(from, to, along.clamp(0.0, 1.0));
                            (point.0 - near.0).hypot(point.1 - near.1)
                        };
                        worst = worst.max(spline.windows(2).map(gap).fold(f32::MAX, f32::min));
                    }
                }
            }
        }
        assert!(worst < 0.01 / 3.0, "{worst}");
    }
}
