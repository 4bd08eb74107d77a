//! The record sheet for a week: days across; what was done, the marks and the success criteria down.

use super::page::{Item, Page, Role};
use super::record::blanks;
use super::scale::Type;
use super::shaper::Shaper;
use super::sheet_page::{SheetHead, inner_width, lay_columns, lay_head};
use super::sheets::{SheetSource, one};
use super::strip::{Column, Seat, placed};
use super::table::{Table, draw_table};
use crate::prose::plain_line;

/// Heights of a row that are tried until the week stands on one page.
const ROWS: [f32; 5] = [38.0, 34.0, 29.0, 25.0, 22.0];

/// From Monday, as ISO 8601 counts them.
const DAYS: [&str; 7] = ["day-1", "day-2", "day-3", "day-4", "day-5", "day-6", "day-7"];

/// Lays out the week with the tallest rows that still fit one page.
pub fn lay_week_record(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let mut pages = Vec::new();
    for row in ROWS {
        pages = lay_week_with(shaper, source, row);
        if pages.len() == 1 {
            break;
        }
    }
    pages
}

fn lay_week_with(shaper: &mut Shaper<'_>, source: &SheetSource<'_>, row: f32) -> Vec<Page> {
    let (words, letterhead) = (source.words, source.letterhead());
    let (items, height) =
        lay_head(shaper, &letterhead, &words.say("sheet-record-week"), &source.title());
    let mut column = Column::new(shaper, inner_width(&letterhead));
    column.words(&one(words.say("record-week-how")), Type::body(12.0), Seat::default());
    column.gap(8.0);
    blanks(&mut column, &[words.say("code-name"), words.say("week-of")]);
    for (heading, rows) in sections(source) {
        column.gap(11.0);
        draw_table(&mut column, &week_table(&heading, rows, source), row);
    }
    column.gap(12.0);
    feelings(&mut column, source);
    let strips = column.strips;
    lay_columns(shaper, &letterhead, SheetHead { items, height: height + 4.0 }, strips, 1)
}

/// What was done, what was measured, what success looks like: those that have rows.
fn sections(source: &SheetSource<'_>) -> Vec<(String, Vec<String>)> {
    let (session, words) = (source.session, source.words);
    let done = session.parts.iter().map(|part| plain_line(&part.title)).collect();
    let marks = session.measured().map(|(part, measure)| {
        let unit = measure.unit.as_ref().map(|unit| format!(" ({})", plain_line(unit)));
        format!("{}{}", plain_line(&part.title), unit.unwrap_or_default())
    });
    let success = session.success.iter().map(|line| plain_line(line)).collect();
    let all = [
        (words.say("record-done"), done),
        (words.say("record-best-marks"), marks.collect()),
        (words.say("success"), success),
    ];
    all.into_iter().filter(|(_, rows): &(String, Vec<String>)| !rows.is_empty()).collect()
}

fn week_table(heading: &str, rows: Vec<String>, source: &SheetSource<'_>) -> Table {
    let mut heads = vec![heading.to_owned()];
    heads.extend(DAYS.map(|day| source.words.say(day)));
    Table { heads, rows, first_share: 4.2 }
}

/// A line to write on, after a question about the whole week.
fn feelings(column: &mut Column<'_, '_>, source: &SheetSource<'_>) {
    let width = column.width;
    let question = source.words.say("record-week-best");
    for line in column.shaper.shape(&one(question), Type::LABEL, width * 0.6) {
        let from = line.width + 6.0;
        let words = placed(line, 0.0).map(|item| item.moved(0.0, 8.0)).collect();
        let key = column.shaper.next_key();
        let mut items = vec![Item::group(Role::Paragraph, key, words)];
        items.push(Item::line((from, 22.0), (width, 22.0), 0.8));
        column.drawing(24.0, items);
    }
}
