//! Stage four, plan: what follows from a session by computation. Every plan is a pure function of
//! typed values, and is shown both on pages and on paper.

mod effort;
mod gather;
mod time;

pub use effort::main_effort;
pub use gather::{GatherPlan, Gathered, plan_gathering};
pub use time::{PartSpan, TimePlan, plan_time, total_of};

use crate::pack::Session;

/// Every plan of one session.
#[derive(Clone, Debug)]
pub struct Plans {
    pub time: TimePlan,
}

/// Computes every plan of a session.
pub fn plan_session(session: &Session) -> Plans {
    Plans { time: plan_time(session) }
}
