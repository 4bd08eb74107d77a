//! The poster of a term: a row a week, a column a day, every session with its date, a box to tick and its things,
//! as large as the sheet holds so that it is read at arm’s length.

use super::page::{Item, Key, Page, Role};
use super::scale::{SMALLEST, Type};
use super::shaper::Shaper;
use super::sheet_page::{SheetHead, first_room, inner_width, lay_columns, lay_head};
use super::sheets::{Letterhead, one};
use super::strip::{Column, Seat, Strip, placed};
use crate::pack::{Pack, Unit, UnitDay};
use crate::plan::unit::{PlannedDay, Slot, UnitPlan};
use crate::prose::{Run, plain_line};
use crate::quantity::Date;
use crate::render::unit::{UnitWords, clock, date_short, date_words, span_words, week_title};
use crate::words::{Filling, Words};

/// Titles are set in sizes from this one down to the smallest there is.
const LARGEST: u8 = 26;
const SMALLEST_POINT: u8 = 11;

/// Below this size of the titles the things are left out, so that the titles can be larger.
const LEAST_WITH_THINGS: u8 = 15;

/// The column of the weeks.
const WEEKS: f32 = 64.0;

/// Inside a cell, at each side.
const PAD: f32 = 7.0;

/// A row is no taller than this, though the sheet may have room.
const TALLEST: f32 = 130.0;

/// With more days a week than this they stand below one another, each with its name.
const MOST_COLUMNS: usize = 5;

/// What the poster is made of.
pub struct TermPoster<'p> {
    pub pack: &'p Pack,
    pub words: &'p Words,
    pub unit: &'p Unit,
    pub plan: &'p UnitPlan,
}

impl TermPoster<'_> {
    /// Whether the days of a week stand below one another.
    fn is_stacked(&self) -> bool {
        self.unit.days.len() > MOST_COLUMNS
    }

    fn columns(&self) -> usize {
        if self.is_stacked() { 1 } else { self.unit.days.len().max(1) }
    }
}

/// How the rows are set.
#[derive(Clone, Copy, Debug)]
struct Look {
    /// Of the titles.
    size: f32,
    /// Whether each session tells its things.
    has_things: bool,
    /// Each week is so much taller than it must be.
    grow: f32,
}

/// A row: a week, or days without school.
enum Row<'p> {
    Week { title: String, cells: Vec<Cell<'p>> },
    NoSchool(String),
}

/// A day of a week: its sessions, or why there are none.
struct Cell<'p> {
    days: Vec<&'p PlannedDay>,
    none: Option<(Date, String)>,
}

/// Lays out the poster: of the sizes tried in turn the first that fits one sheet; else several sheets.
pub fn lay_term_poster(shaper: &mut Shaper<'_>, poster: &TermPoster<'_>) -> Vec<Page> {
    let sheet = Letterhead::of_pack(poster.pack, poster.words);
    let said = UnitWords::of(poster.unit, poster.plan, poster.words);
    let kind = poster.words.say("unit-poster");
    let (items, height) = lay_head(shaper, &sheet, &kind, &said.title);
    let head = SheetHead { items, height: height + 2.0 };
    let lead = format!("{} · {}", said.dates, poster.words.say("unit-tick"));
    let rows = rows_of(poster);
    let room = first_room(&sheet, head.height) - 4.0;
    let mut strips = Vec::new();
    let with_things = (LEAST_WITH_THINGS..=LARGEST).rev().map(|size| (f32::from(size), true));
    let without = (SMALLEST_POINT..=LARGEST).rev().map(|size| (f32::from(size), false));
    for (size, has_things) in with_things.chain(without) {
        let is_last = size <= SMALLEST;
        if !is_last && !fits_words(shaper, poster, size, inner_width(&sheet)) {
            continue;
        }
        let look = Look { size, has_things, grow: 0.0 };
        strips = lay_rows(shaper, &sheet, poster, &rows, look, &lead);
        let used = height_of(&strips);
        if used <= room {
            let weeks = rows.iter().filter(|row| matches!(row, Row::Week { .. })).count();
            #[allow(clippy::cast_precision_loss, reason = "a unit has sixty weeks at most")]
            let spare = (room - used) / weeks.max(1) as f32;
            let look = Look { grow: spare.min(TALLEST), ..look };
            strips = lay_rows(shaper, &sheet, poster, &rows, look, &lead);
            break;
        }
    }
    lay_columns(shaper, &sheet, head, strips, 1)
}

fn height_of(strips: &[Strip]) -> f32 {
    strips.iter().map(|strip| strip.space_before + strip.height).sum()
}

fn rows_of<'p>(poster: &TermPoster<'p>) -> Vec<Row<'p>> {
    let (unit, plan, words) = (poster.unit, poster.plan, poster.words);
    let mut numbers: Vec<u32> = plan.slots.iter().map(|slot| slot.week).collect();
    numbers.dedup();
    let mut rows = Vec::new();
    let mut last: Option<Date> = None;
    for number in numbers {
        let first = plan.slots.iter().find(|slot| slot.week == number).map(|slot| slot.date);
        let monday = first.map(|date| date.plus_days(-date.days_after_monday()));
        if let (Some(from), Some(to)) = (last, monday) {
            rows.extend(holidays_between(poster, from, to));
        }
        last = monday.map(|monday| monday.plus_days(7));
        let of_column = |column: &UnitDay| cell_of(poster, number, column);
        let all = plan.days.iter().filter(|day| day.slot.week == number);
        let cells = if poster.is_stacked() {
            vec![Cell { days: all.collect(), none: None }]
        } else {
            unit.days.iter().map(of_column).collect()
        };
        rows.push(Row::Week { title: week_title(number, words), cells });
    }
    rows
}

fn cell_of<'p>(poster: &TermPoster<'p>, week: u32, column: &UnitDay) -> Cell<'p> {
    let is_here =
        |slot: &Slot| slot.week == week && slot.day == column.day.value && slot.at == column.at;
    let days: Vec<&PlannedDay> = poster.plan.days.iter().filter(|day| is_here(&day.slot)).collect();
    let out = poster.plan.slots.iter().find(|slot| is_here(slot) && slot.is_out);
    let off = out.and_then(|slot| Some((slot.date, poster.unit.no_school_on(slot.date)?)));
    let none = off.filter(|_| days.is_empty()).map(|(date, off)| {
        let plain = poster.words.say("unit-none-plain");
        (date, off.what.as_ref().map_or(plain, |what| plain_line(what)))
    });
    Cell { days, none }
}

/// Whole weeks without school between two that are taught.
fn holidays_between<'p>(poster: &TermPoster<'_>, from: Date, to: Date) -> Vec<Row<'p>> {
    let touches = |days: &&crate::pack::NoSchool| days.from.value < to && days.to >= from;
    let name = |days: &crate::pack::NoSchool| {
        let what = days.what.as_ref().map(|what| plain_line(what));
        let what = what.unwrap_or_else(|| poster.words.say("unit-none-plain"));
        format!("{what}, {}", span_words(days.from.value, days.to, poster.words))
    };
    if from == to {
        return Vec::new();
    }
    poster.unit.no_school.iter().filter(touches).map(|days| Row::NoSchool(name(days))).collect()
}

/// Whether no word of a title is wider than its column.
fn fits_words(shaper: &mut Shaper<'_>, poster: &TermPoster<'_>, size: f32, width: f32) -> bool {
    let room = cell_width(poster, width) - 2.0 * PAD;
    let titles =
        poster.plan.days.iter().map(|day| plain_line(&poster.pack.sessions[day.session].title));
    let words: Vec<String> = titles
        .flat_map(|title| title.split_whitespace().map(str::to_owned).collect::<Vec<_>>())
        .collect();
    words.iter().all(|word| {
        let lines =
            shaper.shape(&[Run::bold(word.as_str())], Type::key_point(size), f32::MAX / 4.0);
        lines.iter().all(|line| line.width <= room)
    })
}

fn cell_width(poster: &TermPoster<'_>, width: f32) -> f32 {
    #[allow(clippy::cast_precision_loss, reason = "a week has a few days")]
    let columns = poster.columns() as f32;
    (width - WEEKS) / columns
}

fn lay_rows(
    shaper: &mut Shaper<'_>,
    sheet: &Letterhead<'_>,
    poster: &TermPoster<'_>,
    rows: &[Row<'_>],
    look: Look,
    lead: &str,
) -> Vec<Strip> {
    let mut column = Column::new(shaper, inner_width(sheet));
    column.words(&one(lead), Type::body(12.0), Seat::default());
    column.gap(8.0);
    let table = column.shaper.next_key();
    lay_heads(&mut column, poster, table);
    for row in rows {
        match row {
            Row::Week { title, cells } => {
                lay_week(&mut column, poster, (title, cells), look, table);
            }
            Row::NoSchool(what) => lay_no_school(&mut column, what, poster.columns(), table),
        }
    }
    column.strips
}

/// The names of the days over their columns.
fn lay_heads(column: &mut Column<'_, '_>, poster: &TermPoster<'_>, table: Key) {
    let wide = cell_width(poster, column.width);
    let mut cells = vec![Item::group(Role::ColumnHead, column.shaper.next_key(), Vec::new())];
    let mut left = WEEKS + PAD;
    let mut tall = 0.0_f32;
    let days = if poster.is_stacked() { &[][..] } else { poster.unit.days.as_slice() };
    if poster.is_stacked() {
        cells.push(Item::group(Role::ColumnHead, column.shaper.next_key(), Vec::new()));
    }
    for day in days {
        let name = poster.words.say(&format!("weekday-{}", day.day.word()));
        let mut y = 0.0;
        let mut words = Vec::new();
        for line in
            column.shaper.shape(&one(format!("{name} {}", day.at)), Type::HEADING, wide - PAD)
        {
            words.extend(placed(line, left).map(|item| item.moved(0.0, y)));
            y += Type::HEADING.leading;
        }
        tall = tall.max(y);
        cells.push(Item::group(Role::ColumnHead, column.shaper.next_key(), words));
        left += wide;
    }
    let line = Item::line((0.0, tall + 3.0), (column.width, tall + 3.0), 2.6);
    push_row(column, cells, vec![line], tall + 3.0, table);
    column.keep_with_next();
}

fn push_row(
    column: &mut Column<'_, '_>,
    cells: Vec<Item>,
    drawn: Vec<Item>,
    tall: f32,
    table: Key,
) {
    let row = Item::group(Role::Row, column.shaper.next_key(), cells);
    let mut items = vec![Item::group(Role::Table, table, vec![row])];
    items.extend(drawn);
    column.drawing(tall, items);
}

fn lay_week(
    column: &mut Column<'_, '_>,
    poster: &TermPoster<'_>,
    (title, cells): (&str, &[Cell<'_>]),
    look: Look,
    table: Key,
) {
    let wide = cell_width(poster, column.width);
    let (words, mut tall) = words_at(column, (title, Type::HEADING), (0.0, PAD), WEEKS - 4.0);
    let mut row = vec![Item::group(Role::RowHead, column.shaper.next_key(), words)];
    let mut drawn = Vec::new();
    for (at, cell) in cells.iter().enumerate() {
        #[allow(clippy::cast_precision_loss, reason = "a week has a few days")]
        let left = WEEKS + wide * at as f32;
        let mut words = Vec::new();
        let mut y = PAD;
        for day in &cell.days {
            let (own, tick, below) = lay_day(column, poster, day, (left, y), (look, wide));
            words.extend(own);
            drawn.push(tick);
            y = below;
        }
        if let Some((date, what)) = &cell.none {
            let date = date_short(*date, poster.words);
            for text in [date.as_str(), what] {
                let at = (left + PAD, y);
                let (own, below) = words_at(column, (text, Type::body(12.0)), at, wide - 2.0 * PAD);
                words.extend(own);
                y = below;
            }
        }
        tall = tall.max(y);
        row.push(Item::group(Role::Cell, column.shaper.next_key(), words));
    }
    let tall = tall + PAD + look.grow;
    drawn.push(Item::line((0.0, tall), (column.width, tall), 0.8));
    for at in 0..cells.len() {
        #[allow(clippy::cast_precision_loss, reason = "a week has a few days")]
        let x = WEEKS + wide * at as f32;
        drawn.push(Item::line((x, 0.0), (x, tall), 0.8));
    }
    push_row(column, row, drawn, tall, table);
}

/// The date and its box to tick; the title and the things below.
fn lay_day(
    column: &mut Column<'_, '_>,
    poster: &TermPoster<'_>,
    day: &PlannedDay,
    (left, top): (f32, f32),
    (look, wide): (Look, f32),
) -> (Vec<Item>, Item, f32) {
    let side = 13.0;
    let tick = Item::rectangle((left + PAD, top + 1.5), (side, side), None, Some(1.2));
    let date = if poster.is_stacked() {
        format!("{} {}", date_words(day.slot.date, poster.words), clock(day))
    } else {
        date_short(day.slot.date, poster.words)
    };
    let beside = left + PAD + side + 6.0;
    let room = left + wide - PAD - beside;
    let (mut words, below) = words_at(column, (&date, Type::body(12.0)), (beside, top), room);
    let session = &poster.pack.sessions[day.session];
    let title = plain_line(&session.title);
    let top = below.max(top + side) + 3.0;
    let room = wide - 2.0 * PAD;
    let (own, mut below) =
        words_at(column, (&title, Type::key_point(look.size)), (left + PAD, top), room);
    words.extend(own);
    let needs = session.needs.iter().filter(|need| !need.optional);
    let needs: Vec<String> = needs.map(|need| plain_line(&need.counted())).collect();
    if look.has_things && !needs.is_empty() {
        let things = needs.join(", ");
        let things = poster.words.say_with("unit-things", &[("things", Filling::Text(&things))]);
        let at = (left + PAD, below + 2.0);
        let (own, end) = words_at(column, (&things, Type::body(12.5)), at, room);
        words.extend(own);
        below = end;
    }
    (words, tick, below)
}

/// A paragraph in lines from a corner on, and where it ends.
fn words_at(
    column: &mut Column<'_, '_>,
    (text, kind): (&str, Type),
    (left, top): (f32, f32),
    width: f32,
) -> (Vec<Item>, f32) {
    let mut y = top;
    let mut items = Vec::new();
    for line in column.shaper.shape(&one(text), kind, width) {
        items.extend(placed(line, left).map(|item| item.moved(0.0, y)));
        y += kind.leading;
    }
    (vec![Item::group(Role::Paragraph, column.shaper.next_key(), items)], y)
}

/// A whole row, pale, that says what it is.
fn lay_no_school(column: &mut Column<'_, '_>, what: &str, days: usize, table: Key) {
    let width = column.width;
    let (words, below) =
        words_at(column, (what, Type::body(13.0)), (WEEKS + PAD, 5.0), width - WEEKS - PAD);
    let mut row = vec![Item::group(Role::RowHead, column.shaper.next_key(), Vec::new())];
    row.push(Item::group(Role::Cell, column.shaper.next_key(), words));
    for _ in 1..days {
        row.push(Item::group(Role::Cell, column.shaper.next_key(), Vec::new()));
    }
    let tall = below + 6.0;
    let drawn = vec![Item::line((0.0, tall), (width, tall), 0.8)];
    push_row(column, row, drawn, tall, table);
}
