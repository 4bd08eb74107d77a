//! Why a part is left out, and what is kept that is most like it.

use super::choose::{Choice, fits};
use super::doable::{PartFacts, SessionFacts, Why};
use super::model::Model;
use crate::homes::Home;
use crate::plan::assign::{Want, plan_assignment};
use crate::quantity::Duration;

/// A part that is left out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LeftOut {
    pub part: usize,
    pub why: Why,
    /// The kept part that shares most movements with it, if any does.
    pub instead: Option<usize>,
}

/// Every part that a choice leaves out.
pub(super) fn left_out(
    facts: &SessionFacts<'_>,
    home: &Home,
    model: &Model,
    choice: &Choice,
) -> Vec<LeftOut> {
    let parts = 0..choice.parts.len();
    let out = parts.filter(|part| choice.parts[*part].is_none());
    let tell = |part: usize| LeftOut {
        part,
        why: why_not(facts, home, model, part),
        instead: most_like(facts, part, choice),
    };
    out.map(tell).collect()
}

/// Why a session can’t be done: what stands in the way of the parts that must stay, else their time, else what
/// stands in the way of all the others.
pub(super) fn why_unfit(facts: &SessionFacts<'_>, home: &Home, model: &Model) -> Vec<(usize, Why)> {
    let parts = || 0..model.parts.len();
    let bar = |part: usize| Some((part, what_bars(facts, home, model, part)?));
    let is_essential = |part: &usize| model.parts[*part].offer.essential;
    let barred: Vec<(usize, Why)> = parts().filter(is_essential).filter_map(bar).collect();
    if !barred.is_empty() {
        return barred;
    }
    let is_main = |part: &usize| model.parts[*part].is_main;
    let others: Vec<(usize, Why)> = parts().filter(is_main).filter_map(bar).collect();
    if others.len() == parts().filter(is_main).count() {
        return others;
    }
    let endless = Model { slot: Duration::from_seconds(u32::MAX), ..model.clone() };
    let essential = parts().filter(is_essential);
    if fits(&endless) {
        return essential.map(|part| (part, Why::Short)).collect();
    }
    // Each could be done alone, but they want the same things at once.
    essential.map(|part| (part, Why::Things(all_for(model, part)))).collect()
}

/// What stands in the way of a part whatever else is kept.
fn what_bars(facts: &SessionFacts<'_>, home: &Home, model: &Model, part: usize) -> Option<Why> {
    if model.parts[part].versions.is_empty() {
        return Some(why_no_version(facts, &facts.parts[part], home));
    }
    let missing = missing_for(model, part);
    (!missing.is_empty()).then_some(Why::Things(missing))
}

/// Why a part is left out of a session that can be done.
fn why_not(facts: &SessionFacts<'_>, home: &Home, model: &Model, part: usize) -> Why {
    if let Some(why) = what_bars(facts, home, model, part) {
        return why;
    }
    let mut forced = Model { slot: Duration::from_seconds(u32::MAX), ..model.clone() };
    forced.parts[part].offer.essential = true;
    if fits(&forced) { Why::Time } else { Why::Things(all_for(model, part)) }
}

/// The nearest version’s reason.
fn why_no_version(facts: &SessionFacts<'_>, part: &PartFacts<'_>, home: &Home) -> Why {
    let refused = part.versions.iter();
    let reasons = refused.filter_map(|version| facts.floors_for(part, version, home).err());
    // A version made for something else says less than the part as written.
    reasons.into_iter().next().unwrap_or(Why::Time)
}

/// What is missing for a part alone.
fn missing_for(model: &Model, part: usize) -> Vec<(usize, u32)> {
    let (asked, wants) = wants_alone(model, part);
    let served = plan_assignment(&wants, &model.stock).served;
    let missing = (0..asked.len()).filter(|at| !wants[*at].optional);
    missing.map(|at| (asked[at], served[at].missing)).filter(|(_, n)| *n > 0).collect()
}

fn all_for(model: &Model, part: usize) -> Vec<(usize, u32)> {
    let (asked, wants) = wants_alone(model, part);
    let needed = (0..asked.len()).filter(|at| !wants[*at].optional);
    needed.map(|at| (asked[at], wants[at].count)).collect()
}

/// The version that asks for least comes first only by chance: the first that is served, else the first.
fn wants_alone(model: &Model, part: usize) -> (Vec<usize>, Vec<Want>) {
    let with = |version: usize| {
        let mut kept = vec![None; model.parts.len()];
        kept[part] = Some(version);
        model.wants_of(&kept)
    };
    let is_served = |(_, wants): &(Vec<usize>, Vec<Want>)| {
        plan_assignment(wants, &model.stock).missing_needed(wants) == 0
    };
    (0..model.parts[part].versions.len()).map(with).find(is_served).unwrap_or_else(|| with(0))
}

fn most_like(facts: &SessionFacts<'_>, part: usize, choice: &Choice) -> Option<usize> {
    let movements = |at: usize| &facts.parts[at].part.movements;
    let shared = |other: usize| {
        movements(other)
            .iter()
            .filter(|m| movements(part).iter().any(|n| n.value == m.value))
            .count()
    };
    let kept = (0..choice.parts.len()).filter(|other| choice.parts[*other].is_some());
    let best = kept.max_by_key(|other| (shared(*other), usize::MAX - other))?;
    (shared(best) > 0).then_some(best)
}
