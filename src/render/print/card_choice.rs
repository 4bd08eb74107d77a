//! What a card says → the largest type that needs the fewest cards, and the split between front and back that lets both be
//! read well.

use super::card::Said;
use super::card_fit::{CardForm, Fill, Split, count_cards, fit_split, lay_heads};
use super::card_head::CardHead;
use super::card_least::Least;
use super::card_type::CardType;
use super::shaper::Shaper;
use super::sheets::SheetSource;

/// How good a way is, less being better: cards, whether lines are closer, paragraphs split between two, whether the
/// back goes on with what the front has no room for, steps down in size, pieces on another side than is best.
type Cost = (usize, bool, usize, bool, usize, usize);

/// The size and the split that cost least. The smallest size tells how few cards can do; closer lines are tried where
/// they may save one; larger sizes, where they may not need another.
pub fn choose_fit(
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
    let growths = GROWTHS.into_iter().filter(|_| best.may_grow);
    growths.map(|growth| CardType { growth, ..best.kind }).find(|kind| {
        let grown = try_type(shaper, form, (best.step(), *kind), card, source);
        grown.is_some_and(|(grown, _)| {
            let is_same = (grown.cost, grown.split) == (best.cost, best.split);
            is_same && grown.starts == best.starts && grown.may_grow
        })
    })
}

/// The best that one size can do.
struct Trial {
    cost: Cost,
    kind: CardType,
    split: Split,
    /// Where its sides begin.
    starts: [Vec<usize>; 2],
    /// It has a drawing, and everything has room.
    may_grow: bool,
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
    let said = fill(&mut form.column(shaper), kind);
    let trials = splits_of(&said, form).into_iter().map(|split| {
        let fit = fit_split(&said, split, form, (kind, &heads));
        let (cards, broken) = count_cards(&fit);
        let astray = match split {
            Split::After(pieces) => pieces.abs_diff(said.best_on_front),
            Split::Through => 0,
        };
        let cost = (cards, kind.is_close, broken, fit.goes_through, step, astray);
        let is_held = fit.front.is_held && fit.back.as_ref().is_none_or(|back| back.is_held);
        let starts = [fit.front.sides(), fit.back.unwrap_or_default().sides()];
        let may_grow = said.has_drawing && is_held;
        Trial { cost, kind, split, starts, may_grow }
    });
    let best = trials.min_by_key(|trial| trial.cost)?;
    Some((best, Least::of(&said, form, kind, heads[0].height)))
}

/// The ways to try. Something is left for the back, where there is one and nothing says that all is best on the front.
fn splits_of(said: &Said, form: CardForm) -> Vec<Split> {
    let pieces = said.either.len();
    if !form.has_back {
        return vec![Split::After(pieces)];
    }
    let most = if said.best_on_front < pieces { pieces.max(1) } else { pieces + 1 };
    (0..most).map(Split::After).chain([Split::Through]).collect()
}
