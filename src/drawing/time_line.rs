//! The running order drawn to scale: one bar a part, as wide as it is long and taller the harder it is.

use super::marks::part_mark;
use super::{Anchor, Drawing, Mark, Pen, Room, Tone};
use crate::pack::{PartKind, Session};
use crate::plan::TimePlan;
use crate::read::words::Effort;
use crate::words::{Filling, Words};

/// The tallest bar.
const BAR: f32 = 36.0;

/// The same where figures stand on the bars.
const LOW_BAR: f32 = 20.0;

/// Between two bars.
const GAP: f32 = 1.5;

/// From the foot of the bars to the marks.
const UNDER: f32 = 5.0;

/// A part as a bar: where it stands, and how tall it is.
#[derive(Clone, Copy, Debug)]
pub struct Bar {
    pub left: f32,
    pub width: f32,
    pub height: f32,
}

/// Draws the time line of a session.
pub fn draw_time_line(session: &Session, time: &TimePlan, words: &Words, room: Room) -> Drawing {
    let mark = room.words * 1.15;
    let bars = bars_of(session, time, (room.width, BAR));
    let mut marks = draw_bars(session, &bars, BAR, room);
    let ticks_top = BAR + mark + 8.0;
    let ticks = minute_ticks(whole_of(time), ticks_top, room);
    let (lines, figures): (Vec<_>, Vec<_>) = ticks.into_iter().unzip();
    marks.extend(lines.into_iter().chain(figures));
    let height = ticks_top + 5.0 + room.words * 1.3;
    let drawing = Drawing { width: room.width, height, marks, says: line_says(time, words) };
    if room.is_rtl { drawing.mirrored() } else { drawing }
}

/// Draws the time line with low bars and without its minutes, its foot under so much room for figures that
/// stand on the bars; and the bars.
pub fn draw_low_time_line(
    session: &Session,
    time: &TimePlan,
    words: &Words,
    (room, above): (Room, f32),
) -> Drawing {
    let bars = low_bars(session, time, room.width);
    let marks = draw_bars(session, &bars, above, room);
    let height = above + UNDER + room.words * 1.15 + 1.0;
    let drawing = Drawing { width: room.width, height, marks, says: line_says(time, words) };
    if room.is_rtl { drawing.mirrored() } else { drawing }
}

/// The bars of a low time line so wide, for what stands on them.
pub fn low_bars(session: &Session, time: &TimePlan, width: f32) -> Vec<Bar> {
    bars_of(session, time, (width, LOW_BAR))
}

fn line_says(time: &TimePlan, words: &Words) -> String {
    let minutes = time.slot.seconds().div_ceil(60);
    words.say_with("line-label", &[("minutes", Filling::Count(minutes))])
}

fn whole_of(time: &TimePlan) -> u32 {
    time.total.seconds().max(time.slot.seconds()).max(1)
}

fn bars_of(session: &Session, time: &TimePlan, (width, tallest): (f32, f32)) -> Vec<Bar> {
    let at = |seconds: u32| width * share(seconds, whole_of(time));
    let parts = session.parts.iter().zip(&time.spans);
    parts
        .map(|(part, span)| {
            let (left, right) = (at(span.start.seconds()), at(span.end().seconds()));
            let height = tallest * height_of(part.effort.as_ref().map(|effort| effort.value));
            Bar { left, width: right - left, height }
        })
        .collect()
}

/// The bars over their foot, and the mark of each part below.
fn draw_bars(session: &Session, bars: &[Bar], foot: f32, room: Room) -> Vec<Mark> {
    let mark = room.words * 1.15;
    let (mut marks, mut kinds) = (Vec::new(), Vec::new());
    for (part, bar) in session.parts.iter().zip(bars) {
        let fill = if part.kind == PartKind::Challenge { Tone::Measured } else { Tone::Pale };
        let size = ((bar.width - GAP).max(0.8), bar.height);
        let pen = Some(Pen::ink(0.8));
        marks.push(Mark::rectangle((bar.left, foot - bar.height), size, Some(fill), pen));
        if bar.width > mark {
            let middle = bar.left + (bar.width - mark) / 2.0;
            kinds.extend(part_mark(part.kind, (middle, foot + UNDER), mark));
        }
    }
    // What is drawn alike stands together, so that a page can say it once.
    kinds.sort_by_key(|mark| matches!(mark, Mark::Shape { fill: Some(_), .. }));
    marks.append(&mut kinds);
    marks.push(Mark::line((0.0, foot), (room.width, foot), Pen::ink(1.6)));
    marks
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
