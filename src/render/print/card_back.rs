//! The back of a card that has less to say than its front, in larger type.

use super::card_fit::{CardForm, Fill, Fit, Split, back_of};
use super::card_head::LaidHead;
use super::card_type::CardType;
use super::flow::count_split;
use super::shaper::Shaper;

/// Words on the back are at most so much larger: both sides still look like one card.
const LARGER: f32 = 1.5;

/// The largest type in which the backs need no more cards and break no paragraph.
pub fn larger_back(
    shaper: &mut Shaper<'_>,
    form: CardForm,
    fill: &Fill<'_>,
    split: Split,
    (fit, heads): (&Fit<'_>, &[LaidHead; 2]),
) -> Option<CardType> {
    let usual = fit.back.as_ref().filter(|back| !back.is_empty())?;
    let may = |kind: &&CardType| {
        !kind.is_close && kind.body > fit.kind.body && kind.body <= fit.kind.body * LARGER
    };
    form.types.iter().filter(may).copied().find(|larger| {
        let said = fill(&mut form.column(shaper), *larger);
        let back = back_of(&said, split, form, (fit.kind, heads));
        back.is_some_and(|back| {
            let sides = back.sides();
            let is_whole = count_split(&back.strips, &sides) == 0;
            back.is_held && is_whole && sides.len() <= usual.sides().len()
        })
    })
}
