//! Two outlines of a session → the printed sheets that are out of date, and which of their cards.

use super::compare::{PartRef, match_parts, name_of};
use super::kind::CardOf;
use super::{Fact, Mark, Outline, Sheets};

/// A card that says something else than before.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StaleCard {
    pub card: CardOf,
    pub part: Option<PartRef>,
}

/// A sheet whose mark changed.
#[derive(Clone, Debug, PartialEq)]
pub struct StaleSheet {
    pub sheets: Sheets,
    pub before: Mark,
    pub now: Mark,
    /// Which cards, where it is those.
    pub cards: Vec<StaleCard>,
}

/// The sheets whose marks differ, with the cards that do.
pub(super) fn stale_sheets(before: &Outline, now: &Outline) -> Vec<StaleSheet> {
    let stale = |(sheets, mark): &(Sheets, Mark)| {
        let earlier = before.mark_of(*sheets).filter(|earlier| earlier != mark)?;
        let cards = if *sheets == Sheets::CARDS { stale_cards(before, now) } else { Vec::new() };
        Some(StaleSheet { sheets: *sheets, before: earlier, now: *mark, cards })
    };
    now.marks.iter().filter_map(stale).collect()
}

/// The cards whose facts differ. A number in the corner (“Card 3 of 9”) is no reason to print one again.
fn stale_cards(before: &Outline, now: &Outline) -> Vec<StaleCard> {
    let on = |facts: &[Fact], card: CardOf| -> Vec<Fact> {
        let is_on = |fact: &&Fact| fact.kind.card == card && fact.kind.sheets.meets(Sheets::CARDS);
        facts.iter().filter(is_on).cloned().collect()
    };
    let differs = |card: CardOf| on(&before.facts, card) != on(&now.facts, card);
    let bare = |card: CardOf| StaleCard { card, part: None };
    if differs(CardOf::Every) {
        return vec![bare(CardOf::Every)];
    }
    let mut cards: Vec<StaleCard> =
        differs(CardOf::Opening).then(|| bare(CardOf::Opening)).into_iter().collect();
    let pairs = match_parts(&before.parts, &now.parts);
    let earlier =
        |to: usize| pairs.iter().find(|pair| pair.1 == to).map(|pair| &before.parts[pair.0]);
    for (to, part) in now.parts.iter().enumerate() {
        let was = earlier(to).map(|part| on(&part.facts, CardOf::Part));
        if was.as_ref() != Some(&on(&part.facts, CardOf::Part)) {
            cards.push(StaleCard { card: CardOf::Part, part: Some(name_of(part)) });
        }
    }
    let helper = |session: &Outline| -> Vec<(String, Vec<Fact>)> {
        let parts =
            session.parts.iter().map(|part| (part.title.clone(), on(&part.facts, CardOf::Helper)));
        parts.filter(|(_, faults)| !faults.is_empty()).collect()
    };
    let rest = [
        (CardOf::Floor, differs(CardOf::Floor)),
        (CardOf::Helper, helper(before) != helper(now)),
        (CardOf::Adaptations, differs(CardOf::Adaptations)),
    ];
    cards.extend(rest.into_iter().filter(|(_, stale)| *stale).map(|(card, _)| bare(card)));
    cards
}
