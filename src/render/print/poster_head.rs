//! The head of the wall poster: what it is about, and the title.

use super::large_head::{TitleSizes, lay_large_head};
use super::page::Item;
use super::shaper::Shaper;
use super::sheets::SheetSource;

/// A title is no larger where there is much to say below it.
const LARGEST: [(usize, f32); 3] = [(6, 58.0), (9, 50.0), (usize::MAX, 44.0)];

/// Between the head and the first part.
const BELOW: f32 = 15.0;

/// Lays the head over so many key points; and how tall it is.
pub fn lay_poster_head(
    shaper: &mut Shaper<'_>,
    width: f32,
    points: usize,
    source: &SheetSource<'_>,
) -> (Vec<Item>, f32) {
    let most = LARGEST.iter().find(|(count, _)| points <= *count).map_or(44.0, |(_, size)| *size);
    let sizes = TitleSizes {
        most,
        least_name: 31.0,
        two_lines: (40, 22),
        rest: (17.0, 27.0),
        may_have_more_lines: false,
    };
    let about = source.words.say(if points > 0 { "key-points" } else { "running-order" });
    let (items, tall) = lay_large_head(shaper, width, &about, sizes, source);
    (items, tall + BELOW)
}
