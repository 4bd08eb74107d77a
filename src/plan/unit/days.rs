//! The days of a unit: sessions get their places, and each day what is special to it.

use std::collections::BTreeMap;

use super::order::{Order, OrderItem, OrderPlace, plan_order};
use super::returns::{Meeting, plan_returns};
use super::slots::Slot;
use super::{Item, Origin};
use crate::pack::{Need, Pack, Session, Unit, counted};
use crate::plan::{EffortPlan, plan_effort, plan_time};
use crate::quantity::{Date, Duration};

/// A session on its day.
#[derive(Clone, Debug)]
pub struct PlannedDay {
    pub slot: Slot,
    /// Minutes after midnight: later than the slot’s where another session comes first that day.
    pub begins: u32,
    /// The place in `pack.sessions`.
    pub session: usize,
    pub occurrence: u32,
    pub origin: Origin,
    /// The program chose the day.
    pub is_chosen: bool,
    pub vigorous: Duration,
    pub active: Duration,
    pub is_vigorous: bool,
    /// What is needed that the day before did not need: `5 markers`.
    pub get_out: Vec<String>,
    /// What the day before needed and this one does not.
    pub put_back: Vec<String>,
    /// Questions that come back.
    pub remember: Vec<BackAgain>,
}

/// A question that comes back.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BackAgain {
    /// The place in `pack.sessions`.
    pub session: usize,
    /// The place among its review questions.
    pub question: usize,
    /// For the how-manieth time, from 1.
    pub time: u32,
}

/// The effort of a week: estimates.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct UnitWeek {
    pub week: u32,
    pub vigorous: Duration,
    pub active: Duration,
    pub vigorous_days: u32,
}

/// A session counts as vigorous where a fifth of its slot or more is vigorous work, rests left out: our own
/// choice. With as much rest as work that is two fifths of the slot in hard rounds.
pub fn is_vigorous(session: &Session, effort: &EffortPlan) -> bool {
    !effort.vigorous.is_zero() && effort.vigorous.seconds() * 5 >= session.slot.seconds()
}

/// Items with their slots, in the order of time.
pub(super) struct Seated {
    /// (item, slot)
    pub pairs: Vec<(usize, usize)>,
    /// Items that found no day.
    pub left_over: Vec<usize>,
    pub order: Order,
    pub open: usize,
}

/// Gives each item a slot: first those with a day of their own, then those with a week, then the rest.
pub(super) fn seat(unit: &Unit, slots: &[Slot], items: &[Item], pack: &Pack) -> Seated {
    let mut fixed: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
    let mut left_over = Vec::new();
    let mut of_week = Vec::new();
    let mut open = Vec::new();
    for (at, item) in items.iter().enumerate() {
        match said_of(unit, item) {
            (Some(week), Some(day)) => {
                let wanted = |slot: &Slot| slot.week == week && slot.day == day;
                match slots.iter().position(wanted) {
                    Some(slot) => fixed.entry(slot).or_default().push(at),
                    None => left_over.push(at),
                }
            }
            (Some(week), None) => of_week.push((at, week)),
            _ => open.push(at),
        }
    }
    for (at, week) in of_week {
        let is_free =
            |(slot, s): &(usize, &Slot)| s.week == week && !s.is_out && !fixed.contains_key(slot);
        match slots.iter().enumerate().find(is_free) {
            Some((slot, _)) => fixed.entry(slot).or_default().push(at),
            None => left_over.push(at),
        }
    }
    let free: Vec<usize> =
        (0..slots.len()).filter(|slot| !slots[*slot].is_out && !fixed.contains_key(slot)).collect();
    left_over.extend(open.iter().skip(free.len()));
    open.truncate(free.len());
    let mut places: Vec<(usize, Option<usize>)> = fixed
        .iter()
        .flat_map(|(slot, held)| held.iter().map(|item| (*slot, Some(*item))))
        .chain(free.iter().take(open.len()).map(|slot| (*slot, None)))
        .collect();
    places.sort_unstable();
    left_over.sort_unstable();
    fill_open(slots, items, pack, &places, left_over)
}

fn said_of(unit: &Unit, item: &Item) -> (Option<u32>, Option<crate::read::words::Weekday>) {
    let Origin::Entry(at) = item.origin else { return (None, None) };
    let entry = &unit.entries[at];
    // A day alone is a day of the first week that has it: week 1.
    let week = entry.week.as_ref().map(|week| week.value).or(entry.day.as_ref().map(|_| 1));
    (week, entry.day.as_ref().map(|day| day.value))
}

/// The open places get their items in the best order.
fn fill_open(
    slots: &[Slot],
    items: &[Item],
    pack: &Pack,
    places: &[(usize, Option<usize>)],
    left_over: Vec<usize>,
) -> Seated {
    // The order knows only the items that have a place.
    let seated: Vec<usize> = (0..items.len()).filter(|item| !left_over.contains(item)).collect();
    let number = |item: usize| seated.binary_search(&item).ok();
    let order_items = order_items(&seated, items, pack);
    let order_places: Vec<OrderPlace> = places
        .iter()
        .map(|(slot, item)| OrderPlace {
            day: slots[*slot].date.day_number(),
            fixed: item.and_then(number),
        })
        .collect();
    let order = plan_order(&order_items, &order_places);
    let chosen = order.items.iter().map(|at| seated[*at]);
    let pairs = chosen.zip(places).map(|(item, (slot, _))| (item, *slot)).collect();
    let open = places.iter().filter(|(_, item)| item.is_none()).count();
    Seated { pairs, left_over, order, open }
}

fn order_items(seated: &[usize], items: &[Item], pack: &Pack) -> Vec<OrderItem> {
    let mut names: BTreeMap<&str, usize> = BTreeMap::new();
    let mut all = Vec::new();
    for at in seated {
        let session = &pack.sessions[items[*at].session];
        let effort = effort_of(session);
        let things = session.needs.iter().filter(|need| !need.optional).map(|need| {
            let next = names.len();
            *names.entry(&need.name).or_insert(next)
        });
        let things = things.collect();
        let grounds = session.builds_on.iter().filter_map(|named| {
            let ground = pack.find_session(named)?;
            let is_it = |(_, item): &(usize, &usize)| items[**item].session == ground;
            let places: Vec<usize> =
                seated.iter().enumerate().filter(is_it).map(|(place, _)| place).collect();
            (!places.is_empty() && ground != items[*at].session).then_some(places)
        });
        all.push(OrderItem {
            session: items[*at].session,
            is_vigorous: is_vigorous(session, &effort),
            things,
            active: effort.active().seconds(),
            grounds: grounds.collect(),
        });
    }
    all
}

fn effort_of(session: &Session) -> EffortPlan {
    plan_effort(session, &plan_time(session))
}

/// The days with what is special to each.
pub(super) fn plan_days(
    unit: &Unit,
    pack: &Pack,
    items: &[Item],
    seated: &Seated,
) -> Vec<PlannedDay> {
    let slots = super::plan_slots(unit);
    let mut days: Vec<PlannedDay> = Vec::new();
    for (item, slot) in &seated.pairs {
        let item = &items[*item];
        let session = &pack.sessions[item.session];
        let effort = effort_of(session);
        let before = days.last();
        let (get_out, put_back) = changes(before.map(|day| &*pack.sessions[day.session]), session);
        let slot = slots[*slot];
        let own = u32::from(slot.at.hour()) * 60 + u32::from(slot.at.minute());
        let begins = before.filter(|day| day.slot.date == slot.date).map_or(own, |day| {
            let length = pack.sessions[day.session].slot.seconds().div_ceil(60);
            own.max(day.begins + length)
        });
        days.push(PlannedDay {
            slot,
            begins,
            session: item.session,
            occurrence: item.occurrence,
            origin: item.origin,
            is_chosen: match item.origin {
                Origin::Entry(at) => {
                    unit.entries[at].week.is_none() && unit.entries[at].day.is_none()
                }
                Origin::Added(_) => true,
            },
            vigorous: effort.vigorous,
            active: effort.active(),
            is_vigorous: is_vigorous(session, &effort),
            get_out,
            put_back,
            remember: Vec::new(),
        });
    }
    bring_back(unit, pack, &mut days);
    days
}

/// What is got out and what is put back between one session and the next; what is optional is left out.
fn changes(before: Option<&Session>, here: &Session) -> (Vec<String>, Vec<String>) {
    let needed = |session: &Session| -> Vec<Need> {
        session.needs.iter().filter(|need| !need.optional).cloned().collect()
    };
    let earlier = before.map(needed).unwrap_or_default();
    let here = needed(here);
    let lacks = |all: &[Need], need: &Need| all.iter().all(|other| *other.name != *need.name);
    let out = here.iter().filter(|need| lacks(&earlier, need)).map(Need::counted).collect();
    let back = earlier.iter().filter(|need| lacks(&here, need));
    (out, back.map(|need| counted(need.count, &need.name, &need.plural)).collect())
}

fn bring_back(unit: &Unit, pack: &Pack, days: &mut [PlannedDay]) {
    // Questions are numbered over all sessions.
    let mut first = Vec::new();
    let mut next = 0;
    for session in &pack.sessions {
        first.push(next);
        next += session.review.len();
    }
    let meetings: Vec<Meeting> = days
        .iter()
        .map(|day| Meeting {
            day: day.slot.date.day_number(),
            questions: (first[day.session]..)
                .take(pack.sessions[day.session].review.len())
                .collect(),
        })
        .collect();
    for (day, back) in days.iter_mut().zip(plan_returns(&meetings, unit.bring_back)) {
        let again = back.into_iter().map(|back| {
            let session = first.partition_point(|start| *start <= back.question) - 1;
            BackAgain { session, question: back.question - first[session], time: back.time }
        });
        day.remember = again.collect();
    }
}

/// The effort of each week that has sessions.
pub(super) fn plan_weeks(days: &[PlannedDay]) -> Vec<UnitWeek> {
    let mut weeks: BTreeMap<u32, UnitWeek> = BTreeMap::new();
    let mut counted: Vec<Date> = Vec::new();
    for day in days {
        let week = weeks.entry(day.slot.week).or_default();
        week.week = day.slot.week;
        week.vigorous = week.vigorous + day.vigorous;
        week.active = week.active + day.active;
        if day.is_vigorous && !counted.contains(&day.slot.date) {
            counted.push(day.slot.date);
            week.vigorous_days += 1;
        }
    }
    weeks.into_values().collect()
}
