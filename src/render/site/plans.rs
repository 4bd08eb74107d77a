//! The plans of a session as its page and the teachers’ page show them: time line, floors, other slots.

use serde::Serialize;

use super::Site;
use super::html::{Html, drawn};
use crate::drawing::{Room, draw_floor_plan, draw_time_line};
use crate::pack::Session;
use crate::plan::{OtherSlot, PartFloor, Plans};
use crate::prose::plain_line;
use crate::render::plan_phrases::{slot_name, slot_sentence, tape_sentence};
use crate::render::quantities::Said;

/// The room for a drawing on a page: as wide as a phone, so that its words can be read there.
const WIDTH: f32 = 360.0;
const WORDS: f32 = 14.0;

/// The floor of a part, or the part that has the same.
#[derive(Serialize, Clone, Debug)]
pub(super) struct FloorView {
    svg: Option<Html>,
    headroom: Option<String>,
    is_askew: bool,
    /// It is larger than the floor that the session promises.
    is_unfit: bool,
    steps: Vec<String>,
    /// Number and title of the part whose floor it shares.
    like: Option<(usize, String)>,
}

/// The session in another slot.
#[derive(Serialize, Clone, Debug)]
pub(super) struct SlotView {
    slot: String,
    says: String,
}

pub(super) fn page_room(site: &Site<'_>) -> Room {
    Room { width: WIDTH, tallest: WIDTH * 0.5, words: WORDS, is_rtl: site.is_rtl() }
}

/// Beside the line that the parts hang on there is less room than that.
fn part_room(site: &Site<'_>) -> Room {
    Room { width: WIDTH * 0.8, tallest: WIDTH * 0.4, ..page_room(site) }
}

pub(super) fn show_time_line(site: &Site<'_>, session: &Session, plans: &Plans) -> Html {
    drawn(&draw_time_line(session, &plans.time, &site.words, page_room(site)), "timeline")
}

/// The floor of each part that says one; a floor is drawn once.
pub(super) fn show_floors(
    site: &Site<'_>,
    session: &Session,
    plans: &Plans,
) -> Vec<Option<FloorView>> {
    let parts = &plans.space.parts;
    let shared = |at: usize, floor: &PartFloor| {
        let same = |earlier: &Option<PartFloor>| {
            earlier.as_ref().is_some_and(|earlier| earlier.footprint == floor.footprint)
        };
        parts[..at].iter().position(same)
    };
    parts
        .iter()
        .enumerate()
        .map(|(at, floor)| {
            let floor = floor.as_ref()?;
            let like = shared(at, floor)
                .map(|earlier| (earlier + 1, plain_line(&session.parts[earlier].title)));
            Some(show_floor(site, floor, plans, like))
        })
        .collect()
}

fn show_floor(
    site: &Site<'_>,
    floor: &PartFloor,
    plans: &Plans,
    like: Option<(usize, String)>,
) -> FloorView {
    let promised = plans.space.floor.as_ref();
    let draw = || draw_floor_plan(floor, promised, &site.words, part_room(site));
    let steps = floor.setting_out.iter().map(|step| tape_sentence(step, &site.words));
    FloorView {
        svg: like.is_none().then(|| drawn(&draw(), "floor-plan")),
        headroom: floor.footprint.headroom.map(|height| height.say(&site.words)),
        is_askew: floor.placement.is_some_and(|placement| placement.is_askew()),
        is_unfit: promised.is_some() && floor.placement.is_none(),
        steps: if like.is_some() { Vec::new() } else { steps.collect() },
        like,
    }
}

pub(super) fn show_slots(site: &Site<'_>, session: &Session, plans: &Plans) -> Vec<SlotView> {
    let show = |other: &OtherSlot| SlotView {
        slot: slot_name(other.slot, &site.words),
        says: slot_sentence(other, session, &site.words),
    };
    plans.other_slots.iter().map(show).collect()
}
