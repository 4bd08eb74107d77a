//! Why a part is left out, and what is kept that is most like it.

use super::choose::{Choice, fits};
use super::doable::{PartFacts, SessionFacts, Why};
use super::model::Model;
use crate::homes::Home;
use crate::plan::assign::plan_assignment;
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

/// Why a part can’t be done, or not beside what must stay.
pub(super) fn why_not(facts: &SessionFacts<'_>, home: &Home, model: &Model, part: usize) -> Why {
    if model.parts[part].versions.is_empty() {
        return why_no_version(facts, &facts.parts[part], home);
    }
    let mut forced = model.clone();
    forced.parts[part].offer.essential = true;
    forced.slot = Duration::from_seconds(u32::MAX);
    if fits(&forced) { Why::Time } else { Why::Things(missing_for(model, part)) }
}

/// The nearest version’s reason.
fn why_no_version(facts: &SessionFacts<'_>, part: &PartFacts<'_>, home: &Home) -> Why {
    let refused = part.versions.iter();
    let reasons = refused.filter_map(|version| facts.floors_for(part, version, home).err());
    // A version made for something else says less than the part as written.
    reasons.into_iter().next().unwrap_or(Why::Time)
}

/// What is missing for a part alone; for one that only others stand in the way of, all it uses.
fn missing_for(model: &Model, part: usize) -> Vec<(usize, u32)> {
    let mut kept = vec![None; model.parts.len()];
    kept[part] = Some(0);
    let (asked, wants) = model.wants_of(&kept);
    let served = plan_assignment(&wants, &model.stock).served;
    let needed = |at: &usize| !wants[*at].optional;
    let missing: Vec<(usize, u32)> = (0..asked.len())
        .filter(needed)
        .map(|at| (asked[at], served[at].missing))
        .filter(|(_, missing)| *missing > 0)
        .collect();
    if missing.is_empty() {
        return (0..asked.len()).filter(needed).map(|at| (asked[at], wants[at].count)).collect();
    }
    missing
}

fn most_like(facts: &SessionFacts<'_>, part: usize, choice: &Choice) -> Option<usize> {
    let movements = |at: usize| &facts.parts[at].part.movements;
    let shared = |other: usize| {
        movements(other).iter().filter(|m| movements(part).iter().any(|n| n.value == m.value)).count()
    };
    let kept = (0..choice.parts.len()).filter(|other| choice.parts[*other].is_some());
    let best = kept.max_by_key(|other| (shared(*other), usize::MAX - other))?;
    (shared(best) > 0).then_some(best)
}
