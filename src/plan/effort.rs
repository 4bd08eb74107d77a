//! How hard a session is on the whole, by the effort that its parts are meant to take.

use std::collections::BTreeMap;

use super::TimePlan;
use crate::pack::Session;
use crate::read::words::Effort;

/// The effort with the most seconds; of two alike the harder.
pub fn main_effort(session: &Session, time: &TimePlan) -> Option<Effort> {
    let mut seconds: BTreeMap<Effort, u32> = BTreeMap::new();
    for (part, span) in session.parts.iter().zip(&time.spans) {
        if let Some(effort) = &part.effort {
            *seconds.entry(effort.value).or_default() += span.total.seconds();
        }
    }
    seconds
        .into_iter()
        .max_by_key(|(effort, seconds)| (*seconds, *effort))
        .map(|(effort, _)| effort)
}
