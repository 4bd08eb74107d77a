//! One child’s marks over time: an open ring a try, a filled one for the best of a day, and a band
//! around the first best in which a change is too close to call. Up is always better.

use super::pen::circle;
use super::scale_of_marks::{Scale, tick_steps};
use super::{Anchor, Drawing, Mark, Pen, Room, Tone};

/// One day; marks are in steps of the rule.
#[derive(Clone, Debug)]
pub struct StripDay {
    /// Where it stands between the first day and the last, from 0 to 1.
    pub share: f32,
    pub label: String,
    pub marks: Vec<f64>,
    pub best: Option<f64>,
}

/// What is drawn besides the days.
#[derive(Clone, Copy, Debug)]
pub struct StripSetting {
    /// Steps to either side of the first best; none where the noise is not known.
    pub band: Option<f64>,
    /// Times, where less is better, are drawn upside down.
    pub is_less_better: bool,
    /// A small one in a table has no words.
    pub has_words: bool,
}

/// Draws the strip; `show` writes a whole number of steps as a mark.
pub fn draw_mark_strip(
    days: &[StripDay],
    setting: StripSetting,
    show: &dyn Fn(i64) -> String,
    says: String,
    room: Room,
) -> Drawing {
    let (words, left) = if setting.has_words { (room.words, room.words * 4.6) } else { (0.0, 5.0) };
    let right = room.width - if setting.has_words { words * 2.2 } else { 5.0 };
    let (top, bottom) = (5.0 + words * 0.5, room.tallest - 5.0 - words * 1.7);
    let sides = if setting.is_less_better { (top, bottom) } else { (bottom, top) };
    let first = days.iter().find_map(|day| day.best);
    let band = first.zip(setting.band);
    let edges = band.into_iter().flat_map(|(first, band)| [first - band, first + band]);
    let marks = days.iter().flat_map(|day| day.marks.iter().copied()).chain(edges);
    let scale = Scale::over(marks, sides);
    let x = |day: &StripDay| left + 6.0 + day.share * (right - left - 12.0);
    let mut drawn = Vec::new();
    if let Some((first, band)) = band {
        let (a, b) = (scale.at(first - band), scale.at(first + band));
        let size = (right - left, (a - b).abs().max(1.0));
        drawn.push(Mark::rectangle((left, a.min(b)), size, Some(Tone::Pale), None));
    }
    if setting.has_words {
        drawn.extend(levels(&scale, show, (left, right), words));
        drawn.extend(days_below(days, x, bottom, words));
    }
    drawn.extend(marks_of(days, x, &scale, if setting.has_words { 3.4 } else { 2.4 }));
    let drawing = Drawing { width: room.width, height: room.tallest, marks: drawn, says };
    if room.is_rtl { drawing.mirrored() } else { drawing }
}

/// Thin lines at round marks, with the mark at the left.
fn levels(
    scale: &Scale,
    show: &dyn Fn(i64) -> String,
    (left, right): (f32, f32),
    words: f32,
) -> Vec<Mark> {
    let mut marks = Vec::new();
    for step in tick_steps(scale.ends(), 4) {
        let y = scale.at_step(step);
        marks.push(Mark::line((left, y), (right, y), Pen::soft(0.6)));
        marks.push(Mark::words((left - 6.0, y + words * 0.36), show(step), words, Anchor::End));
    }
    marks
}

/// The days under their marks; one that would touch the one before it is left out.
fn days_below(
    days: &[StripDay],
    x: impl Fn(&StripDay) -> f32,
    bottom: f32,
    words: f32,
) -> Vec<Mark> {
    let mut free = f32::MIN;
    let mut marks = Vec::new();
    for day in days {
        let middle = x(day);
        #[allow(clippy::cast_precision_loss, reason = "a date has a few letters")]
        let half = day.label.chars().count() as f32 * words * 0.27;
        if middle - half > free {
            free = middle + half + words * 0.6;
            let at = (middle, bottom + 5.0 + words * 1.3);
            marks.push(Mark::words(at, day.label.clone(), words, Anchor::Middle));
        }
    }
    marks
}

fn marks_of(
    days: &[StripDay],
    x: impl Fn(&StripDay) -> f32,
    scale: &Scale,
    radius: f32,
) -> Vec<Mark> {
    let bests: Vec<(f32, f32)> =
        days.iter().filter_map(|day| Some((x(day), scale.at(day.best?)))).collect();
    let mut marks: Vec<Mark> =
        bests.windows(2).map(|pair| Mark::line(pair[0], pair[1], Pen::ink(1.4))).collect();
    for day in days {
        for mark in &day.marks {
            let at = (x(day), scale.at(*mark));
            marks.push(circle(at, radius * 0.75, Some(Tone::Ground), Some(Pen::ink(0.8))));
        }
    }
    marks.extend(bests.into_iter().map(|at| circle(at, radius, Some(Tone::Ink), None)));
    marks
}
