//! The record sheet: a table to write marks on, the success criteria to tick, and room for a plan.

use super::page::{Item, Key, Page, Role};
use super::scale::Type;
use super::shaper::Shaper;
use super::sheet_page::{SheetHead, inner_width, lay_columns, lay_head};
use super::sheets::{SheetSource, one};
use super::strip::{Column, Seat, placed};
use crate::pack::{Measure, Part};
use crate::plan::MarksPlan;
use crate::prose::{plain_line, read_line};
use crate::read::words::Measured;
use crate::render::phrases::measure_sentence;
use crate::render::plan_phrases::points_sentence;
use crate::words::Filling;

/// Rows to fill in: a try a day for a school week, and one more.
const ROWS: u32 = 6;

/// A row that a child’s hand can write in.
const ROW: f32 = 32.0;

/// So many attempts stand side by side; more stand one below the other.
const MOST_COLUMNS: u32 = 12;

/// So many columns have room for a word over each; more have the number alone.
const MOST_NAMED: u32 = 5;

pub fn lay_record(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let words = source.words;
    let (items, height) =
        lay_head(shaper, &source.letterhead(), &words.say("sheet-record"), &source.title());
    let mut column = Column::new(shaper, inner_width(&source.letterhead()));
    column.words(&one(words.say("marks-how")), Type::body(12.0), Seat::default());
    column.gap(10.0);
    blanks(&mut column, &[words.say("code-name")]);
    for (part, marks) in source.session.parts.iter().zip(&source.plans.marks) {
        if let Some(measure) = &part.measure {
            measured_part(&mut column, part, (measure, marks.as_ref()), source);
        }
    }
    success(&mut column, source);
    column.gap(14.0);
    column.label(&words.say("next-time"), Type::HEADING);
    for _ in 0..5 {
        ruled_line(&mut column);
    }
    let strips = column.strips;
    lay_columns(shaper, &source.letterhead(), &SheetHead { items, height: height + 4.0 }, strips, 1)
}

/// Names with a line to write on after each.
fn blanks(column: &mut Column<'_, '_>, names: &[String]) {
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
    source: &SheetSource<'_>,
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
    draw_table(column, &table);
}

/// A table to fill in: the heads of its columns, the first cell of each row, and how wide the first
/// column is against the others.
struct Table {
    heads: Vec<String>,
    rows: Vec<String>,
    first_share: f32,
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
fn attempt_heads(attempts: u32, source: &SheetSource<'_>) -> Vec<String> {
    let name = source.words.say("attempt");
    let is_narrow = attempts > MOST_NAMED;
    (1..=attempts)
        .map(|number| if is_narrow { number.to_string() } else { format!("{name} {number}") })
        .collect()
}

fn draw_table(column: &mut Column<'_, '_>, table: &Table) {
    #[allow(clippy::cast_precision_loss, reason = "ten columns at most")]
    let others = (table.heads.len() - 1).max(1) as f32;
    let unit = column.width / (others + table.first_share);
    let first = unit * table.first_share;
    let lefts: Vec<f32> = (0..=table.heads.len())
        .map(|index| {
            #[allow(clippy::cast_precision_loss, reason = "ten columns at most")]
            let index = index as f32;
            if index == 0.0 { 0.0 } else { first + unit * (index - 1.0) }
        })
        .collect();
    let key = column.shaper.next_key();
    row_strip(column, &lefts, &table.heads, (Type::LABEL, 0.0), (key, true));
    column.keep_with_next();
    for (index, row) in table.rows.iter().enumerate() {
        row_strip(column, &lefts, std::slice::from_ref(row), (Type::SMALL, ROW), (key, false));
        if index + 1 < table.rows.len() && index < 2 {
            column.keep_with_next();
        }
    }
}

/// One row of a table with its lines: as tall as its fullest cell, and at least `least`.
fn row_strip(
    column: &mut Column<'_, '_>,
    lefts: &[f32],
    cells: &[String],
    (kind, least): (Type, f32),
    (table, is_head): (Key, bool),
) {
    let pad = 5.0;
    let mut row = Vec::new();
    let mut tall = least;
    let empty = String::new();
    for (index, edges) in lefts.windows(2).enumerate() {
        let cell = cells.get(index).unwrap_or(&empty);
        let lines = column.shaper.shape(&one(cell.clone()), kind, edges[1] - edges[0] - 2.0 * pad);
        let mut y = 4.0;
        let mut words = Vec::new();
        for line in lines {
            words.extend(placed(line, edges[0] + pad).map(|item| item.moved(0.0, y)));
            y += kind.leading;
        }
        tall = tall.max(y + 4.0);
        let role = match (is_head, index) {
            (true, _) => Role::ColumnHead,
            (false, 0) if !cell.is_empty() => Role::RowHead,
            _ => Role::Cell,
        };
        row.push(Item::group(role, column.shaper.next_key(), words));
    }
    let row = Item::group(Role::Row, column.shaper.next_key(), row);
    let mut items = vec![Item::group(Role::Table, table, vec![row])];
    let (start, end) = (lefts[0], lefts[lefts.len() - 1]);
    items.push(Item::line((start, 0.0), (end, 0.0), 0.8));
    items.push(Item::line((start, tall), (end, tall), 0.8));
    items.extend(lefts.iter().map(|x| Item::line((*x, 0.0), (*x, tall), 0.8)));
    column.drawing(tall, items);
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
