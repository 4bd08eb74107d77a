//! The head of the home guide: title, summary, facts, the time line and the running order.

use std::borrow::Cow;

use super::breaks::hold_directions;
use super::guide_line::Standing;
use super::page::{Item, Role};
use super::scale::Type;
use super::scan::page_code;
use super::shaper::{ShapedLine, Shaper};
use super::sheet_page::{SheetHead, TITLE_TOP, column_width, inner_width, lay_head};
use super::sheets::{SheetSource, one};
use super::strip::{Column, Seat, placed};
use crate::plan::main_effort;
use crate::prose::{Run, plain_line, read_line};
use crate::render::phrases::{colon, effort_name, floor_size, part_name, place_name};
use crate::render::quantities::Said;

/// Title, summary, the facts in a row, the time line and the list of parts.
pub fn lay_guide_head(
    shaper: &mut Shaper<'_>,
    source: &SheetSource<'_>,
    body: Type,
    line: &Standing<'_>,
) -> SheetHead {
    let width = inner_width(&source.letterhead());
    let kind = source.words.say("sheet-home-guide");
    let letterhead = source.letterhead();
    let (mut items, mut y) = lay_head(shaper, &letterhead, &kind, &source.title());
    let page = page_code(shaper, source);
    let corner = page.as_ref().map_or(0.0, |page| page.width);
    let title = shaper.shape(&one(source.title()), Type::SHEET_TITLE, width - corner);
    let mut column = Column::new(shaper, width - corner);
    column.words(&read_line(&source.session.summary), body, Seat::default());
    column.gap(7.0);
    // Beside a title of one line the code takes no room from the facts.
    let top = if title.len() == 1 { TITLE_TOP } else { y };
    let bottom = page.as_ref().map_or(0.0, |page| top + page.height);
    if title.len() == 1 {
        column.gap(bottom - y - height_of(&column));
        column.width = width;
    }
    facts(&mut column, source);
    column.width = width;
    if let Some(page) = page {
        column.gap((bottom - y - height_of(&column)).max(3.0));
        column.words(&page.words, Type::SMALL, Seat::default());
        items.extend(page.items.into_iter().map(|item| item.moved(width - corner, top)));
    }
    column.gap(10.0);
    line.lay(&mut column, source);
    column.gap(5.0);
    running_order(&mut column, source);
    for strip in std::mem::take(&mut column.strips) {
        y += strip.space_before;
        items.extend(strip.items.into_iter().map(|item| item.moved(0.0, y)));
        y += strip.height;
    }
    items.push(Item::line((0.0, y + 6.0), (width, y + 6.0), 0.8));
    SheetHead { items, height: y + 14.0 }
}

/// How far the strips of a column reach down.
fn height_of(column: &Column<'_, '_>) -> f32 {
    column.strips.iter().map(|strip| strip.space_before + strip.height).sum()
}

/// Between two facts.
const WIDE_GAP: f32 = 16.0;
const LEAST_GAP: f32 = 9.0;

/// Ages, minutes, space, where and effort, each figure large over its name.
fn facts(column: &mut Column<'_, '_>, source: &SheetSource<'_>) {
    let session = source.session;
    let words = source.words;
    let minutes = source.plans.time.slot;
    let space = session.space.as_ref();
    let rows = [
        Some((session.ages.to_string(), "fact-ages")),
        Some((minutes.say(words), "fact-time")),
        space.map(|s| (floor_size(s, words), "fact-space")),
        space.and_then(|s| s.height.as_ref()).map(|height| (height.say(words), "fact-headroom")),
        space.map(|s| (place_name(&s.whereabouts, words), "fact-place")),
        main_effort(session, &source.plans.time)
            .map(|effort| (effort_name(effort, words), "fact-effort")),
    ];
    let rows: Vec<_> = rows.into_iter().flatten().collect();
    let shaped: Vec<_> = rows
        .iter()
        .map(|(figure, key)| {
            let figure = column.shaper.shape(&one(figure.clone()), Type::FIGURE, 400.0);
            let name = column.shaper.shape(&one(words.say(key)), Type::SMALL, 400.0);
            (figure, name)
        })
        .collect();
    let wide = |(figure, name): &(Vec<ShapedLine>, Vec<ShapedLine>)| {
        figure.iter().chain(name).map(|line| line.width).fold(0.0, f32::max)
    };
    let all: f32 = shaped.iter().map(wide).sum();
    #[allow(clippy::cast_precision_loss, reason = "a handful of facts")]
    let gaps = shaped.len().saturating_sub(1).max(1) as f32;
    // A little closer, if all are on one line then.
    let gap = ((column.width - all) / gaps).floor().min(WIDE_GAP);
    let gap = if gap < LEAST_GAP { WIDE_GAP } else { gap };
    let mut x = 0.0;
    let mut items = Vec::new();
    for shaped in shaped {
        let width = wide(&shaped);
        let (figure, name) = shaped;
        if x > 0.0 && x + width > column.width {
            column.drawing(34.0, std::mem::take(&mut items));
            column.gap(5.0);
            x = 0.0;
        }
        if x > 0.0 {
            items.push(Item::line((x - gap / 2.0, 2.0), (x - gap / 2.0, 32.0), 0.8));
        }
        // The name stands below its figure and is read before it.
        for (lines, down) in [(name, 18.0), (figure, 0.0)] {
            let words = lines.into_iter().flat_map(|line| placed(line, x));
            let words = words.map(|item| item.moved(0.0, down)).collect();
            items.push(Item::group(Role::Paragraph, column.shaper.next_key(), words));
        }
        x += width + gap;
    }
    column.drawing(34.0, items);
}

/// Between a time and what is done then.
const AFTER_TIME: f32 = 7.0;

/// “0:00 Warm-up: Heron and pike · 5 min” in two columns, the times below each other.
fn running_order(column: &mut Column<'_, '_>, source: &SheetSource<'_>) {
    let half = column_width(&source.letterhead(), 2);
    let parts = source.session.parts.iter().zip(&source.plans.time.spans);
    let entries: Vec<(String, [Run; 3])> = parts
        .map(|(part, span)| {
            let name = part_name(part, source.words);
            // A time is not torn in two, and no line begins with the point before it.
            let total = span.total.say(source.words).replace(' ', "\u{a0}");
            let runs = [
                Run::plain(format!("{name}{}", colon(source.words))),
                Run::bold(plain_line(&part.title)),
                Run::plain(format!("\u{a0}· {total}")),
            ];
            (span.start.clock(), runs)
        })
        .collect();
    let bold = Type { is_bold: true, ..Type::SMALL };
    let widths = entries.iter().map(|(clock, _)| column.width_of(clock, bold));
    let hang = widths.fold(0.0, f32::max) + AFTER_TIME;
    let (left, right) = entries.split_at(entries.len().div_ceil(2));
    let mut items = Vec::new();
    let mut tall = 0.0_f32;
    for (entries, x) in [(left, 0.0), (right, column.width - half)] {
        let list = column.shaper.next_key();
        let mut y = 0.0;
        for (clock, runs) in entries {
            let time = [Run::bold(format!("{clock} "))];
            let time = column.shaper.shape(&time, Type::SMALL, half);
            let time = time.into_iter().flat_map(|line| placed(line, x));
            let mut words: Vec<Item> = time.map(|item| item.moved(0.0, y)).collect();
            let mut runs = Cow::Borrowed(runs.as_slice());
            if column.shaper.is_rtl() {
                runs = hold_directions(runs);
            }
            for line in column.shaper.shape(&runs, Type::SMALL, half - hang) {
                words.extend(placed(line, x + hang).map(|item| item.moved(0.0, y)));
                y += column.shaper.leading(Type::SMALL);
            }
            let text = Item::group(Role::EntryText, column.shaper.next_key(), words);
            let entry = Item::group(Role::Entry, column.shaper.next_key(), vec![text]);
            items.push(Item::group(Role::List { is_numbered: true }, list, vec![entry]));
        }
        tall = tall.max(y);
    }
    column.drawing(tall, items);
}
