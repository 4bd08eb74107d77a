//! What a card says → cards of one size, in the type and with the split between front and back that were chosen for it
//! ([`super::card_choice`]).

use super::card::Said;
use super::card_choice::choose_fit;
use super::card_head::{CardHead, LaidHead, lay_card_head};
use super::card_type::CardType;
use super::flow::{Frame, break_between_sections, count_split, holds, place_frames};
use super::page::Item;
use super::record::ruled_line;
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
}

impl CardForm {
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

/// The line at the foot of a card.
const FOOT: f32 = 17.0;

/// The strips of a side and where its frames begin.
#[derive(Clone, Default)]
pub struct Flow<'s> {
    strips: Vec<&'s Strip>,
    pub starts: Vec<usize>,
    /// No frame has more than it has room for.
    pub is_held: bool,
}

/// One way to lay out a card: a flow for the fronts and one for the backs, or one through both.
pub struct Fit<'s> {
    kind: CardType,
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
    let said = fill(&mut Column::new(shaper, form.cell.width), kind);
    let fit = fit_split(&said, split, form, (kind, &heads));
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
    let foot = form.foot(kind);
    let room = |turn: usize| form.cell.height - foot - heads[usize::from(turn > 0)].height;
    let (pieces, goes_through) = match split {
        Split::After(pieces) => (pieces.min(said.either.len()), false),
        Split::Through => (said.either.len(), true),
    };
    let sides = if goes_through { 2 } else { 1 };
    let flow = |strips: Vec<&'s Strip>| {
        let starts = break_between_sections(&strips, |frame| room(frame / sides));
        let is_held = holds(&strips, &starts, |frame| room(frame / sides));
        Flow { strips, starts, is_held }
    };
    let (first, rest) = said.either.split_at(pieces);
    let front = flow(said.front.iter().chain(first.iter().flatten()).collect());
    let has_back = form.has_back && !goes_through;
    let back = has_back.then(|| flow(rest.iter().flatten().collect()));
    Fit { kind, front, back, goes_through }
}

/// How many cards a way needs, and how many of its paragraphs go on on another side.
pub fn count_cards(fit: &Fit<'_>) -> (usize, usize) {
    let sides = if fit.goes_through { 2 } else { 1 };
    let flows = [Some(&fit.front), fit.back.as_ref()];
    flows.into_iter().flatten().fold((1, 0), |(cards, broken), flow| {
        let more = count_split(&flow.strips, &flow.starts);
        (cards.max(flow.starts.len().div_ceil(sides)), broken + more)
    })
}

fn make_cards(
    shaper: &mut Shaper<'_>,
    form: CardForm,
    heads: &[LaidHead; 2],
    head: &CardHead,
    fit: Fit<'_>,
    source: &SheetSource<'_>,
) -> Vec<Card> {
    let (count, _) = count_cards(&fit);
    let kind = fit.kind;
    let (fronts, backs) = frames_of(fit);
    let mut sides = |mut frames: Vec<Frame>, is_back: bool| -> Vec<CardSide> {
        while frames.len() < count {
            let top = heads[usize::from(!frames.is_empty())].height;
            frames.push(notes(shaper, form, top, source, kind));
        }
        let turns = frames.into_iter().enumerate();
        turns
            .map(|(turn, frame)| side_of(&heads[usize::from(turn > 0)], frame, kind, is_back))
            .collect()
    };
    let fronts = sides(fronts, false);
    let mut backs = if form.has_back { sides(backs, true) } else { Vec::new() }.into_iter();
    let cards = fronts.into_iter().enumerate().map(|(turn, front)| Card {
        front,
        back: backs.next(),
        head: head.clone(),
        turn,
    });
    cards.collect()
}

/// The frames of the fronts and those of the backs.
fn frames_of(fit: Fit<'_>) -> (Vec<Frame>, Vec<Frame>) {
    let frames = place_flow(&fit.front);
    if !fit.goes_through {
        let back = fit.back.unwrap_or_default();
        return (frames, place_flow(&back));
    }
    let (mut fronts, mut backs) = (Vec::new(), Vec::new());
    for (index, frame) in frames.into_iter().enumerate() {
        if index % 2 == 0 { fronts.push(frame) } else { backs.push(frame) }
    }
    (fronts, backs)
}

fn place_flow(flow: &Flow<'_>) -> Vec<Frame> {
    place_frames(flow.strips.iter().copied().cloned().collect(), &flow.starts)
}

/// A back has the head of its front, which has been read out there.
fn side_of(head: &LaidHead, frame: Frame, kind: CardType, is_back: bool) -> CardSide {
    let mut items = head.items.clone();
    if is_back {
        items = vec![Item::decoration(items)];
    }
    let used = head.height + frame.used;
    items.extend(frame.items.into_iter().map(|item| item.moved(0.0, head.height)));
    CardSide { items, kind, used }
}

/// A side that nothing is left for has lines to write on.
fn notes(
    shaper: &mut Shaper<'_>,
    form: CardForm,
    top: f32,
    source: &SheetSource<'_>,
    kind: CardType,
) -> Frame {
    let cell = form.cell;
    let mut column = Column::new(shaper, cell.width);
    column.label(&source.words.say("notes"), kind.label());
    let room = cell.height - top - form.foot(kind) - kind.label().leading - 8.0;
    let mut left = room;
    while left >= 26.0 {
        ruled_line(&mut column);
        left -= 24.0;
    }
    place_frames(column.strips, &[0]).pop().unwrap_or_default()
}
