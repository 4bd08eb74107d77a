//! The moments of a figure side by side, in one scale, each with its number and its own words for who can’t see it.

use super::page::{Item, Role};
use super::plate::Impression;
use super::scale::Type;
use super::shaper::Shaper;
use super::sheets::SheetSource;
use super::strip::placed;
use crate::figure::Moment;
use crate::prose::Run;

/// Between two moments, in statures.
const GAP: f32 = 0.06;

/// How wide and how tall moments are side by side, in statures.
#[derive(Clone, Copy, Debug)]
pub struct Extent {
    pub wide: f32,
    pub tall: f32,
}

/// Measures moments side by side.
pub fn measure_row(moments: &[Moment], source: &SheetSource<'_>) -> Extent {
    let frames = set_row(moments, 1.0, source);
    let tall = frames.iter().map(Impression::height).fold(0.0, f32::max);
    let frames_wide: f32 = frames.iter().map(Impression::width).sum();
    Extent { wide: frames_wide + GAP * between(moments.len()), tall }
}

/// The moments, all with the same stature.
pub fn set_row(moments: &[Moment], stature: f32, source: &SheetSource<'_>) -> Vec<Impression> {
    moments.iter().map(|moment| source.figures.set(moment, stature)).collect()
}

/// Lays moments beside each other from the left, so far apart, each over its number where they are several; and how
/// tall all is.
pub fn lay_row(
    shaper: &mut Shaper<'_>,
    (moments, frames): (&[Moment], Vec<Impression>),
    (left, gap): (f32, f32),
    numbers: Type,
    source: &SheetSource<'_>,
) -> (Vec<Item>, f32) {
    let tall = frames.iter().map(Impression::height).fold(0.0, f32::max);
    let is_strip = frames.len() > 1;
    let below = if is_strip { shaper.leading(numbers) - 2.0 } else { 0.0 };
    let mut items = Vec::new();
    if shaper.is_trial() {
        return (items, tall + below);
    }
    let mut x = left;
    for (index, frame) in frames.into_iter().enumerate() {
        let says = source.figures.says(&moments[index]).to_owned();
        let (width, at) = (frame.width(), (x, tall - frame.height()));
        let set = vec![Item::Plate(Impression { at, ..frame })];
        items.push(Item::group(Role::Figure(says), shaper.next_key(), set));
        if is_strip {
            let number = shaper.shape(&[Run::bold((index + 1).to_string())], numbers, 60.0);
            for line in number {
                let left = x + (width - line.width) / 2.0;
                let words = placed(line, left).map(|item| item.moved(0.0, tall - 1.0)).collect();
                items.push(Item::group(Role::Paragraph, shaper.next_key(), words));
            }
        }
        x += width + gap;
    }
    (items, tall + below)
}

/// The gaps between so many things.
#[allow(clippy::cast_precision_loss, reason = "a strip is a few moments")]
pub const fn between(count: usize) -> f32 {
    count.saturating_sub(1) as f32
}
