//! The slip that goes home with a child: its own marks over time, what they say, and what comes next.
//! Nothing of anybody else stands on it.

use super::drawings::place_drawing;
use super::origin::Origin;
use super::page::Page;
use super::scale::Type;
use super::shaper::Shaper;
use super::sheet_page::{SheetHead, inner_width, lay_columns, lay_head};
use super::sheets::{Letterhead, one};
use super::strip::{Column, Seat};
use super::table_row::table_row;
use crate::progress::view::{SlipTask, SlipView};
use crate::prose::Run;
use crate::words::{Filling, Words};

/// Lays out one slip.
pub fn lay_slip(shaper: &mut Shaper<'_>, sheet: &Letterhead<'_>, slip: &SlipView) -> Vec<Page> {
    let words = sheet.words;
    let title = words.say_with("progress-slip-for", &[("code", Filling::Text(&slip.code))]);
    // Its code stands at the foot of every page, so that two slips are never mixed up.
    let sheet = &Letterhead {
        paper: sheet.paper,
        words,
        school: sheet.school.clone(),
        origin: Origin { code: Some(slip.code.clone()), ..sheet.origin.clone() },
    };
    let (items, height) = lay_head(shaper, sheet, &words.say("progress-slip"), &title);
    let mut column = Column::new(shaper, inner_width(sheet));
    column.words(&one(words.say("progress-slip-how")), Type::body(13.0), Seat::default());
    let strips = slip.tasks.iter().filter(|task| task.days.len() > 1);
    if let Some(has_band) = strips.map(|task| task.has_band).max() {
        let key = if has_band { "progress-slip-band" } else { "progress-slip-no-band" };
        column.words(&one(words.say(key)), Type::body(12.0), Seat::default());
    }
    for task in &slip.tasks {
        lay_task(&mut column, task, words);
    }
    if !slip.look_again.is_empty() {
        column.gap(16.0);
        column.label(&words.say("progress-slip-again"), Type::HEADING);
        for question in &slip.look_again {
            column.entry(&one(question.as_str()), Type::body(12.5));
        }
    }
    let strips = column.strips;
    lay_columns(shaper, sheet, SheetHead { items, height: height + 6.0 }, strips, 1)
}

fn lay_task(column: &mut Column<'_, '_>, task: &SlipTask, words: &Words) {
    let body = Type::body(12.5);
    column.gap(15.0);
    column.label(&task.title, Type { is_bold: true, ..Type::body(16.0) });
    if let Some(best) = &task.best {
        column.words(&[Run::bold(best.as_str())], Type::body(13.5), Seat::default());
        column.keep_with_next();
    }
    let said: Vec<&str> =
        task.change.as_deref().into_iter().chain([task.verdict.as_str()]).collect();
    column.words(&one(said.join(" ")), body, Seat::default());
    column.keep_with_next();
    // One day is no way yet to be drawn.
    if task.days.len() > 1 {
        column.gap(4.0);
        let items = place_drawing(column.shaper, &task.strip);
        column.figure(task.strip.height, items, &task.strip.says);
        column.keep_with_next();
    }
    column.gap(3.0);
    lay_days(column, task, words);
    column.gap(8.0);
    column.label(&words.say("progress-slip-next"), Type::LABEL);
    column.words(&one(task.next.as_str()), Type::body(13.5), Seat { indent: 10.0, has_bar: true });
}

/// The figures of the drawing.
fn lay_days(column: &mut Column<'_, '_>, task: &SlipTask, words: &Words) {
    let heads = ["progress-slip-day", "progress-slip-tries", "progress-slip-day-best"];
    let heads = heads.map(|key| words.say(key));
    let widths = [120.0, column.width - 240.0, 120.0];
    let head: Vec<(&str, f32)> = heads.iter().map(String::as_str).zip(widths).collect();
    table_row(column, &head, true);
    for day in &task.days {
        let cells: Vec<(&str, f32)> = day.iter().map(String::as_str).zip(widths).collect();
        table_row(column, &cells, false);
        column.keep_with_next();
    }
}
