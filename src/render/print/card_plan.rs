//! Every card of a session in order: what to know first, each part, the floor plans, what a helper
//! looks for, and how to make it fit.

use super::card::{PartTold, part_said};
use super::card_around::{adaptation_said, helper_said, opening_said};
use super::card_fit::{Card, CardForm, Fill, fit_cards};
use super::card_head::CardHead;
use super::floor_card::floor_said;
use super::shaper::Shaper;
use super::sheets::SheetSource;
use crate::prose::plain_line;
use crate::render::phrases::part_name;

/// Lays out every card of a session in one form.
pub fn lay_all_cards(
    shaper: &mut Shaper<'_>,
    form: CardForm,
    source: &SheetSource<'_>,
) -> Vec<Card> {
    let plan = card_plan(source, form.has_back);
    plan.iter().flat_map(|(head, fill)| fit_cards(shaper, form, (head, fill), source)).collect()
}

type Planned<'s> = (CardHead, Fill<'s>);

fn card_plan<'s>(source: &'s SheetSource<'_>, has_back: bool) -> Vec<Planned<'s>> {
    let session = source.session;
    let opening: Fill<'s> = Box::new(|column, kind| opening_said(column, source, kind));
    let mut plan = vec![(other(source, "before", source.title()), opening)];
    for part in &session.parts {
        let label = part_name(part, source.words);
        let head = CardHead { kind: Some(part.kind), label, title: plain_line(&part.title) };
        let told = PartTold::of(part, source.words);
        let fill: Fill<'s> =
            Box::new(move |column, kind| part_said(column, &told, source, kind, has_back));
        plan.push((head, fill));
    }
    plan.extend(floor_plans(source));
    // Backs have what to look for in each part.
    if !has_back && session.parts.iter().any(|part| !part.faults.is_empty()) {
        let fill: Fill<'s> = Box::new(|column, kind| helper_said(column, source, kind));
        plan.push((other(source, "cards-helper", source.words.say("cards-look")), fill));
    }
    if !session.adaptations.each().is_empty() || !source.plans.other_slots.is_empty() {
        let fill: Fill<'s> = Box::new(|column, kind| adaptation_said(column, source, kind));
        plan.push((other(source, "adaptations", source.words.say("cards-adapt")), fill));
    }
    plan
}

fn floor_plans<'s>(source: &'s SheetSource<'_>) -> impl Iterator<Item = Planned<'s>> {
    source.plans.space.shared_floors().into_iter().map(move |shared| {
        let first = shared.parts.first().and_then(|part| source.session.parts.get(*part));
        let title = first.map(|part| plain_line(&part.title)).unwrap_or_default();
        let fill: Fill<'s> =
            Box::new(move |column, kind| floor_said(column, &shared, source, kind));
        (other(source, "plan", title), fill)
    })
}

/// The head of a card that is about no part.
fn other(source: &SheetSource<'_>, label: &str, title: String) -> CardHead {
    CardHead { kind: None, label: source.words.say(label), title }
}
