//! The sheet set of activity cards: four to a page with cut lines, one card a part; a part that needs
//! more room goes on on another card.

use super::card::{CardHead, SIZES, adaptation_strips, helper_strips, opening_strips, part_strips};
use super::drawings::place_marks;
use super::floor_card::floor_strips;
use super::flow::{Frame, break_frames, count_split, place_frames};
use super::page::{BLACK, Corner, Item, MM, Page, Role, WHITE};
use super::scale::{MARGIN, Type, paper_size};
use super::shaper::Shaper;
use super::sheets::{SheetSource, fit_line, one};
use super::strip::{Column, Strip, placed};
use crate::drawing::part_mark;
use crate::prose::plain_line;
use crate::render::phrases::part_name;
use crate::words::Filling;

/// From a cut line to what stands on the card.
const INNER: f32 = 6.0 * MM;

/// The line at the foot of a card.
const FOOT: f32 = 17.0;

/// The room on one card.
#[derive(Clone, Copy, Debug)]
struct Cell {
    width: f32,
    height: f32,
}

struct Card {
    head: CardHead,
    /// From the first card of its part, counted from 0.
    turn: usize,
    head_items: Vec<Item>,
    head_height: f32,
    frame: Frame,
}

/// Lays out all cards of a session.
pub fn lay_cards(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let (width, height) = paper_size(source.paper());
    let cell = Cell { width: width / 2.0 - MARGIN - INNER, height: height / 2.0 - MARGIN - INNER };
    let mut cards = Vec::new();
    for (head, fill) in card_plan(source) {
        cards.extend(fit_part(shaper, cell, &head, source, &fill));
    }
    impose(shaper, source, cell, cards)
}

/// Fills a column with what a card says, in given sizes.
type Fill<'f> = Box<dyn Fn(&mut Column<'_, '_>, (f32, f32)) -> Vec<Strip> + 'f>;

/// Every card of a session in order: what to know first, each part, what a helper looks for, and how
/// to make it fit.
fn card_plan<'s>(source: &'s SheetSource<'_>) -> Vec<(CardHead, Fill<'s>)> {
    let words = source.words;
    let other =
        |label: &str, title: String| CardHead { kind: None, label: words.say(label), title };
    let mut plan: Vec<(CardHead, Fill<'s>)> = vec![(
        other("before", source.title()),
        Box::new(|column, sizes| opening_strips(column, source, sizes)),
    )];
    for part in &source.session.parts {
        let label = part_name(part, words);
        let head = CardHead { kind: Some(part.kind), label, title: plain_line(&part.title) };
        plan.push((head, Box::new(|column, sizes| part_strips(column, part, source, sizes))));
    }
    for shared in source.plans.space.shared_floors() {
        let first = shared.parts.first().and_then(|part| source.session.parts.get(*part));
        let title = first.map(|part| plain_line(&part.title)).unwrap_or_default();
        let fill: Fill<'s> =
            Box::new(move |column, sizes| floor_strips(column, &shared, source, sizes));
        plan.push((other("plan", title), fill));
    }
    if source.session.parts.iter().any(|part| !part.faults.is_empty()) {
        let head = other("cards-helper", words.say("cards-look"));
        plan.push((head, Box::new(|column, sizes| helper_strips(column, source, sizes))));
    }
    let has_adaptations = !source.session.adaptations.each().is_empty();
    if has_adaptations || !source.plans.other_slots.is_empty() {
        let head = other("adaptations", words.say("cards-adapt"));
        plan.push((head, Box::new(|column, sizes| adaptation_strips(column, source, sizes))));
    }
    plan
}

/// Lays out a part in the largest size that needs the fewest cards and, of those, splits the fewest
/// paragraphs.
fn fit_part(
    shaper: &mut Shaper<'_>,
    cell: Cell,
    head: &CardHead,
    source: &SheetSource<'_>,
    fill: &Fill<'_>,
) -> Vec<Card> {
    let (first_head, first_height) = lay_head(shaper, cell, head, false, source);
    let (next_head, next_height) = lay_head(shaper, cell, head, true, source);
    let room =
        |frame: usize| cell.height - FOOT - if frame == 0 { first_height } else { next_height };
    let mut best: Option<(Vec<Strip>, Vec<usize>)> = None;
    let mut least = (usize::MAX, usize::MAX);
    for sizes in SIZES {
        let mut column = Column::new(shaper, cell.width);
        let strips = fill(&mut column, sizes);
        let starts = break_frames(&strips, room);
        let cost = (starts.len(), count_split(&strips, &starts));
        if cost < least {
            least = cost;
            best = Some((strips, starts));
        }
        if cost == (1, 0) {
            break;
        }
    }
    let frames = best.map_or_else(Vec::new, |(strips, starts)| place_frames(strips, &starts));
    frames
        .into_iter()
        .enumerate()
        .map(|(turn, frame)| {
            let (items, height) =
                if turn == 0 { (&first_head, first_height) } else { (&next_head, next_height) };
            Card { head: head.clone(), turn, head_items: items.clone(), head_height: height, frame }
        })
        .collect()
}

/// How tall the tab at the head of a card is.
const TAB: f32 = 18.0;

/// A black tab with its right shoulder cut off, as on a card index.
fn tab(width: f32) -> Item {
    let points = [(0.0, 0.0), (width - 6.0, 0.0), (width, 6.0), (width, TAB), (0.0, TAB)];
    let outline = points.map(|at| Corner { at, is_bent: false }).to_vec();
    Item::Shape { outline, fill: Some(BLACK), stroke: None }
}

/// The head of a card: a tab with mark and kind, a thick line, the title.
fn lay_head(
    shaper: &mut Shaper<'_>,
    cell: Cell,
    head: &CardHead,
    goes_on: bool,
    source: &SheetSource<'_>,
) -> (Vec<Item>, f32) {
    let mut items = Vec::new();
    let mut inside = Vec::new();
    let mut left = 7.0;
    if let Some(kind) = head.kind {
        inside.extend(place_marks(part_mark(kind, (left, 2.5), 13.0)));
        left += 19.0;
    }
    // The right end of this line is left free for the card’s number.
    if let Some(line) = fit_line(shaper, &head.label, Type::LABEL, cell.width - left - 90.0) {
        let width = left + line.width + 9.0;
        let words = placed(line, left).map(|item| item.moved(0.0, 2.0)).collect();
        inside.push(read_unless(goes_on, Role::Paragraph, words, shaper));
        items.push(tab(width));
    }
    items.extend(inside.into_iter().map(|item| item.shaded(WHITE)));
    let mut y = TAB;
    items.push(Item::line((0.0, y), (cell.width, y), 1.8));
    y += 5.0;
    let title = if goes_on {
        format!("{} {}", head.title, source.words.say("cards-continued"))
    } else {
        head.title.clone()
    };
    let mut words = Vec::new();
    for line in shaper.shape(&one(title), Type::CARD_TITLE, cell.width) {
        words.extend(placed(line, 0.0).map(|item| item.moved(0.0, y)));
        y += shaper.leading(Type::CARD_TITLE);
    }
    items.push(read_unless(goes_on, Role::Heading(1), words, shaper));
    (items, y + if goes_on { 8.0 } else { 4.0 })
}

/// The head of a card that goes on is decoration: it has been read out on the card before.
fn read_unless(goes_on: bool, role: Role, words: Vec<Item>, shaper: &mut Shaper<'_>) -> Item {
    if goes_on { Item::decoration(words) } else { Item::group(role, shaper.next_key(), words) }
}

/// Places four cards on each page, in reading order, with dashed lines to cut along.
fn impose(
    shaper: &mut Shaper<'_>,
    source: &SheetSource<'_>,
    cell: Cell,
    cards: Vec<Card>,
) -> Vec<Page> {
    let (width, height) = paper_size(source.paper());
    let total = cards.len();
    let foot = source.title();
    let mut pages: Vec<Page> = Vec::new();
    for (index, card) in cards.into_iter().enumerate() {
        if index % 4 == 0 {
            pages.push(Page { width, height, items: cut_lines(width, height) });
        }
        let is_right = index % 2 == 1;
        let is_low = index % 4 >= 2;
        let x = if is_right { width / 2.0 + INNER } else { MARGIN };
        let y = if is_low { height / 2.0 + INNER } else { MARGIN };
        let number = words_of_number(source, index + 1, total);
        let items = card_items(shaper, card, cell, &number, &foot);
        if let Some(page) = pages.last_mut() {
            page.items.extend(items.into_iter().map(|item| item.moved(x, y)));
        }
    }
    pages
}

fn words_of_number(source: &SheetSource<'_>, number: usize, total: usize) -> String {
    let count = |n: usize| Filling::Count(u32::try_from(n).unwrap_or(u32::MAX));
    source.words.say_with("cards-number", &[("number", count(number)), ("total", count(total))])
}

fn card_items(
    shaper: &mut Shaper<'_>,
    card: Card,
    cell: Cell,
    number: &str,
    foot: &str,
) -> Vec<Item> {
    let mut items = card.head_items;
    let shaped = shaper.shape(&one(number), Type::SMALL, 80.0).drain(..).next();
    if let Some(line) = shaped {
        let left = cell.width - line.width;
        items.extend(placed(line, left).map(|item| item.moved(0.0, 2.0)));
    }
    let below = card.head_height;
    items.extend(card.frame.items.into_iter().map(|item| item.moved(0.0, below)));
    let is_opening = card.head.kind.is_none() && card.turn == 0 && card.head.title == foot;
    if !is_opening && let Some(line) = fit_line(shaper, foot, Type::SMALL, cell.width) {
        let y = cell.height - Type::SMALL.leading;
        items.extend(placed(line, 0.0).map(|item| item.moved(0.0, y)));
    }
    items
}

fn cut_lines(width: f32, height: f32) -> Vec<Item> {
    let dashed =
        |from, to| Item::Line { from, to, thickness: 0.6, dash: Some((3.0, 3.0)), grey: 0.35 };
    vec![
        dashed((width / 2.0, MARGIN), (width / 2.0, height - MARGIN)),
        dashed((MARGIN, height / 2.0), (width - MARGIN, height / 2.0)),
    ]
}
