//! Stage four, plan: what follows from a session by computation. Every plan is a pure function of
//! typed values, and is shown both on pages and on paper.

pub mod assign;
mod coverage;
mod effort;
mod equipment;
pub mod flight;
mod flights;
mod gather;
pub mod gather_once;
pub mod marks;
mod measures;
mod other_slots;
pub mod reading;
mod session_reading;
pub mod slot_fit;
mod space;
pub mod statistics;
mod time;
pub mod unit;

pub use coverage::{CoveragePlan, OFTEN, StatementCoverage, plan_coverage};
pub use effort::{ACTIVE_A_DAY, EffortPlan, Rhythm, Still, main_effort, plan_effort, usual_work};
pub use equipment::{
    EquipmentPlan, GatherSet, HomeThings, ServedNeed, plan_equipment, plan_gather_set,
};
pub use flights::{FlightPlan, plan_flights};
pub use gather::{GatherPlan, Gathered, plan_gathering};
pub use measures::{MarkFault, MarksPlan, plan_marks};
pub use other_slots::{Fitted, FittedSession, OtherSlot, offer_of, plan_other_slots};
pub use session_reading::{SessionReading, TextReading, plan_session_reading};
pub use space::{
    Floor, Footprint, PartFloor, Placement, Point, SIDE_MARGIN, SharedFloor, SpacePlan, TapeStep,
    USUAL_SECTOR, Zone, ZoneKind, chord, convex_hull, fit_on_floor, plan_footprint,
    plan_setting_out, plan_space,
};
pub use time::{PartSpan, TimePlan, plan_time, total_of};

use std::sync::OnceLock;

use crate::pack::{Pack, Session};

/// Every plan of one session. Lists hold one entry a part, in order.
#[derive(Clone, Debug)]
pub struct Plans {
    pub time: TimePlan,
    pub other_slots: Vec<OtherSlot>,
    pub effort: EffortPlan,
    pub equipment: EquipmentPlan,
    pub flights: Vec<Option<FlightPlan>>,
    pub space: SpacePlan,
    pub marks: Vec<Option<MarksPlan>>,
    /// Planned when first asked for: it takes the longest, and few pages show it.
    reading: OnceLock<Option<SessionReading>>,
}

impl Plans {
    /// How hard the session of these plans is to read; for English only.
    pub fn reading(&self, session: &Session, pack: &Pack) -> Option<&SessionReading> {
        let plan = || pack.is_english().then(|| plan_session_reading(session));
        self.reading.get_or_init(plan).as_ref()
    }

    /// Without the reading, which holds every text once more; it is planned again if it is asked for again.
    #[must_use]
    pub fn without_reading(self) -> Self {
        Self { reading: OnceLock::new(), ..self }
    }
}

/// Computes every plan of a session.
pub fn plan_session(session: &Session, pack: &Pack) -> Plans {
    let time = plan_time(session);
    let flights = plan_flights(session, pack.room_height);
    let headroom: Vec<_> =
        flights.iter().map(|flight| flight.as_ref().map(|flight| flight.headroom)).collect();
    Plans {
        other_slots: plan_other_slots(session),
        effort: plan_effort(session, &time),
        equipment: plan_equipment(session),
        space: plan_space(session, &headroom),
        marks: plan_marks(session),
        reading: OnceLock::new(),
        flights,
        time,
    }
}

/// A number with no more decimals than it needs: 2, 0.5, 0.25.
pub fn short_number(number: f64) -> String {
    let text = format!("{number:.2}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}
