//! The home guide: one page for the adult at home, with the running order, the things to gather, the
//! space and the cautions.

use super::drawings::place_drawing;
use super::page::{Item, Page, Role};
use super::scale::{SMALLEST, Type};
use super::scan::{film_code, page_code};
use super::shaper::Shaper;
use super::sheet_page::{SheetHead, TITLE_TOP, column_width, inner_width, lay_columns, lay_head};
use super::sheets::{SheetSource, one};
use super::strip::{Column, Seat, Strip, placed};
use crate::drawing::draw_time_line;
use crate::pack::{Need, Substitute};
use crate::plan::main_effort;
use crate::prose::{Run, plain_line, read_blocks, read_line};
use crate::render::borrowed_phrases::say_borrowed;
use crate::render::equipment_phrases::home_list;
use crate::render::phrases::{
    effort_name, floor_size, limits_of, need_name, part_name, place_name, substitute_name,
    surface_names,
};
use crate::render::quantities::Said;
use crate::words::Filling;

/// Sizes of the running text, largest first: the largest that fills one page is taken.
const SIZES: [Type; 6] = [
    Type { size: 12.5, leading: 16.0, is_bold: false },
    Type { size: 12.0, leading: 15.2, is_bold: false },
    Type { size: 11.5, leading: 14.4, is_bold: false },
    Type { size: SMALLEST, leading: 13.2, is_bold: false },
    Type { size: SMALLEST, leading: 12.8, is_bold: false },
    Type { size: SMALLEST, leading: 12.4, is_bold: false },
];

/// Lays out the home guide: one page, or more where it can’t be helped.
pub fn lay_home_guide(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let mut last = (SIZES[0], true);
    // What serves all needs at once stands on the page too: it is the first to give way.
    for has_together in [true, false] {
        for body in SIZES {
            let lay = |shaper: &mut Shaper<'_>| lay_guide(shaper, source, body, has_together);
            last = (body, has_together);
            if shaper.try_out(lay).len() == 1 {
                return lay(shaper);
            }
        }
    }
    lay_guide(shaper, source, last.0, last.1)
}

fn lay_guide(
    shaper: &mut Shaper<'_>,
    source: &SheetSource<'_>,
    body: Type,
    has_together: bool,
) -> Vec<Page> {
    let head = guide_head(shaper, source, body);
    let strips = guide_strips(shaper, source, body, has_together);
    lay_columns(shaper, &source.letterhead(), &head, strips, 2)
}

/// Title, summary, the facts in a row, the time line and the list of parts.
fn guide_head(shaper: &mut Shaper<'_>, source: &SheetSource<'_>, body: Type) -> SheetHead {
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
    let line = draw_time_line(source.session, &source.plans.time, source.words, source.room(width));
    let drawn = place_drawing(column.shaper, &line);
    column.figure(line.height, drawn, &line.says);
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
    let gap = 16.0;
    let shaped: Vec<_> = rows
        .iter()
        .map(|(figure, key)| {
            let figure = column.shaper.shape(&one(figure.clone()), Type::FIGURE, 400.0);
            let name = column.shaper.shape(&one(words.say(key)), Type::SMALL, 400.0);
            (figure, name)
        })
        .collect();
    let mut x = 0.0;
    let mut items = Vec::new();
    for (figure, name) in shaped {
        let width = figure.iter().chain(&name).map(|line| line.width).fold(0.0, f32::max);
        if x > 0.0 && x + width > column.width {
            column.drawing(34.0, std::mem::take(&mut items));
            column.gap(5.0);
            x = 0.0;
        }
        if x > 0.0 {
            items.push(Item::line((x - gap / 2.0, 2.0), (x - gap / 2.0, 32.0), 0.8));
        }
        let below = name.into_iter().flat_map(|line| placed(line, x));
        let below = below.map(|item| item.moved(0.0, 18.0));
        let words = figure.into_iter().flat_map(|line| placed(line, x)).chain(below).collect();
        items.push(Item::group(Role::Paragraph, column.shaper.next_key(), words));
        x += width + gap;
    }
    column.drawing(34.0, items);
}

/// “0:00 Warm-up: Heron and pike · 5 min” in two columns.
fn running_order(column: &mut Column<'_, '_>, source: &SheetSource<'_>) {
    let half = column_width(&source.letterhead(), 2);
    let entries: Vec<Vec<Run>> = source
        .session
        .parts
        .iter()
        .zip(&source.plans.time.spans)
        .map(|(part, span)| {
            let name = part_name(part, source.words);
            vec![
                Run::bold(format!("{}\u{2002}", span.start.clock())),
                Run::plain(format!("{name}: ")),
                Run::bold(plain_line(&part.title)),
                Run::plain(format!(" · {}", span.total.say(source.words))),
            ]
        })
        .collect();
    let rows = entries.len().div_ceil(2);
    let right = column.width - half;
    let lists = [column.shaper.next_key(), column.shaper.next_key()];
    for row in 0..rows {
        let sides = [(row, 0.0), (row + rows, right)];
        let mut items: Vec<Item> = Vec::new();
        let mut tall = 1;
        for (entry, left) in sides {
            let Some(runs) = entries.get(entry) else { continue };
            let lines = column.shaper.shape(runs, Type::SMALL, half);
            tall = tall.max(lines.len());
            let mut y = 0.0;
            let mut words = Vec::new();
            for line in lines {
                words.extend(placed(line, left).map(|item| item.moved(0.0, y)));
                y += column.shaper.leading(Type::SMALL);
            }
            let text = Item::group(Role::EntryText, column.shaper.next_key(), words);
            let whole = Item::group(Role::Entry, column.shaper.next_key(), vec![text]);
            // The right column is read after the left, though a row of both is laid at once.
            items.push(Item::group(
                Role::List { is_numbered: true },
                lists[usize::from(left > 0.0)],
                vec![whole],
            ));
        }
        #[allow(clippy::cast_precision_loss, reason = "a title is a few lines at most")]
        column.drawing(column.shaper.leading(Type::SMALL) * tall as f32, items);
    }
}

fn guide_strips(
    shaper: &mut Shaper<'_>,
    source: &SheetSource<'_>,
    body: Type,
    has_together: bool,
) -> Vec<Strip> {
    let mut column = Column::new(shaper, column_width(&source.letterhead(), 2));
    things(&mut column, source, body);
    if has_together {
        together(&mut column, source, body);
    }
    space(&mut column, source, body);
    adult(&mut column, source, body);
    cautions(&mut column, source, body);
    film(&mut column, source, body);
    column.strips
}

/// The closer the lines, the closer the headings.
fn heading(column: &mut Column<'_, '_>, text: &str, body: Type) {
    column.gap(body.leading * 0.5);
    column.label(text, Type::HEADING);
}

fn things(column: &mut Column<'_, '_>, source: &SheetSource<'_>, body: Type) {
    heading(column, &source.words.say("things"), body);
    if source.session.needs.is_empty() {
        column.words(&one(source.words.say("things-nothing")), body, Seat::default());
    }
    for need in &source.session.needs {
        let mut runs = vec![Run::bold(need_name(need, source.words))];
        if let Some(limits) = limits_of(&need.limits, source.words) {
            runs.push(Run::plain(format!(" ({limits})")));
        }
        let others: Vec<String> =
            need.substitutes.iter().map(|other| stand_in(other, need)).collect();
        if !others.is_empty() {
            runs.push(Run::plain(format!(" – {} ", source.words.say("or-use"))));
            runs.push(Run::plain(others.join("; ")));
        }
        if let Some(note) = &need.note {
            runs.push(Run::plain(". "));
            runs.extend(read_line(note));
        }
        if let Some(grip) = need.grip() {
            runs.push(Run::plain(". "));
            runs.extend(read_line(grip));
        }
        tick_entry(column, &runs, body);
    }
}

/// What serves every need at once.
fn together(column: &mut Column<'_, '_>, source: &SheetSource<'_>, body: Type) {
    let together = home_list(source.session, &source.plans.equipment, source.words);
    if together.len() > 1 {
        column.gap(4.0);
        let label = Run::bold(format!("{} ", source.words.say("things-together")));
        let list = Run::plain(format!("{}.", together.join(", ")));
        column.words(&[label, list], body, Seat::default());
    }
}

/// A stand-in; for a weight with how to fill and close it, which is what keeps it safe.
fn stand_in(other: &Substitute, need: &Need) -> String {
    let name = substitute_name(other, need.count);
    match other.note.as_ref().filter(|_| need.is_weight()) {
        Some(note) => format!("{name} ({})", plain_line(note).trim_end_matches('.')),
        None => name,
    }
}

/// An entry with a box to tick.
fn tick_entry(column: &mut Column<'_, '_>, runs: &[Run], body: Type) {
    let before = column.strips.len();
    column.ticked(runs, body, Seat { indent: 15.0, has_bar: false });
    if let Some(first) = column.strips.get_mut(before) {
        let top = (body.leading - 9.5) / 2.0 + 0.5;
        first.items.push(Item::rectangle((0.5, top), (9.0, 9.0), None, Some(0.9)));
    }
}

fn space(column: &mut Column<'_, '_>, source: &SheetSource<'_>, body: Type) {
    // The floor and the headroom stand large among the facts above.
    let surfaces = surface_names(source.session, source.words);
    if surfaces.is_empty() {
        return;
    }
    heading(column, &source.words.say("space"), body);
    let sentence = source.words.say_with("space-surface", &[("list", Filling::Text(&surfaces))]);
    column.words(&one(sentence), body, Seat::default());
}

fn adult(column: &mut Column<'_, '_>, source: &SheetSource<'_>, body: Type) {
    let words = source.words;
    heading(column, &words.say("adult"), body);
    let Some(adult) = &source.session.adult else {
        column.words(&one(words.say("adult-none")), body, Seat::default());
        return;
    };
    let mut runs = Vec::new();
    for (key, time) in [("adult-nearby-for", &adult.nearby), ("adult-helping-for", &adult.helping)]
    {
        let Some(time) = time else { continue };
        let time = time.say(words);
        let sentence = words.say_with(key, &[("time", Filling::Text(&time))]);
        runs.push(Run::plain(format!("{sentence} ")));
    }
    if let Some(why) = &adult.why {
        runs.extend(read_line(why));
    }
    column.words(&runs, body, Seat::default());
}

/// What the film shows, and a code to scan beside its address.
fn film(column: &mut Column<'_, '_>, source: &SheetSource<'_>, body: Type) {
    let Some(film) = &source.session.film else { return };
    heading(column, &source.words.say("film"), body);
    column.words(&read_line(&film.shows), body, Seat::default());
    column.keep_with_next();
    film_code(column, source, (Type::LABEL, Type::SMALL));
}

/// The session’s own cautions, the usual ones, and whose word comes first.
fn cautions(column: &mut Column<'_, '_>, source: &SheetSource<'_>, body: Type) {
    heading(column, &source.words.say("cautions"), body);
    let all = source.session.safety.iter().chain(&source.pack.cautions);
    for block in all.flat_map(|text| read_blocks(text)) {
        column.gap(1.5);
        column.entry(&block.runs, body);
    }
    column.gap(body.leading * 0.3);
    column.words(&one(source.words.say("local-rules")), body, Seat::default());
    if let Some(contact) = &source.pack.contact {
        column.gap(body.leading * 0.3);
        let mut runs = vec![Run::bold(format!("{}: ", source.words.say("foot-contact")))];
        runs.extend(read_line(contact));
        column.words(&runs, body, Seat::default());
    }
    if let Some(credit) = &source.session.credit {
        column.gap(body.leading * 0.3);
        let mut runs = read_line(credit);
        if let Some(borrowed) = say_borrowed(source.session, source.words) {
            runs.extend(one(format!(" · {borrowed}")));
        }
        column.words(&runs, Type::SMALL, Seat::default());
    }
}
