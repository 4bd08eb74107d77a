//! What a family weighs up before choosing: ages, minutes, space, place, effort, activity.

use serde::Serialize;

use crate::pack::Session;
use crate::plan::TimePlan;
use crate::plan::main_effort;
use crate::read::words::{Effort, Whereabouts};
use crate::render::phrases::floor_size;
use crate::render::quantities::Said;
use crate::words::Words;

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

pub(super) fn facts_of(session: &Session, time: &TimePlan, words: &Words) -> Facts {
    let space = session.space.as_deref();
    Facts {
        ages: session.ages.to_string(),
        minutes: session.slot.seconds().div_ceil(60),
        space: space.map(|space| floor_size(space, words)),
        headroom: space.and_then(|s| s.height.as_ref()).map(|h| h.say(words)),
        place: space.map(|space| place_of(&space.whereabouts)),
        effort: main_effort(session, time).map(Effort::word),
        activity: session.activity.word(),
    }
}

fn place_of(whereabouts: &[Whereabouts]) -> &'static str {
    match whereabouts {
        [only] => only.word(),
        _ => "both",
    }
}
