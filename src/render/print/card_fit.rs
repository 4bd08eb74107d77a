//! What a card says → cards of one size: the largest type that needs the fewest cards, and the split
//! between front and back that lets both be read well.

use super::card::Said;
use super::card_head::{CardHead, LaidHead, lay_card_head};
use super::card_type::CardType;
use super::flow::{Frame, break_between_sections, count_split, place_frames};
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
    fn foot(&self, kind: CardType) -> f32 {
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
struct Flow {
    strips: Vec<Strip>,
    starts: Vec<usize>,
}

/// One way to lay out a card: a flow for the fronts and one for the backs, or one through both.
struct Fit {
    kind: CardType,
    front: Flow,
    back: Option<Flow>,
    goes_through: bool,
}

/// Where what a card says is split between front and back.
#[derive(Clone, Copy, PartialEq)]
enum Split {
    /// So many of the pieces that may stand on either side are on the front.
    After(usize),
    /// It goes on on the back wherever the front is full.
    Through,
}

/// How good a way is, less being better: cards, whether lines are closer, paragraphs split between two, whether the
/// back goes on with what the front has no room for, steps down in size, pieces on another side than is best.
type Cost = (usize, bool, usize, bool, usize, usize);

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

/// The size and the split that cost least. The smallest size tells how few cards can do; closer lines are tried where
/// they may save one; larger sizes, where they may not need another.
fn choose_fit(
    shaper: &mut Shaper<'_>,
    form: CardForm,
    card: (&CardHead, &Fill<'_>),
    source: &SheetSource<'_>,
) -> Option<(CardType, Split)> {
    let steps = form.types.iter().copied().enumerate();
    let (close, mut usual): (Vec<_>, Vec<_>) = steps.partition(|(_, kind)| kind.is_close);
    let (step, smallest) = usual.pop()?;
    let (mut best, least) = try_type(shaper, form, (step, smallest), card, source)?;
    if best.cards() > 1 {
        for (step, kind) in close {
            let (trial, _) = try_type(shaper, form, (step, kind), card, source)?;
            if trial.cost < best.cost {
                return Some((trial.kind, trial.split));
            }
        }
    }
    for (step, kind) in usual {
        if best.is_whole() && best.step() < step {
            break;
        }
        if least.cards_in(kind, smallest) > best.cards() {
            continue;
        }
        let (trial, _) = try_type(shaper, form, (step, kind), card, source)?;
        if trial.cost < best.cost {
            best = trial;
        }
    }
    let kind = let_grow(shaper, form, &best, card, source).unwrap_or(best.kind);
    Some((kind, best.split))
}

/// How much taller drawings may become in room that is left, the most first.
const GROWTHS: [f32; 2] = [1.6, 1.3];

/// The type with drawings as tall as they may be while everything stays on the card that it is on.
fn let_grow(
    shaper: &mut Shaper<'_>,
    form: CardForm,
    best: &Trial,
    card: (&CardHead, &Fill<'_>),
    source: &SheetSource<'_>,
) -> Option<CardType> {
    let growths = GROWTHS.into_iter().filter(|_| best.has_drawing);
    growths.map(|growth| CardType { growth, ..best.kind }).find(|kind| {
        let grown = try_type(shaper, form, (best.step(), *kind), card, source);
        grown.is_some_and(|(grown, _)| {
            (grown.cost, grown.split, &grown.starts) == (best.cost, best.split, &best.starts)
        })
    })
}

/// The best that one size can do.
struct Trial {
    cost: Cost,
    kind: CardType,
    split: Split,
    /// Where its frames begin.
    starts: [Vec<usize>; 2],
    has_drawing: bool,
}

impl Trial {
    const fn cards(&self) -> usize {
        self.cost.0
    }

    /// Nothing is broken, and no back goes on with its front.
    const fn is_whole(&self) -> bool {
        self.cost.2 == 0 && !self.cost.3
    }

    const fn step(&self) -> usize {
        self.cost.4
    }
}

fn try_type(
    shaper: &mut Shaper<'_>,
    form: CardForm,
    (step, kind): (usize, CardType),
    (head, fill): (&CardHead, &Fill<'_>),
    source: &SheetSource<'_>,
) -> Option<(Trial, Least)> {
    let heads = lay_heads(shaper, form.cell, head, kind, source);
    let said = fill(&mut Column::new(shaper, form.cell.width), kind);
    let trials = splits_of(&said, form.has_back).into_iter().map(|split| {
        let fit = fit_split(&said, split, form, (kind, &heads));
        let (cards, broken) = count_cards(&fit);
        let astray = match split {
            Split::After(pieces) => pieces.abs_diff(said.best_on_front),
            Split::Through => 0,
        };
        let cost = (cards, kind.is_close, broken, fit.goes_through, step, astray);
        let starts = [fit.front.starts, fit.back.unwrap_or_default().starts];
        Trial { cost, kind, split, starts, has_drawing: said.has_drawing }
    });
    let best = trials.min_by_key(|trial| trial.cost)?;
    Some((best, Least::of(&said, form, kind, heads[0].height)))
}

/// Hyphens come and go with the size.
const HYPHENS: f32 = 0.99;

/// The least room that what a card says takes in any size, found from one.
struct Least {
    /// Of each paragraph: how often its words fill a line, and how tall a line is.
    paragraphs: Vec<(f32, f32)>,
    /// What else there is.
    other: f32,
    /// All that the sides of one card have room for.
    room: f32,
}

impl Least {
    fn of(said: &Said, form: CardForm, kind: CardType, head: f32) -> Self {
        let sides = if form.has_back { 2.0 } else { 1.0 };
        let room = sides * (form.cell.height - form.foot(kind) - head);
        let mut least = Self { paragraphs: Vec::new(), other: 0.0, room };
        for strip in said.front.iter().chain(said.either.iter().flatten()) {
            match (strip.filled / form.cell.width, least.paragraphs.last_mut()) {
                (0.0, _) => least.other += strip.height,
                (filled, Some(paragraph)) if strip.goes_on => paragraph.0 += filled,
                (filled, _) => least.paragraphs.push((filled, strip.height)),
            }
        }
        least
    }

    /// At least so many cards are needed in another size.
    fn cards_in(&self, kind: CardType, of: CardType) -> usize {
        let larger = kind.body / of.body;
        let lines = self.paragraphs.iter();
        let tall_in =
            |(filled, tall): &(f32, f32)| (filled * larger * HYPHENS).ceil() * tall * larger;
        let words: f32 = lines.map(tall_in).sum();
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a handful of cards"
        )]
        let cards = ((words + self.other) / self.room).ceil().max(1.0) as usize;
        cards
    }
}

/// The ways to try. Something is left for the back, where there is one.
fn splits_of(said: &Said, has_back: bool) -> Vec<Split> {
    let pieces = said.either.len();
    if has_back {
        (0..pieces.max(1)).map(Split::After).chain([Split::Through]).collect()
    } else {
        vec![Split::After(pieces)]
    }
}

fn lay_heads(
    shaper: &mut Shaper<'_>,
    cell: Cell,
    head: &CardHead,
    kind: CardType,
    source: &SheetSource<'_>,
) -> [LaidHead; 2] {
    [false, true]
        .map(|goes_on| lay_card_head(shaper, cell.width, head, goes_on, (kind, source.words)))
}

fn fit_split(
    said: &Said,
    split: Split,
    form: CardForm,
    (kind, heads): (CardType, &[LaidHead; 2]),
) -> Fit {
    let foot = form.foot(kind);
    let room = |turn: usize| form.cell.height - foot - heads[usize::from(turn > 0)].height;
    let (pieces, goes_through) = match split {
        Split::After(pieces) => (pieces.min(said.either.len()), false),
        Split::Through => (said.either.len(), true),
    };
    let sides = if goes_through { 2 } else { 1 };
    let flow = |strips: Vec<Strip>| Flow {
        starts: break_between_sections(&strips, |frame| room(frame / sides)),
        strips,
    };
    let (first, rest) = said.either.split_at(pieces);
    let front = flow(said.front.iter().chain(first.iter().flatten()).cloned().collect());
    let has_back = form.has_back && !goes_through;
    let back = has_back.then(|| flow(rest.iter().flatten().cloned().collect()));
    Fit { kind, front, back, goes_through }
}

/// How many cards a way needs, and how many of its paragraphs go on on another side.
fn count_cards(fit: &Fit) -> (usize, usize) {
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
    fit: Fit,
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
fn frames_of(fit: Fit) -> (Vec<Frame>, Vec<Frame>) {
    let frames = place_frames(fit.front.strips, &fit.front.starts);
    if !fit.goes_through {
        let back = fit.back.unwrap_or_default();
        return (frames, place_frames(back.strips, &back.starts));
    }
    let (mut fronts, mut backs) = (Vec::new(), Vec::new());
    for (index, frame) in frames.into_iter().enumerate() {
        if index % 2 == 0 { fronts.push(frame) } else { backs.push(frame) }
    }
    (fronts, backs)
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
