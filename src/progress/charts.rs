//! Progress → drawings: the class as boxes and dots, a child as a strip over time. Each has its figures
//! in a table beside it.

use super::model::{ChildTask, Spread, TaskProgress};
use super::noise::{ERRORS, steps};
use super::phrases::Speaker;
use crate::drawing::{
    Drawing, Room, SpreadRow, StripDay, StripSetting, draw_class_spread, draw_mark_strip,
};
use crate::plan::marks::Mark;
use crate::read::words::Better;
use crate::render::phrases::is_right_to_left;

/// The width of a column on paper and of a chart on a page, and the smallest words there, in points.
const WIDE: f32 = 520.0;
const ON_PAGE: f32 = 350.0;
const WORDS: f32 = 11.0;

/// The class on its first and its latest day, for paper; none where it would name someone.
pub fn class_chart(task: &TaskProgress, speaker: Speaker<'_>) -> Option<Drawing> {
    class_chart_so_wide(task, speaker, WIDE)
}

/// The same for a page, which may be a phone’s.
pub fn class_chart_on_page(task: &TaskProgress, speaker: Speaker<'_>) -> Option<Drawing> {
    class_chart_so_wide(task, speaker, ON_PAGE)
}

fn class_chart_so_wide(task: &TaskProgress, speaker: Speaker<'_>, width: f32) -> Option<Drawing> {
    let [first, latest] = task.spread.as_ref()?;
    let row = |key: &str, spread: &Spread| SpreadRow {
        label: speaker.words.say(key),
        values: spread.values.clone(),
        least: spread.least,
        quartiles: spread.quartiles,
        most: spread.most,
    };
    let rows = [row("progress-first", first), row("progress-latest", latest)];
    let says = speaker.words.say("progress-spread-says");
    Some(draw_class_spread(&rows, &show(task), says, room(speaker, width, width)))
}

/// A child’s marks with words and levels, for a slip.
pub fn child_strip(task: &TaskProgress, child: &ChildTask, speaker: Speaker<'_>) -> Drawing {
    strip(task, child, speaker, true, room(speaker, WIDE, 108.0))
}

/// The same without words, for a row of a table.
pub fn small_strip(task: &TaskProgress, child: &ChildTask, speaker: Speaker<'_>) -> Drawing {
    strip(task, child, speaker, false, room(speaker, 110.0, 36.0))
}

fn strip(
    task: &TaskProgress,
    child: &ChildTask,
    speaker: Speaker<'_>,
    has_words: bool,
    room: Room,
) -> Drawing {
    let setting = StripSetting {
        band: task.noise.typical_error.map(|error| ERRORS * error),
        is_less_better: task.plan.better == Better::Less,
        has_words,
    };
    let title = speaker.part_title(task.at.session, task.at.part);
    let says = speaker.say("progress-strip-says", &[("code", &child.code), ("task", &title)]);
    draw_mark_strip(&days_of(child), setting, &show(task), says, room)
}

fn days_of(child: &ChildTask) -> Vec<StripDay> {
    let (Some(first), Some(last)) = (child.days.first(), child.days.last()) else {
        return Vec::new();
    };
    let whole = last.date.days_after(first.date);
    #[allow(clippy::cast_precision_loss, reason = "a school year has few days")]
    let share = |days: i32| if whole == 0 { 0.5 } else { days as f32 / whole as f32 };
    let day = |day: &super::model::DayMarks| StripDay {
        share: share(day.date.days_after(first.date)),
        label: day.date.to_string(),
        marks: day.attempts.iter().filter_map(|attempt| attempt.mark()).map(steps).collect(),
        best: day.best.map(steps),
    };
    child.days.iter().map(day).collect()
}

fn show(task: &TaskProgress) -> impl Fn(i64) -> String + use<> {
    let rule = task.plan.rule;
    move |steps| rule.show(Mark::from_steps(steps))
}

fn room(speaker: Speaker<'_>, width: f32, tallest: f32) -> Room {
    Room { width, tallest, words: WORDS, is_rtl: is_right_to_left(&speaker.pack.language) }
}
