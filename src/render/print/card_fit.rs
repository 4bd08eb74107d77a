//! What a card says → cards of one size, in the type and with the split between front and back that were chosen for it
//! ([`super::card_choice`]).

use super::card::Said;
use super::card_back::larger_back;
use super::card_choice::choose_fit;
use super::card_columns::{GUTTER, even_columns};
use super::card_head::{CardHead, LaidHead, lay_card_head};
use super::card_sides::make_cards;
use super::card_type::CardType;
use super::flow::{break_between_sections, count_split, holds};
use super::page::Item;
use super::shaper::Shaper;
use super::sheets::SheetSource;
use super::strip::{Column, Strip};

/// The room on one card.
#[derive(Clone, Copy, Debug)]
pub struct Cell {
    pub width: f32,
    pub height: f32,
}

/// One side of a card, without its number and foot.
#[derive(Clone, Debug)]
pub struct CardSide {
    pub items: Vec<Item>,
    pub kind: CardType,
    /// How much of the card’s height it takes.
    pub used: f32,
}

/// A card to be placed.
#[derive(Clone, Debug)]
pub struct Card {
    pub front: CardSide,
    pub back: Option<CardSide>,
    pub head: CardHead,
    /// From the first card of its part, counted from 0.
    pub turn: usize,
}

impl Card {
    /// Whether the session’s own title stands at its head.
    pub fn is_opening(&self, session_title: &str) -> bool {
        self.head.kind.is_none() && self.turn == 0 && self.head.title == session_title
    }
}

/// What a card is made of.
#[derive(Clone, Copy, Debug)]
pub struct CardForm {
    pub cell: Cell,
    /// The sizes to try, largest first.
    pub types: &'static [CardType],
    pub has_back: bool,
    pub foot_lines: usize,
    /// A wide card has its words in two columns: lines as long as itself are hard to follow from a distance.
    pub is_wide: bool,
}

impl CardForm {
    /// The room for lines.
    pub fn column_width(&self) -> f32 {
        if self.is_wide { (self.cell.width - GUTTER) / 2.0 } else { self.cell.width }
    }

    /// A column to fill.
    pub fn column<'c, 'f>(&self, shaper: &'c mut Shaper<'f>) -> Column<'c, 'f> {
        let mut column = Column::new(shaper, self.column_width());
        column.tallest = self.cell.height * TALLEST;
        column
    }

    /// The columns of a side.
    pub const fn columns(&self) -> usize {
        if self.is_wide { 2 } else { 1 }
    }

    /// The room that the foot takes.
    pub fn foot(&self, kind: CardType) -> f32 {
        foot_of(kind, self.foot_lines)
    }
}

/// The room for a foot of so many lines.
pub fn foot_of(kind: CardType, lines: usize) -> f32 {
    // Two lines need a little more air over them, or they look like more of the text.
    let more = if lines > 1 { kind.small().leading + 4.0 } else { 0.0 };
    FOOT * kind.scale() + more
}

/// Fills a column with what a card says.
pub type Fill<'f> = Box<dyn Fn(&mut Column<'_, '_>, CardType) -> Said + 'f>;

/// What has to stay in one piece takes no more of a card: it has room on any, under a head that goes on.
const TALLEST: f32 = 0.55;

/// The line at the foot of a card.
const FOOT: f32 = 17.0;

/// The strips of a side and where its frames begin.
#[derive(Clone, Default)]
pub struct Flow<'s> {
    pub strips: Vec<&'s Strip>,
    pub starts: Vec<usize>,
    /// So many frames are a side.
    columns: usize,
    /// No frame has more than it has room for.
    pub is_held: bool,
}

impl Flow<'_> {
    pub fn is_empty(&self) -> bool {
        self.strips.is_empty()
    }

    /// Where its sides begin.
    pub fn sides(&self) -> Vec<usize> {
        self.starts.iter().copied().step_by(self.columns.max(1)).collect()
    }
}

/// One way to lay out a card: a flow for the fronts and one for the backs, or one through both.
pub struct Fit<'s> {
    pub kind: CardType,
    pub front: Flow<'s>,
    pub back: Option<Flow<'s>>,
    pub goes_through: bool,
}

/// Where what a card says is split between front and back.
#[derive(Clone, Copy, PartialEq)]
pub enum Split {
    /// So many of the pieces that may stand on either side are on the front.
    After(usize),
    /// It goes on on the back wherever the front is full.
    Through,
}

/// Lays out a part of the session on as many cards as it needs.
pub fn fit_cards(
    shaper: &mut Shaper<'_>,
    form: CardForm,
    (head, fill): (&CardHead, &Fill<'_>),
    source: &SheetSource<'_>,
) -> Vec<Card> {
    let Some((kind, split)) =
        shaper.try_out(|shaper| choose_fit(shaper, form, (head, fill), source))
    else {
        return Vec::new();
    };
    let heads = lay_heads(shaper, form.cell, head, kind, source);
    let said = fill(&mut form.column(shaper), kind);
    let mut fit = fit_split(&said, split, form, (kind, &heads));
    let larger = shaper.try_out(|shaper| larger_back(shaper, form, fill, split, (&fit, &heads)));
    let again = larger.map(|larger| fill(&mut form.column(shaper), larger));
    if let Some(said) = &again {
        fit.back = back_of(said, split, form, (kind, &heads));
    }
    make_cards(shaper, form, &heads, head, fit, source)
}

pub fn lay_heads(
    shaper: &mut Shaper<'_>,
    cell: Cell,
    head: &CardHead,
    kind: CardType,
    source: &SheetSource<'_>,
) -> [LaidHead; 2] {
    [false, true]
        .map(|goes_on| lay_card_head(shaper, cell.width, head, goes_on, (kind, source.words)))
}

pub fn fit_split<'s>(
    said: &'s Said,
    split: Split,
    form: CardForm,
    (kind, heads): (CardType, &[LaidHead; 2]),
) -> Fit<'s> {
    let (pieces, goes_through) = match split {
        Split::After(pieces) => (pieces.min(said.either.len()), false),
        Split::Through => (said.either.len(), true),
    };
    let sides = if goes_through { 2 } else { 1 };
    let first = said.either.iter().take(pieces).flatten();
    let room = room_on(form, (kind, heads));
    let front = flow_of(said.front.iter().chain(first).collect(), form, |side| room(side / sides));
    let back = back_of(said, split, form, (kind, heads));
    Fit { kind, front, back, goes_through }
}

/// What is left for the backs, where cards have them and they do not just go on with the fronts.
pub fn back_of<'s>(
    said: &'s Said,
    split: Split,
    form: CardForm,
    (kind, heads): (CardType, &[LaidHead; 2]),
) -> Option<Flow<'s>> {
    let Split::After(pieces) = split else { return None };
    let rest = said.either.iter().skip(pieces).flatten().collect();
    form.has_back.then(|| flow_of(rest, form, room_on(form, (kind, heads))))
}

/// The room on the first card of a part, and on those that go on with it.
fn room_on(form: CardForm, (kind, heads): (CardType, &[LaidHead; 2])) -> impl Fn(usize) -> f32 {
    let room = form.cell.height - form.foot(kind);
    let rooms = [0, 1].map(|turn: usize| room - heads[turn].height);
    move |turn| rooms[turn.min(1)]
}

/// Strips in as many sides as they need.
fn flow_of(strips: Vec<&Strip>, form: CardForm, room_of_side: impl Fn(usize) -> f32) -> Flow<'_> {
    let columns = form.columns();
    let room = |frame: usize| room_of_side(frame / columns);
    let mut starts = break_between_sections(&strips, room);
    if form.is_wide {
        starts = even_columns(&strips, &starts, &room_of_side);
    }
    let is_held = holds(&strips, &starts, room);
    Flow { strips, starts, columns, is_held }
}

/// How many cards a way needs, and how many of its paragraphs go on on another side.
pub fn count_cards(fit: &Fit<'_>) -> (usize, usize) {
    let sides = if fit.goes_through { 2 } else { 1 };
    let flows = [Some(&fit.front), fit.back.as_ref()];
    flows.into_iter().flatten().fold((1, 0), |(cards, broken), flow| {
        let starts = flow.sides();
        let more = count_split(&flow.strips, &starts);
        (cards.max(starts.len().div_ceil(sides)), broken + more)
    })
}
