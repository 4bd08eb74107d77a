//! The plan of a unit: which session stands on which day, what is got out and put back from day to day, which
//! review questions come back when, which sessions were added to cover the curriculum, and how much effort a
//! week holds. Pure: the same unit and sessions give the same plan.

mod cover;
mod days;
mod fill;
mod held;
mod order;
mod returns;
mod slots;
mod zone;

pub use cover::{Candidate, CoverChoice, MOST_STATEMENTS, plan_cover};
pub use days::{BackAgain, PlannedDay, UnitWeek, is_vigorous};
pub use fill::{CoverPlan, Picked, plan_fill};
pub use held::UnitDays;
pub use order::{MOST_OPEN, Order, OrderCost, OrderItem, OrderPlace, plan_order};
pub use returns::{Meeting, Return, plan_returns};
pub use slots::{MOST_WEEKS, Slot, plan_slots};
pub use zone::{Observance, has_time_zone, plan_observances};

use super::equipment::{GatherSet, plan_gather_for};
use crate::pack::{Pack, Session, Unit};

/// Everything that follows from a unit and its sessions.
#[derive(Clone, Debug)]
pub struct UnitPlan {
    /// Every day that sessions may be done on, also those without school.
    pub slots: Vec<Slot>,
    /// In the order of time.
    pub days: Vec<PlannedDay>,
    /// Entries of the unit that found no day, and added sessions that found none.
    pub left_over: Vec<Origin>,
    /// How the open days were filled.
    pub order: OrderCost,
    /// How many sessions had no day of their own.
    pub open: usize,
    pub is_best_order: bool,
    pub cover: Option<CoverPlan>,
    /// One a week that has sessions.
    pub weeks: Vec<UnitWeek>,
    /// The fewest things that serve every session of the unit.
    pub gather: GatherSet,
    /// It names sessions that could not be read: with them, days and cover may be others.
    pub lacks_sessions: bool,
}

/// Why a session is in a unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Origin {
    /// It is named, as the entry at this place.
    Entry(usize),
    /// It was added for the curriculum, at this place of the plan’s `picked`.
    Added(usize),
}

/// A session that the unit does, before it has a day.
#[derive(Clone, Copy, Debug)]
pub(super) struct Item {
    pub origin: Origin,
    /// The place in `pack.sessions`.
    pub session: usize,
    /// Which time it is in the unit, from 1, in the order of the unit’s file.
    pub occurrence: u32,
}

/// Plans a unit.
pub fn plan_unit(unit: &Unit, pack: &Pack) -> UnitPlan {
    let slots = plan_slots(unit);
    let named: Vec<(Origin, usize)> = unit
        .entries
        .iter()
        .enumerate()
        .filter_map(|(at, entry)| Some((Origin::Entry(at), pack.find_session(&entry.named)?)))
        .collect();
    let own: Vec<usize> = named.iter().map(|(_, session)| *session).collect();
    let free = slots.iter().filter(|slot| !slot.is_out).count();
    let cover = plan_fill(unit, pack, &own, free.saturating_sub(named.len()));
    let added = cover.iter().flat_map(|cover| cover.picked.iter().enumerate());
    let added = added.map(|(at, picked)| (Origin::Added(at), picked.session));
    let items = number_items(named.into_iter().chain(added));
    let seated = days::seat(unit, &slots, &items, pack);
    let days = days::plan_days(unit, pack, &items, &seated);
    let mut sessions: Vec<usize> = days.iter().map(|day| day.session).collect();
    sessions.sort_unstable();
    sessions.dedup();
    let sessions: Vec<&Session> = sessions.into_iter().map(|at| &*pack.sessions[at]).collect();
    UnitPlan {
        lacks_sessions: lacks_sessions(unit, pack),
        weeks: days::plan_weeks(&days),
        gather: plan_gather_for(&sessions),
        left_over: seated.left_over.iter().map(|item| items[*item].origin).collect(),
        order: seated.order.cost,
        open: seated.open,
        is_best_order: seated.order.is_best,
        slots,
        days,
        cover,
    }
}

fn lacks_sessions(unit: &Unit, pack: &Pack) -> bool {
    unit.entries.iter().any(|entry| pack.is_unread(&entry.named))
}

fn number_items(all: impl Iterator<Item = (Origin, usize)>) -> Vec<Item> {
    let mut items: Vec<Item> = Vec::new();
    for (origin, session) in all {
        let before = items.iter().filter(|item| item.session == session).count();
        let occurrence = u32::try_from(before + 1).unwrap_or(u32::MAX);
        items.push(Item { origin, session, occurrence });
    }
    items
}
