//! The head of a card: a black tab with the part’s mark, as on a card index, a thick line, the title.

use super::card_type::CardType;
use super::drawings::{THINNEST, place_marks};
use super::one_line::{cut_text, fit_line, short_title, whole_line, width_of};
use super::page::{Item, Role, WHITE};
use super::shaper::{ShapedLine, Shaper};
use super::sheets::shape_title;
use super::strip::placed;
use super::tab::tab;
use crate::drawing::part_mark;
use crate::pack::PartKind;
use crate::words::{Filling, Words};

/// What a card is about, for its head.
#[derive(Clone, Debug)]
pub struct CardHead {
    pub kind: Option<PartKind>,
    pub label: String,
    pub title: String,
}

/// How tall the tab at the head of a usual card is.
const TAB: f32 = 18.0;

/// The room at the right end of the tab’s line that is left free for the card’s number.
const NUMBER: f32 = 104.0;

/// Titles below this are on pocket cards, where every line counts.
const POCKET_TITLE: f32 = 16.0;

/// How far the hook of a letter may hang out to the left of its line, in sizes.
const HOOK: f32 = 0.06;

/// A laid-out head.
#[derive(Clone, Debug, Default)]
pub struct LaidHead {
    pub items: Vec<Item>,
    pub height: f32,
}

/// Lays out the head of a card, or of one that goes on with another.
pub fn lay_card_head(
    shaper: &mut Shaper<'_>,
    width: f32,
    head: &CardHead,
    goes_on: bool,
    (kind, words): (CardType, &Words),
) -> LaidHead {
    let scale = kind.scale();
    let mut items = Vec::new();
    if !shaper.is_trial() {
        items = lay_tab(shaper, width, head, (kind, goes_on, words));
    }
    let mut y = TAB * scale;
    items.push(Item::line((0.0, y), (width, y), 1.8));
    y += 5.0;
    let lines = if goes_on {
        continued_title(shaper, width, &head.title, (kind, words))
    } else {
        shape_title(shaper, &head.title, kind.title(), width)
    };
    let mut shown = Vec::new();
    for line in lines {
        // The hook of a j hangs out of its line: large, it would reach into the edge of the paper.
        let hook = kind.title().size * HOOK;
        shown.extend(placed(line, hook).map(|item| item.moved(0.0, y)));
        y += shaper.leading(kind.title());
    }
    items.push(read_unless(goes_on, Role::Heading(1), shown, shaper));
    LaidHead { items, height: y + if goes_on { 8.0 } else { 4.0 } }
}

/// “(continued)” after a title; of several words, it is not broken.
fn continued(words: &Words) -> String {
    format!(" {}", words.say("cards-continued").replace(' ', "\u{a0}"))
}

/// A title that goes on is smaller by as much, if it has one line then.
const LEAST_SHARE: f32 = 0.82;

/// “Two gulls (continued)”: the title stands whole on the first card, so that one with a colon may be called by what
/// stands before it. On a pocket card it has one line.
fn continued_title(
    shaper: &mut Shaper<'_>,
    width: f32,
    title: &str,
    (kind, words): (CardType, &Words),
) -> Vec<ShapedLine> {
    let says = continued(words);
    let room = width - width_of(shaper, &says, kind.title());
    let title = short_title(shaper, title, kind.title(), room);
    if kind.title >= POCKET_TITLE {
        let whole = format!("{title}{says}");
        // A little is left for the hook, and since widths are rounded.
        let room = width - kind.title * (HOOK + 0.02);
        let share = room / width_of(shaper, &whole, kind.title());
        let share = if share >= LEAST_SHARE { share.min(1.0) } else { 1.0 };
        return shape_title(shaper, &whole, kind.title().sized(kind.title * share), width);
    }
    let title = cut_text(shaper, title, kind.title(), room).unwrap_or_default();
    whole_line(shaper, &format!("{title}{says}"), kind.title()).into_iter().collect()
}

fn lay_tab(
    shaper: &mut Shaper<'_>,
    width: f32,
    head: &CardHead,
    (kind, goes_on, words): (CardType, bool, &Words),
) -> Vec<Item> {
    let scale = kind.scale();
    let (mut items, mut inside) = (Vec::new(), Vec::new());
    let mut left = 7.0 * scale;
    if let Some(part) = head.kind {
        inside.extend(place_marks(part_mark(part, (left, 2.5 * scale), 13.0 * scale), THINNEST));
        left += 19.0 * scale;
    }
    let usual = width - left - number_room(shaper, kind);
    let mut label = whole_line(shaper, &head.label, kind.label());
    if label.as_ref().is_some_and(|line| line.width > usual) {
        // A label that is too long has all the room that the longest number leaves it.
        let room = width - left - longest_number(shaper, kind, words);
        label = fit_line(shaper, &head.label, kind.label(), room);
    }
    if let Some(line) = label {
        items.push(tab(left + line.width + 9.0 * scale, TAB * scale));
        let label = placed(line, left).map(|item| item.moved(0.0, 2.0 * scale)).collect();
        inside.push(read_unless(goes_on, Role::Paragraph, label, shaper));
    }
    items.extend(inside.into_iter().map(|item| item.shaded(WHITE)));
    items
}

/// The head of a card that goes on is decoration: it has been read out on the card before.
fn read_unless(goes_on: bool, role: Role, words: Vec<Item>, shaper: &mut Shaper<'_>) -> Item {
    if goes_on { Item::decoration(words) } else { Item::group(role, shaper.next_key(), words) }
}

/// Letters that stand wide apart need more of it.
fn number_room(shaper: &Shaper<'_>, kind: CardType) -> f32 {
    NUMBER * kind.scale() * (1.0 + 3.0 * shaper.air.letters)
}

/// “Back of 88 of 88” with some air before it, whichever of both is longer.
fn longest_number(shaper: &mut Shaper<'_>, kind: CardType, words: &Words) -> f32 {
    let counts = [("number", Filling::Count(88)), ("total", Filling::Count(88))];
    let both = ["cards-number", "cards-back"].map(|key| words.say_with(key, &counts));
    let widths = both.map(|text| width_of(shaper, &text, kind.small()));
    widths.into_iter().fold(0.0, f32::max) + 18.0 * kind.scale()
}

/// Places a card’s number at the right end of the tab’s line.
pub fn place_number(
    shaper: &mut Shaper<'_>,
    width: f32,
    number: &str,
    kind: CardType,
) -> Vec<Item> {
    let scale = kind.scale();
    let room = number_room(shaper, kind).max(width * 0.45);
    let Some(line) = fit_line(shaper, number, kind.small(), room) else {
        return Vec::new();
    };
    let left = width - line.width;
    placed(line, left).map(|item| item.moved(0.0, 2.0 * scale)).collect()
}
