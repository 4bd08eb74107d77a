//! The days of a plan, held fast: a unit in another language, or in one home, is done on the days that the
//! whole class has, however its things are called and whichever sessions it leaves out.

use super::{PlannedDay, UnitPlan};
use crate::pack::{Pack, SessionId, Unit, UnitEntry};
use crate::place::Placed;
use crate::read::Line;
use crate::read::words::Weekday;

/// Which session a unit has on which day.
#[derive(Debug)]
pub struct UnitDays(Vec<(SessionId, u32, Weekday)>);

impl UnitDays {
    /// Those of a plan that was made for the sessions of a pack.
    pub fn of(plan: &UnitPlan, pack: &Pack) -> Self {
        let mut days: Vec<&PlannedDay> = plan.days.iter().collect();
        // A calendar counts how often a session is done in this order.
        days.sort_by_key(|day| (day.session, day.occurrence));
        let id = |day: &PlannedDay| pack.sessions[day.session].id.clone();
        Self(days.into_iter().map(|day| (id(day), day.slot.week, day.slot.day)).collect())
    }

    /// A unit with these days alone, for the sessions that are done; `None` where there is none.
    pub fn hold(&self, unit: &Unit, is_done: &dyn Fn(&SessionId) -> bool) -> Option<Unit> {
        let place = unit.title.place;
        let days = self.0.iter().filter(|(id, ..)| is_done(id));
        let entries: Vec<UnitEntry> = days
            .map(|(id, week, day)| UnitEntry {
                named: Placed::new(Line(id.as_str().to_owned()), place),
                week: Some(Placed::new(*week, place)),
                day: Some(Placed::new(*day, place)),
            })
            .collect();
        (!entries.is_empty()).then(|| Unit { entries, cover: None, ..unit.clone() })
    }
}
