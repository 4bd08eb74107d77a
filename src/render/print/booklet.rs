//! The booklet: the cover with what is inside, then every card as a page of half a sheet, two pages to
//! a side, so that the printed stack is folded once and reads in order. How far folded sheets creep
//! outwards is left out of account: a session has a few sheets.

use super::card_fit::{Card, CardForm, Cell};
use super::card_plan::lay_all_cards;
use super::card_type::PAGE;
use super::drawings::{THINNEST, place_marks};
use super::flow::{break_frames, place_frames};
use super::impose::{booklet_sides, padded};
use super::one_line::fit_line;
use super::origin::Origin;
use super::page::{BLACK, Item, Key, Page, Role, WHITE};
use super::record::ruled_line;
use super::scale::{MARGIN, SMALLEST, Type, paper_size};
use super::shaper::Shaper;
use super::sheets::{SheetSource, one, shape_title};
use super::strip::{Column, Seat, Strip, placed};
use crate::drawing::part_mark;
use crate::prose::{Run, read_line};
use crate::render::phrases::{colon, floor_size};
use crate::render::quantities::Said as _;

/// The line at the foot of a page.
const FOOT: f32 = 18.0;

/// Sizes of the summary and of the list of pages, tried until the cover is one page; the last are
/// there for the lists that go on on a second or third.
const COVER_SIZES: [(f32, f32); 8] = [
    (15.0, 13.0),
    (14.0, 12.5),
    (13.0, 12.0),
    (12.0, 11.5),
    (SMALLEST, SMALLEST),
    (SMALLEST, SMALLEST),
    (SMALLEST, SMALLEST),
    (SMALLEST, SMALLEST),
];

/// Lays out the printed sides of the booklet.
pub fn lay_booklet(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let (height, width) = paper_size(source.paper());
    let cell = Cell { width: width / 2.0 - 2.0 * MARGIN, height: height - 2.0 * MARGIN };
    let form = CardForm { cell, types: PAGE, has_back: false, foot_lines: 1, is_wide: false };
    let cards = lay_all_cards(shaper, form, source);
    let mut pages = lay_cover(shaper, cell, &cards, source);
    for card in cards {
        let number = pages.len() + 1;
        let mut items = card.front.items;
        items.extend(lay_foot(shaper, cell, number, &source.title()));
        pages.push(items);
    }
    while pages.len() < padded(pages.len()) {
        pages.push(lay_notes(shaper, cell, source));
    }
    impose(pages, (width, height))
}

/// The key of the first page: beyond that of any other thing.
const FIRST_PAGE: Key = 1 << 31;

/// Places two pages on each side of a sheet, with marks where it is folded on the outermost.
fn impose(pages: Vec<Vec<Item>>, (width, height): (f32, f32)) -> Vec<Page> {
    let mut pages: Vec<Option<Vec<Item>>> = pages.into_iter().map(Some).collect();
    let sides = booklet_sides(pages.len()).into_iter().enumerate();
    sides
        .map(|(side, halves)| {
            let mut items = if side == 0 { fold_marks(width, height) } else { Vec::new() };
            for (page, left) in halves.into_iter().zip([MARGIN, width / 2.0 + MARGIN]) {
                let Some(number) = page else { continue };
                let Some(page) = pages.get_mut(number).and_then(Option::take) else { continue };
                let page = page.into_iter().map(|item| item.moved(left, MARGIN)).collect();
                // The pages are read in their own order, wherever they lie.
                let key = FIRST_PAGE.saturating_add(Key::try_from(number).unwrap_or(Key::MAX));
                items.push(Item::group(Role::Section, key, page));
            }
            Page { width, height, items }
        })
        .collect()
}

/// Short dashed lines at the head and the foot of the fold.
fn fold_marks(width: f32, height: f32) -> Vec<Item> {
    let middle = width / 2.0;
    let dashed = |top: f32, bottom: f32| Item::Line {
        from: (middle, top),
        to: (middle, bottom),
        thickness: 0.6,
        dash: Some((3.0, 3.0)),
        grey: 0.35,
    };
    vec![dashed(MARGIN, MARGIN + 24.0), dashed(height - MARGIN - 24.0, height - MARGIN)]
}

/// The session’s title at the left and the page’s number at the right.
fn lay_foot(shaper: &mut Shaper<'_>, cell: Cell, number: usize, title: &str) -> Vec<Item> {
    let y = cell.height - Type::SMALL.leading;
    let number = shaper.shape(&one(number.to_string()), Type::LABEL, 60.0).into_iter().next();
    let mut items: Vec<Item> = Vec::new();
    if let Some(line) = number {
        let left = cell.width - line.width;
        items.extend(placed(line, left));
    }
    if let Some(line) = fit_line(shaper, title, Type::SMALL, cell.width - 60.0) {
        items.extend(placed(line, 0.0));
    }
    items.into_iter().map(|item| item.moved(0.0, y)).collect()
}

/// A page with lines to write on, so that the pages can be divided by four.
fn lay_notes(shaper: &mut Shaper<'_>, cell: Cell, source: &SheetSource<'_>) -> Vec<Item> {
    let mut column = Column::new(shaper, cell.width);
    column.label(&source.words.say("notes"), Type::HEADING);
    column.gap(4.0);
    let mut left = cell.height - Type::HEADING.leading - 10.0;
    while left >= 28.0 {
        ruled_line(&mut column);
        left -= 24.0;
    }
    place_frames(column.strips, &[0]).pop().unwrap_or_default().items
}

/// The cover: the title white on black, what the session is, and what is on which page.
fn lay_cover(
    shaper: &mut Shaper<'_>,
    cell: Cell,
    cards: &[Card],
    source: &SheetSource<'_>,
) -> Vec<Vec<Item>> {
    let (block, tall) = title_block(shaper, cell, source);
    // Where the list of pages itself needs pages, that moves on what it lists.
    let mut covers = 1;
    let mut frames = Vec::new();
    for (summary, line) in COVER_SIZES {
        let strips = cover_strips(shaper, (cell, summary, line), (cards, covers), source);
        let room = |frame: usize| cell.height - FOOT - if frame == 0 { tall } else { 0.0 };
        let starts = break_frames(&strips, room);
        let is_settled = starts.len() == covers;
        frames = place_frames(strips, &starts);
        if is_settled {
            break;
        }
        if line <= SMALLEST {
            covers = frames.len();
        }
    }
    let mut pages: Vec<Vec<Item>> = frames.into_iter().map(|frame| frame.items).collect();
    for (page, number) in pages.iter_mut().zip(1..).skip(1) {
        page.extend(lay_foot(shaper, cell, number, &source.title()));
    }
    if let Some(first) = pages.first_mut() {
        let moved = std::mem::take(first).into_iter().map(|item| item.moved(0.0, tall));
        *first = block.into_iter().chain(moved).collect();
        let y = cell.height - Type::SMALL.leading;
        // The title stands above in full.
        let origin = Origin { title: String::new(), ..source.origin() };
        let origin = origin.lay(shaper, Type::SMALL, cell.width).into_iter();
        first.extend(origin.map(|item| item.moved(0.0, y)));
    }
    pages
}

/// The school’s name, and the title in white on a black field.
fn title_block(shaper: &mut Shaper<'_>, cell: Cell, source: &SheetSource<'_>) -> (Vec<Item>, f32) {
    let (pad, top) = (16.0, 22.0);
    let school = source.letterhead().school;
    let school = fit_line(shaper, &school, Type::SMALL, cell.width);
    let mut items: Vec<Item> = school.into_iter().flat_map(|line| placed(line, 0.0)).collect();
    // Two lines are a title to be seen from afar; a longer one is set smaller.
    let mut kind = Type::SHEET_TITLE.sized(34.0);
    let mut lines = shape_title(shaper, &source.title(), kind, cell.width - 2.0 * pad);
    if lines.len() > 2 {
        kind = Type::SHEET_TITLE.sized(27.0);
        lines = shape_title(shaper, &source.title(), kind, cell.width - 2.0 * pad);
    }
    let mut y = top + 34.0;
    let mut words = Vec::new();
    for line in lines {
        words.extend(placed(line, pad).map(|item| item.moved(0.0, y).shaded(WHITE)));
        y += kind.leading;
    }
    let tall = y + 14.0 - top;
    items.push(Item::rectangle((0.0, top), (cell.width, tall), Some(BLACK), None));
    items.push(Item::group(Role::Heading(1), shaper.next_key(), words));
    (items, top + tall + 14.0)
}

fn cover_strips(
    shaper: &mut Shaper<'_>,
    (cell, summary, line): (Cell, f32, f32),
    (cards, covers): (&[Card], usize),
    source: &SheetSource<'_>,
) -> Vec<Strip> {
    let mut column = Column::new(shaper, cell.width);
    column.words(&read_line(&source.session.summary), Type::body(summary), Seat::default());
    column.gap(8.0);
    column.words(&[Run::bold(facts(source))], Type::body(12.0), Seat::default());
    column.gap(summary);
    column.label(&source.words.say("booklet-inside"), Type::LABEL);
    for (index, card) in cards.iter().enumerate().filter(|(_, card)| card.turn == 0) {
        column.gap(line * 0.8 - 7.4);
        let page = index + covers + 1;
        contents_line(&mut column, card, (page, source), Type::body(line));
    }
    column.strips
}

/// “8-11 · 30 min · 3 m × 2 m”
fn facts(source: &SheetSource<'_>) -> String {
    let space = source.session.space.as_ref().map(|space| floor_size(space, source.words));
    let ages = format!("{} {}", source.words.say("fact-ages"), source.session.ages.value);
    let time = source.plans.time.slot.say(source.words);
    [Some(ages), Some(time), space].into_iter().flatten().collect::<Vec<_>>().join(" · ")
}

/// The mark of the part, what it is called, and its page at the right.
fn contents_line(
    column: &mut Column<'_, '_>,
    card: &Card,
    (page, source): (usize, &SheetSource<'_>),
    kind: Type,
) {
    let (left, width) = (22.0, column.width);
    let mut items: Vec<Item> = Vec::new();
    if let Some(part) = card.head.kind {
        items.extend(place_marks(part_mark(part, (1.0, 2.0), 13.0), THINNEST));
    }
    let (label, title) = (&card.head.label, &card.head.title);
    // The opening’s own title stands above, white on black.
    let runs = if card.is_opening(&source.title()) {
        vec![Run::bold(label.as_str())]
    } else {
        vec![Run::plain(format!("{label}{}", colon(source.words))), Run::bold(title.as_str())]
    };
    let mut y = 0.0;
    let mut words = Vec::new();
    for line in column.shaper.shape(&runs, kind, width - left - 34.0) {
        words.extend(placed(line, left).map(|item| item.moved(0.0, y)));
        y += kind.leading;
    }
    let number = column.shaper.shape(&[Run::bold(page.to_string())], kind, 40.0);
    for line in number {
        let x = width - line.width;
        words.extend(placed(line, x));
    }
    items.push(Item::group(Role::Paragraph, column.shaper.next_key(), words));
    items.push(Item::Line {
        from: (0.0, y + 1.5),
        to: (width, y + 1.5),
        thickness: 0.5,
        dash: None,
        grey: 0.6,
    });
    column.drawing(y + 2.0, items);
}
