//! What a family weighs up before choosing: ages, minutes, space, place, effort, activity.

use std::collections::BTreeMap;

use serde::Serialize;

use super::html::hold_together;
use crate::pack::{Session, Space};
use crate::plan::TimePlan;
use crate::read::words::{Effort, Whereabouts};

#[derive(Serialize, Clone, Debug)]
pub(super) struct Facts {
    /// `8–11`
    ages: String,
    minutes: u32,
    /// `4 m × 2 m`
    space: Option<String>,
    headroom: Option<String>,
    /// `indoors`, `outdoors` or `both`.
    place: Option<&'static str>,
    /// The effort that fills most of the time.
    effort: Option<&'static str>,
    activity: &'static str,
}

pub(super) fn facts_of(session: &Session, time: &TimePlan) -> Facts {
    let space = session.space.as_deref();
    Facts {
        ages: session.ages.to_string(),
        minutes: session.slot.seconds().div_ceil(60),
        space: space.map(floor_of),
        headroom: space.and_then(|s| s.height.as_ref()).map(|h| hold_together(&h.to_string())),
        place: space.map(|space| place_of(&space.whereabouts)),
        effort: main_effort(session, time).map(Effort::word),
        activity: session.activity.word(),
    }
}

/// The effort with the most seconds; of two alike the harder.
fn main_effort(session: &Session, time: &TimePlan) -> Option<Effort> {
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

fn floor_of(space: &Space) -> String {
    hold_together(&format!("{} × {}", space.length, space.width))
}

fn place_of(whereabouts: &[Whereabouts]) -> &'static str {
    match whereabouts {
        [only] => only.word(),
        _ => "both",
    }
}

/// A word of the file as a token for labels and classes: `hard floor` → `hard-floor`.
pub(super) fn token_of(word: &str) -> String {
    word.replace([' ', '_'], "-")
}
