//! The figure of a part on its card: a strip as tall as the size of the card allows, each moment a figure
//! with its own words for who can’t see it.

use super::card_type::CardType;
use super::drawings::{THINNEST, place_marks};
use super::page::{Item, Role};
use super::sheets::SheetSource;
use super::strip::{Column, Seat, placed};
use crate::drawing::Drawing;
use crate::drawing::figure::{Strip, draw_moment};
use crate::figure::{Caption, Moment};
use crate::pack::Part;
use crate::prose::{Run, read_line};
use crate::render::figure_phrases::figure_says;
use crate::render::phrases::is_right_to_left;
use crate::render::site::proportions_of;

/// Between two moments, in statures.
const GAP: f32 = 0.06;

/// Draws the figure of a part, where it has one and the card has room for drawings.
pub fn figure_strip(
    column: &mut Column<'_, '_>,
    part: &Part,
    source: &SheetSource<'_>,
    kind: CardType,
) {
    let moments = &part.figure.moments;
    if moments.is_empty() || kind.drawing == 0.0 {
        return;
    }
    let frames = draw_frames(column.width, moments, source, kind);
    column.gap(kind.gap(5.0));
    lay_frames(column, moments, frames, source, kind);
    for (index, moment) in moments.iter().enumerate() {
        if let Some(Caption::Words(words)) = &moment.caption {
            column.keep_with_next();
            let mut runs = Vec::new();
            if moments.len() > 1 {
                runs.push(Run::bold(format!("{} ", index + 1)));
            }
            runs.extend(read_line(words));
            column.words(&runs, kind.small(), Seat::default());
        }
    }
}

/// The moments in one scale: as tall as a drawing may be on this card, and together no wider than it.
fn draw_frames(
    width: f32,
    moments: &[Moment],
    source: &SheetSource<'_>,
    kind: CardType,
) -> Vec<Drawing> {
    let proportions = proportions_of(source.session);
    let is_rtl = is_right_to_left(source.words.language());
    let draw = |stature: f32| -> Vec<Drawing> {
        let strip = Strip { stature, is_rtl };
        moments.iter().map(|moment| draw_moment(moment, proportions, strip)).collect()
    };
    let trial = draw(100.0);
    let tallest = trial.iter().map(|frame| frame.height).fold(0.0, f32::max) / 100.0;
    let frames_wide: f32 = trial.iter().map(|frame| frame.width / 100.0).sum();
    #[allow(clippy::cast_precision_loss, reason = "a strip is a few moments")]
    let gaps = GAP * (moments.len() - 1) as f32;
    let most = width * kind.drawing.min(0.45) * 0.88;
    // A lying figure is no larger than one that stands.
    let stature = (most / tallest.max(0.9)).min(width / (frames_wide + gaps));
    draw(stature)
}

fn lay_frames(
    column: &mut Column<'_, '_>,
    moments: &[Moment],
    frames: Vec<Drawing>,
    source: &SheetSource<'_>,
    kind: CardType,
) {
    let tall = frames.iter().map(|frame| frame.height).fold(0.0, f32::max);
    let wide: f32 = frames.iter().map(|frame| frame.width).sum();
    #[allow(clippy::cast_precision_loss, reason = "a strip is a few moments")]
    let gap = (column.width - wide).max(0.0) / (frames.len() + 1) as f32;
    let gap = gap.min(tall * 0.5);
    let small = kind.small();
    let is_strip = frames.len() > 1;
    let mut items = Vec::new();
    let mut x = gap.min(8.0);
    for (index, frame) in frames.into_iter().enumerate() {
        let says = figure_says(&moments[index..=index], source.words);
        let down = tall - frame.height;
        let marks = place_marks(frame.marks, THINNEST).map(|item| item.moved(x, down)).collect();
        let key = column.shaper.next_key();
        items.push(Item::group(Role::Figure(says), key, marks));
        if is_strip {
            let number = column.shaper.shape(&[Run::bold((index + 1).to_string())], small, 60.0);
            for line in number {
                let left = x + (frame.width - line.width) / 2.0;
                let key = column.shaper.next_key();
                let words = placed(line, left).map(|item| item.moved(0.0, tall - 1.0)).collect();
                items.push(Item::group(Role::Paragraph, key, words));
            }
        }
        x += frame.width + gap;
    }
    let below = if is_strip { column.shaper.leading(small) - 2.0 } else { 0.0 };
    column.drawing(tall + below, items);
}
