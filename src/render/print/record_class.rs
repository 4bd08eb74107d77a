//! The record sheet for a class: code names down the side, a page for each thing that is measured.

use super::page::Page;
use super::record::{MOST_COLUMNS, attempt_heads};
use super::scale::Type;
use super::shaper::Shaper;
use super::sheet_page::{SheetHead, first_room, inner_width, lay_columns, lay_head};
use super::sheets::{SheetSource, one};
use super::strip::{Column, Seat, Strip};
use super::table::{Table, draw_table};
use crate::pack::Measure;
use crate::prose::{Block, Marker, Run, plain_line, read_line};
use crate::read::words::Measured;
use crate::render::phrases::measure_sentence;

/// A row for a grown-up’s hand.
const ROW: f32 = 23.0;

/// So many criteria stand beside one another.
const MOST_CRITERIA: usize = 8;

/// What stands above a table, and the heads of its columns after the names.
struct ClassPage {
    title: String,
    says: String,
    /// What the numbers over the columns mean.
    numbered: Vec<Vec<Run>>,
    heads: Vec<String>,
}

/// Lays out a page for each measured part, and one for what success looks like.
pub fn lay_class_record(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let session = source.session;
    let measured = session.measured();
    let mut pages: Vec<ClassPage> = measured
        .flat_map(|(part, measure)| measured_pages(&plain_line(&part.title), measure, source))
        .collect();
    let success: Vec<Vec<Run>> = session.success.iter().map(|line| read_line(line)).collect();
    let says = source.words.say("record-class-tick");
    pages.extend(numbered_pages(&source.words.say("success"), &says, &success));
    pages.iter().flat_map(|page| lay_class_page(shaper, page, source)).collect()
}

fn measured_pages(title: &str, measure: &Measure, source: &SheetSource<'_>) -> Vec<ClassPage> {
    let says = measure_sentence(measure, source.words);
    if measure.what.value == Measured::Criteria {
        let criteria: Vec<_> = measure.criteria.iter().map(|line| read_line(line)).collect();
        return numbered_pages(title, &says, &criteria);
    }
    let heads = mark_heads(measure, source);
    vec![ClassPage { title: title.to_owned(), says, numbered: Vec::new(), heads }]
}

/// Each attempt and the best of them; the best alone where there is one, or more than there are columns.
fn mark_heads(measure: &Measure, source: &SheetSource<'_>) -> Vec<String> {
    let attempts = measure.attempts.as_ref().map_or(3, |attempts| attempts.value);
    let unit = measure.unit.as_ref().map(|unit| plain_line(unit)).unwrap_or_default();
    let best = source.words.say("best");
    let best = if unit.is_empty() { best } else { format!("{best} ({unit})") };
    let shown = if (2..=MOST_COLUMNS).contains(&attempts) { attempts } else { 0 };
    let mut heads = attempt_heads(shown, source);
    heads.push(best);
    heads
}

/// Lines too long to stand over a column are numbered; more than fit go on on another page.
fn numbered_pages(title: &str, says: &str, lines: &[Vec<Run>]) -> Vec<ClassPage> {
    let page = |lines: &[Vec<Run>], first: usize| ClassPage {
        title: title.to_owned(),
        says: says.to_owned(),
        numbered: lines.to_vec(),
        heads: (first..).take(lines.len()).map(|number| number.to_string()).collect(),
    };
    let chunks = lines.chunks(MOST_CRITERIA).enumerate();
    chunks.map(|(turn, lines)| page(lines, turn * MOST_CRITERIA + 1)).collect()
}

fn lay_class_page(
    shaper: &mut Shaper<'_>,
    page: &ClassPage,
    source: &SheetSource<'_>,
) -> Vec<Page> {
    let letterhead = source.letterhead();
    let kind = source.words.say("sheet-record-class");
    let (items, height) = lay_head(shaper, &letterhead, &kind, &page.title);
    let head = SheetHead { items, height: height + 4.0 };
    let mut column = Column::new(shaper, inner_width(&letterhead));
    column.words(&one(page.says.clone()), Type::body(12.0), Seat::default());
    column.gap(4.0);
    column.blocks(&numbered_blocks(page), Type::body(12.0), Seat::default());
    column.gap(8.0);
    let room = first_room(&letterhead, head.height) - 8.0 - height_of(&column.strips);
    let mut heads = vec![source.words.say("code-name")];
    heads.extend(page.heads.iter().cloned());
    let rows = vec![String::new(); rows_in(room)];
    draw_table(&mut column, &Table { heads, rows, first_share: first_share(page) }, ROW);
    let strips = column.strips;
    lay_columns(shaper, &letterhead, head, strips, 1)
}

fn numbered_blocks(page: &ClassPage) -> Vec<Block> {
    let first = page.heads.first().and_then(|head| head.parse().ok()).unwrap_or(1);
    let block = |(runs, number): (&Vec<Run>, u64)| Block {
        marker: Marker::Number(number),
        depth: 1,
        is_heading: false,
        runs: runs.clone(),
    };
    page.numbered.iter().zip(first..).map(block).collect()
}

fn height_of(strips: &[Strip]) -> f32 {
    strips.iter().map(|strip| strip.space_before + strip.height).sum()
}

/// As many rows as fill the page, after one of heads that may be two lines tall.
fn rows_in(room: f32) -> usize {
    let mut left = room - 2.0 * Type::LABEL.leading - 8.0;
    let mut rows = 0;
    while left >= ROW {
        left -= ROW;
        rows += 1;
    }
    rows.max(6)
}

/// Names are wide beside columns for a tick, and less so beside columns for a mark.
fn first_share(page: &ClassPage) -> f32 {
    match page.heads.len() {
        0..=2 => 1.0,
        3..=5 => 1.8,
        _ => 3.0,
    }
}
