//! The figure of a part on its card: a strip as tall as the size of the card allows; on a pocket card one moment
//! beside the key points, where it takes no room from them.

use super::card_type::CardType;
use super::moment_row::{between, lay_row, measure_row, set_row};
use super::page::{Item, Role};
use super::plate::Impression;
use super::scale::Type;
use super::sheets::SheetSource;
use super::strip::{Column, Seat};
use crate::figure::{Caption, Moment};
use crate::pack::Part;
use crate::prose::{Run, read_line};

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
    let frames = fit_frames(column.width, moments, source, kind);
    column.gap(kind.gap(5.0));
    let tall = frames.iter().map(Impression::height).fold(0.0, f32::max);
    let wide: f32 = frames.iter().map(Impression::width).sum();
    let gap = (column.width - wide).max(0.0) / (between(frames.len()) + 2.0);
    let gap = gap.min(tall * 0.5);
    let row = (moments.as_slice(), frames);
    let (items, height) = lay_row(column.shaper, row, (gap.min(8.0), gap), kind.small(), source);
    column.drawing(height, items);
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

/// Room that is left lets drawings grow so tall at most: 70 mm. Larger ones show no more and take much ink.
const TALLEST: f32 = 200.0;

/// The moments in one scale: as tall as a drawing may be on this card, and together no wider than it.
fn fit_frames(
    width: f32,
    moments: &[Moment],
    source: &SheetSource<'_>,
    kind: CardType,
) -> Vec<Impression> {
    let extent = measure_row(moments, source);
    let usual = width * kind.drawing.min(0.45) * 0.88;
    let most = (usual * kind.growth).min(usual.max(TALLEST));
    // A lying figure is no larger than one that stands.
    let stature = (most / extent.tall.max(0.9)).min(width / extent.wide);
    set_row(moments, stature, source)
}

/// The least stature on a pocket card: 16 mm.
const LEAST: f32 = 45.0;

/// As many key points are one piece on any pocket card.
const MOST_POINTS: usize = 3;

/// Between the longest key point and the figure.
const BESIDE: f32 = 8.0;

/// Puts one moment at the right of the key points that were laid last, from the strip with their label on: only
/// where each has one line and leaves it room. Other parts of a pocket card have no figure.
pub fn moment_beside_points(
    column: &mut Column<'_, '_>,
    from: usize,
    part: &Part,
    source: &SheetSource<'_>,
    kind: CardType,
) {
    let points = part.key_points.len();
    let lines = column.strips.len() - from - 1;
    if kind.drawing > 0.0 || lines != points || points > MOST_POINTS {
        return;
    }
    let tall: f32 = column.strips[from..].iter().map(|strip| strip.height).sum();
    let size = Type::key_point(kind.key_point);
    let ends = part.key_points.iter().map(|point| {
        let lines = column.shaper.shape(&read_line(point), size, f32::MAX / 4.0);
        10.0 + lines.first().map_or(0.0, |line| line.width)
    });
    let room = column.width - BESIDE - ends.fold(0.0, f32::max);
    let fitting = part.figure.by_weight().into_iter().find_map(|moment| {
        let extent = measure_row(std::slice::from_ref(moment), source);
        let stature = (tall / extent.tall.max(0.9)).min(room / extent.wide);
        (stature >= LEAST).then(|| (moment, source.figures.set(moment, stature)))
    });
    let Some((moment, set)) = fitting else { return };
    let (at, says) =
        ((column.width - set.width(), tall - set.height()), source.figures.says(moment));
    let set = vec![Item::Plate(Impression { at, ..set })];
    let figure = Item::group(Role::Figure(says.to_owned()), column.shaper.next_key(), set);
    column.strips[from].items.push(figure);
    for strip in column.strips[from..].iter_mut().rev().skip(1) {
        strip.keeps_next = true;
    }
}
