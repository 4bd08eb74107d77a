//! The record sheet: a table to write marks on, the success criteria to tick, and room for a plan.

use super::page::{Item, Page, Role};
use super::scale::Type;
use super::shaper::Shaper;
use super::sheet_page::{SheetHead, inner_width, lay_columns, lay_head};
use super::sheets::{SheetSource, one};
use super::strip::{Column, Seat, placed};
use super::table::{Table, draw_table};
use crate::pack::{Measure, Part};
use crate::plan::MarksPlan;
use crate::prose::{plain_line, read_line};
use crate::read::words::Measured;
use crate::render::phrases::measure_sentence;
use crate::render::plan_phrases::points_sentence;
use crate::words::Filling;

/// Rows to fill in: a try a day for a school week, and one more.
const ROWS: u32 = 6;

/// Heights of a row that are tried until all stands on one page: a child’s hand can write in the lowest.
const HEIGHTS: [f32; 4] = [46.0, 41.0, 36.0, 32.0];

/// So many attempts stand side by side; more stand one below the other.
pub const MOST_COLUMNS: u32 = 12;

/// So many columns have room for a word over each; more have the number alone.
const MOST_NAMED: u32 = 5;

/// Lays out the record with the tallest rows that still fit one page.
pub fn lay_record(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let mut pages = Vec::new();
    for row in HEIGHTS {
        pages = lay_record_with(shaper, source, row);
        if pages.len() == 1 {
            break;
        }
    }
    pages
}

fn lay_record_with(shaper: &mut Shaper<'_>, source: &SheetSource<'_>, row: f32) -> Vec<Page> {
    let words = source.words;
    let (items, height) =
        lay_head(shaper, &source.letterhead(), &words.say("sheet-record"), &source.title());
    let mut column = Column::new(shaper, inner_width(&source.letterhead()));
    column.words(&one(words.say("marks-how")), Type::body(12.0), Seat::default());
    column.gap(10.0);
    blanks(&mut column, &[words.say("code-name")]);
    for (part, marks) in source.session.parts.iter().zip(&source.plans.marks) {
        if let Some(measure) = &part.measure {
            measured_part(&mut column, part, (measure, marks.as_ref()), (source, row));
        }
    }
    success(&mut column, source);
    column.gap(14.0);
    column.label(&words.say("next-time"), Type::HEADING);
    for _ in 0..5 {
        ruled_line(&mut column);
    }
    let strips = column.strips;
    lay_columns(shaper, &source.letterhead(), SheetHead { items, height: height + 4.0 }, strips, 1)
}

/// Names with a line to write on after each.
pub fn blanks(column: &mut Column<'_, '_>, names: &[String]) {
    #[allow(clippy::cast_precision_loss, reason = "one or two blanks")]
    let step = column.width / (names.len() as f32).max(2.0);
    let mut items = Vec::new();
    let mut x = 0.0;
    for name in names {
        for line in column.shaper.shape(&one(name.clone()), Type::LABEL, step * 0.6) {
            let from = x + line.width + 6.0;
            let words = placed(line, x).map(|item| item.moved(0.0, 8.0)).collect();
            items.push(Item::group(Role::Paragraph, column.shaper.next_key(), words));
            items.push(Item::line((from, 21.0), (x + step - 14.0, 21.0), 0.8));
        }
        x += step;
    }
    column.drawing(24.0, items);
}

fn measured_part(
    column: &mut Column<'_, '_>,
    part: &Part,
    (measure, marks): (&Measure, Option<&MarksPlan>),
    (source, row): (&SheetSource<'_>, f32),
) {
    column.gap(14.0);
    column.label(&plain_line(&part.title), Type::HEADING);
    column.words(&one(measure_sentence(measure, source.words)), Type::body(12.0), Seat::default());
    column.keep_with_next();
    if let Some(points) = marks.and_then(|marks| points_sentence(marks, source.words)) {
        column.words(&one(points), Type::body(12.0), Seat::default());
        column.keep_with_next();
    }
    column.gap(5.0);
    let table = table_of(measure, source);
    draw_table(column, &table, row);
}

fn table_of(measure: &Measure, source: &SheetSource<'_>) -> Table {
    let words = source.words;
    if measure.what.value == Measured::Criteria {
        let attempts = measure.attempts.as_ref().map_or(ROWS, |attempts| attempts.value);
        let mut heads = vec![words.say("record-look-for")];
        heads.extend(attempt_heads(attempts.clamp(1, MOST_COLUMNS), source));
        let rows = measure.criteria.iter().map(|criterion| plain_line(criterion)).collect();
        return Table { heads, rows, first_share: 3.5 };
    }
    let attempts = measure.attempts.as_ref().map_or(3, |attempts| attempts.value);
    let unit = measure.unit.as_ref().map(|unit| plain_line(unit)).unwrap_or_default();
    if attempts > MOST_COLUMNS {
        let mark = words.say_with("mark-in", &[("unit", Filling::Text(&unit))]);
        let heads = vec![words.say("attempt"), mark, words.say("date")];
        let rows = (1..=attempts).map(|number| number.to_string()).collect();
        return Table { heads, rows, first_share: 0.5 };
    }
    let mut heads = vec![words.say("date")];
    heads.extend(attempt_heads(attempts, source));
    let best = words.say("best");
    heads.push(if unit.is_empty() { best } else { format!("{best} ({unit})") });
    Table { heads, rows: vec![String::new(); ROWS as usize], first_share: 1.2 }
}

/// “Attempt 1”, “Attempt 2” …, or the numbers alone where the columns are narrow.
pub fn attempt_heads(attempts: u32, source: &SheetSource<'_>) -> Vec<String> {
    let name = source.words.say("attempt");
    let is_narrow = attempts > MOST_NAMED;
    (1..=attempts)
        .map(|number| if is_narrow { number.to_string() } else { format!("{name} {number}") })
        .collect()
}

/// Success criteria, each with a box to tick.
fn success(column: &mut Column<'_, '_>, source: &SheetSource<'_>) {
    if source.session.success.is_empty() {
        return;
    }
    column.gap(14.0);
    column.label(&source.words.say("success"), Type::HEADING);
    for line in &source.session.success {
        column.gap(3.0);
        let before = column.strips.len();
        let kind = Type::body(12.5);
        column.ticked(&read_line(line), kind, Seat { indent: 20.0, has_bar: false });
        if let Some(first) = column.strips.get_mut(before) {
            let top = (kind.leading - 12.0) / 2.0;
            first.items.push(Item::rectangle((0.5, top), (12.0, 12.0), None, Some(1.0)));
        }
    }
}

/// A line to write on.
pub fn ruled_line(column: &mut Column<'_, '_>) {
    let width = column.width;
    column.drawing(24.0, vec![Item::line((0.0, 23.0), (width, 23.0), 0.6)]);
}
