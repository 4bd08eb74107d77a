//! A slot as one bar: vigorous, moderate and light work, rest and talk, with the half marked that
//! should be moderate or vigorous.

use super::{Anchor, Drawing, Mark, Pen, Room, Tone};
use crate::plan::{EffortPlan, TimePlan};
use crate::quantity::Duration;
use crate::render::quantities::Said;
use crate::words::Words;

/// The bar’s height, and the room over it for the mark of the half.
const BAR: f32 = 26.0;
const OVER: f32 = 7.0;

/// Draws how a slot is filled. The words of each piece stand below it, where there is room.
pub fn draw_effort_bar(effort: &EffortPlan, time: &TimePlan, words: &Words, room: Room) -> Drawing {
    let whole = time.slot.max(time.total).seconds().max(1);
    let pieces = [
        ("effort-vigorous", effort.vigorous, Some(Tone::Ink)),
        ("effort-moderate", effort.moderate, Some(Tone::Measured)),
        ("effort-light", effort.light, Some(Tone::Pale)),
        ("effort-rest", effort.rest, Some(Tone::Ground)),
        ("effort-talk", effort.talk, None),
    ];
    let mut marks = Vec::new();
    let mut said = Vec::new();
    let mut left = 0.0;
    for (key, length, fill) in pieces {
        let width = room.width * share(length, whole);
        if width <= 0.0 {
            continue;
        }
        let (word, at) = (words.say(key), (left, OVER));
        let corners = [at, (left + width, OVER), (left + width, OVER + BAR), (left, OVER + BAR)];
        if fill.is_none() {
            let outline = corners.to_vec();
            marks.push(Mark::Hatched { outline, apart: 6.0, pen: Pen::soft(0.8) });
        }
        marks.push(Mark::rectangle(at, (width, BAR), fill, Some(Pen::ink(0.9))));
        // The words are guessed at half an em a letter: they are left out rather than run over.
        #[allow(clippy::cast_precision_loss, reason = "a word has a few letters")]
        let fits = word.chars().count() as f32 * room.words * 0.56 < width;
        if fits {
            let middle = (left + width / 2.0, OVER + BAR + room.words * 1.25);
            marks.push(Mark::words(middle, word.clone(), room.words, Anchor::Middle));
        }
        said.push(format!("{word} {}", length.say(words)));
        left += width;
    }
    let half = room.width / 2.0;
    marks.push(Mark::line((half, 0.0), (half, OVER + BAR + 2.0), Pen::ink(1.4).dashed(3.0, 2.0)));
    let drawing = Drawing {
        width: room.width,
        height: OVER + BAR + room.words * 1.6,
        marks,
        says: said.join(", "),
    };
    if room.is_rtl { drawing.mirrored() } else { drawing }
}

#[allow(clippy::cast_precision_loss, reason = "a day has fewer seconds than an f32 holds exactly")]
fn share(part: Duration, whole: u32) -> f32 {
    part.seconds() as f32 / whole as f32
}
