//! The equipment plan: which household thing stands in for which need, so that nothing is two things
//! at once and the most suitable come first; and the smallest set of things that serves every session of a pack.

mod cupboard;

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

/// What serves a session at home.
#[derive(Clone, Debug)]
pub struct EquipmentPlan {
    /// One a need, in order.
    pub served: Vec<ServedNeed>,
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
    EquipmentPlan { served: served.collect() }
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
    let sessions = pack.sessions.iter().map(AsRef::as_ref).enumerate();
    let offered = sessions.filter(|(_, session): &(usize, &Session)| !session.is_retired());
    gather_set_of(offered)
}

/// Chooses what to gather once for some sessions; places are those in the list.
pub fn plan_gather_for(sessions: &[&Session]) -> GatherSet {
    gather_set_of(sessions.iter().copied().enumerate())
}

fn gather_set_of<'p>(sessions: impl Iterator<Item = (usize, &'p Session)>) -> GatherSet {
    let mut cupboard = Cupboard::default();
    let (places, wants): (Vec<usize>, Vec<Vec<Want>>) =
        sessions.map(|(place, session)| (place, cupboard.wants_of(session))).unzip();
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
