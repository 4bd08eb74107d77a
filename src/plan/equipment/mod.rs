//! The equipment plan: which household thing stands in for which need, so that nothing is two things
//! at once and the most suitable come first; why others are refused; and the smallest set of things
//! that serves every session of a pack.

mod cupboard;
mod fitness;

pub use fitness::{Fault, Figures, Misfit, misfits};

use cupboard::Cupboard;

use super::assign::{Want, plan_assignment};
use super::gather_once::plan_gather_once;
use crate::pack::{Pack, Session};

/// Things of a home, counted.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct HomeThings {
    pub name: String,
    pub plural: String,
    pub count: u32,
}

/// What serves one need.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ServedNeed {
    pub things: Vec<HomeThings>,
    /// How many a usual home lacks.
    pub missing: u32,
}

/// A thing that doesn’t suit a need, and every reason.
#[derive(Clone, Debug)]
pub struct Refusal {
    /// The need, by its index in the session.
    pub need: usize,
    pub thing: String,
    pub reasons: Vec<Misfit>,
}

/// What serves a session at home.
#[derive(Clone, Debug)]
pub struct EquipmentPlan {
    /// One a need, in order.
    pub served: Vec<ServedNeed>,
    pub refusals: Vec<Refusal>,
}

/// Assigns things of a usual home to the needs of a session.
pub fn plan_equipment(session: &Session) -> EquipmentPlan {
    let mut cupboard = Cupboard::default();
    let wants = cupboard.wants_of(session);
    let assignment = plan_assignment(&wants, &cupboard.stock());
    let served = assignment.served.into_iter().map(|served| ServedNeed {
        things: served
            .things
            .into_iter()
            .map(|(thing, count)| cupboard.counted(thing, count))
            .collect(),
        missing: served.missing,
    });
    EquipmentPlan { served: served.collect(), refusals: refusals_of(session) }
}

fn refusals_of(session: &Session) -> Vec<Refusal> {
    let needs = session.needs.iter().enumerate();
    let refused = needs.flat_map(|(index, need)| {
        need.substitutes.iter().filter_map(move |substitute| {
            let reasons = misfits(&need.limits, Figures::of(substitute));
            let thing = substitute.thing.to_string();
            (!reasons.is_empty()).then_some(Refusal { need: index, thing, reasons })
        })
    });
    refused.collect()
}

/// The smallest set of things for all sessions of a pack.
#[derive(Clone, Debug)]
pub struct GatherSet {
    /// By name.
    pub things: Vec<HomeThings>,
    /// Whether it is certain that no fewer would do.
    pub is_proven: bool,
    /// What a usual home has too few of: the session’s place in the pack, and the need’s in it.
    pub unserved: Vec<(usize, usize)>,
}

/// Chooses what to gather once for every session that is offered.
pub fn plan_gather_set(pack: &Pack) -> GatherSet {
    let mut cupboard = Cupboard::default();
    let offered = pack.sessions.iter().enumerate().filter(|(_, session)| !session.is_retired());
    let (places, wants): (Vec<usize>, Vec<Vec<Want>>) =
        offered.map(|(place, session)| (place, cupboard.wants_of(session))).unzip();
    let gathered = plan_gather_once(&wants, &cupboard.stock());
    let counts = gathered.counts.iter().enumerate().filter(|(_, count)| **count > 0);
    let mut things: Vec<HomeThings> =
        counts.map(|(thing, count)| cupboard.counted(thing, *count)).collect();
    things.sort_by(|a, b| a.name.cmp(&b.name));
    let unserved = gathered.unserved.iter();
    GatherSet {
        things,
        is_proven: gathered.is_proven,
        unserved: unserved.map(|unserved| (places[unserved.session], unserved.want)).collect(),
    }
}
