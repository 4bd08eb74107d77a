//! Stage four, plan: what follows from a session by computation. Every plan is a pure function of
//! typed values, and is shown both on pages and on paper.

mod effort;
mod gather;
mod other_slots;
pub mod slot_fit;
mod space;
mod time;

pub use effort::{ACTIVE_A_DAY, EffortPlan, Rhythm, Still, main_effort, plan_effort, usual_work};
pub use gather::{GatherPlan, Gathered, plan_gathering};
pub use other_slots::{Fitted, FittedSession, OtherSlot, offer_of, plan_other_slots};
pub use space::{
    Floor, Footprint, PartFloor, Placement, Point, SIDE_MARGIN, SharedFloor, SpacePlan, TapeStep, USUAL_SECTOR,
    Zone, ZoneKind, chord, fit_on_floor, plan_footprint, plan_setting_out, plan_space,
};
pub use time::{PartSpan, TimePlan, plan_time, total_of};

use crate::pack::{Pack, Session};

/// Every plan of one session.
#[derive(Clone, Debug)]
pub struct Plans {
    pub time: TimePlan,
    pub other_slots: Vec<OtherSlot>,
    pub effort: EffortPlan,
    pub space: SpacePlan,
}

/// Computes every plan of a session.
pub fn plan_session(session: &Session, _pack: &Pack) -> Plans {
    let time = plan_time(session);
    Plans {
        other_slots: plan_other_slots(session),
        effort: plan_effort(session, &time),
        space: plan_space(session, &[]),
        time,
    }
}

/// A number with no more decimals than it needs: 2, 0.5, 0.25.
pub fn short_number(number: f64) -> String {
    let text = format!("{number:.2}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}
