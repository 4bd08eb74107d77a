//! The running order drawn to scale: one bar a part, as wide as it is long and taller the harder it is.

use super::marks::part_mark;
use super::{Anchor, Drawing, Mark, Pen, Room, Tone};
use crate::pack::{PartKind, Session};
use crate::plan::TimePlan;
use crate::read::words::Effort;
use crate::words::{Filling, Words};

/// The tallest bar.
const BAR: f32 = 36.0;

/// Between two bars.
const GAP: f32 = 1.5;

/// Draws the time line of a session.
pub fn draw_time_line(session: &Session, time: &TimePlan, words: &Words, room: Room) -> Drawing {
    let whole = time.total.seconds().max(time.slot.seconds()).max(1);
    let at = |seconds: u32| room.width * share(seconds, whole);
    let mark = room.words * 1.15;
    let (mut marks, mut kinds) = (Vec::new(), Vec::new());
    for (part, span) in session.parts.iter().zip(&time.spans) {
        let (left, right) = (at(span.start.seconds()), at(span.end().seconds()));
        let tall = BAR * height_of(part.effort.as_ref().map(|effort| effort.value));
        let fill = if part.kind == PartKind::Challenge { Tone::Measured } else { Tone::Pale };
        let wide = (right - left - GAP).max(0.8);
        let bar =
            Mark::rectangle((left, BAR - tall), (wide, tall), Some(fill), Some(Pen::ink(0.8)));
        marks.push(bar);
        if right - left > mark {
            let middle = f32::midpoint(left, right) - mark / 2.0;
            kinds.extend(part_mark(part.kind, (middle, BAR + 5.0), mark));
        }
    }
    // What is drawn alike stands together, so that a page can say it once.
    kinds.sort_by_key(|mark| matches!(mark, Mark::Shape { fill: Some(_), .. }));
    marks.append(&mut kinds);
    marks.push(Mark::line((0.0, BAR), (room.width, BAR), Pen::ink(1.6)));
    let ticks = BAR + mark + 8.0;
    let (lines, figures): (Vec<_>, Vec<_>) = minute_ticks(whole, ticks, room).into_iter().unzip();
    marks.extend(lines.into_iter().chain(figures));
    let minutes = time.slot.seconds().div_ceil(60);
    let drawing = Drawing {
        width: room.width,
        height: ticks + 5.0 + room.words * 1.3,
        marks,
        says: words.say_with("line-label", &[("minutes", Filling::Count(minutes))]),
    };
    if room.is_rtl { drawing.mirrored() } else { drawing }
}

/// How much of the tallest bar an effort takes.
const fn height_of(effort: Option<Effort>) -> f32 {
    match effort {
        Some(Effort::Vigorous) => 1.0,
        Some(Effort::Moderate) => 0.68,
        Some(Effort::Light) => 0.38,
        None | Some(Effort::Rest) => 0.14,
    }
}

/// A tick and its minute: every five, or every ten of a long slot.
fn minute_ticks(whole: u32, top: f32, room: Room) -> Vec<(Mark, Mark)> {
    let step = if whole > 45 * 60 { 600 } else { 300 };
    let last = room.width - 0.4;
    (0..=whole)
        .step_by(step)
        .map(|second| {
            let x = (room.width * share(second, whole)).clamp(0.4, last);
            let anchor = match x {
                x if x < room.words => Anchor::Start,
                x if x > last - room.words => Anchor::End,
                _ => Anchor::Middle,
            };
            let number = (second / 60).to_string();
            let baseline = top + 5.0 + room.words;
            (
                Mark::line((x, top), (x, top + 4.0), Pen::ink(0.8)),
                Mark::words((x, baseline), number, room.words, anchor),
            )
        })
        .collect()
}

#[allow(clippy::cast_precision_loss, reason = "a day has fewer seconds than an f32 holds exactly")]
fn share(seconds: u32, whole: u32) -> f32 {
    seconds as f32 / whole as f32
}
