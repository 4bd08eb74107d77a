//! The space plan: the footprint and headroom of every part, whether it fits the floor the session
//! promises, and how it is set out with a tape.
//!
//! Lengths are millimetres as floating point where angles come in, whole millimetres where a family
//! measures. Which room a footprint keeps clear where the session says nothing is our own choice,
//! named as such beside each constant: no public body gives such a figure for sport at home.

mod floor;
mod footprint;
mod hull;
mod kinds;
mod setting_out;

pub use floor::{Floor, Placement, fit_on_floor};
pub use footprint::{Footprint, Point, Zone, ZoneKind};
pub use hull::convex_hull;
pub use kinds::{SIDE_MARGIN, USUAL_SECTOR, plan_footprint};
pub use setting_out::{TapeStep, chord, plan_setting_out};

use crate::pack::Session;
use crate::quantity::Length;

/// The floor of one part.
#[derive(Clone, Debug)]
pub struct PartFloor {
    pub footprint: Footprint,
    /// How it lies on the session’s floor; `None` where it doesn’t fit or no floor is promised.
    pub placement: Option<Placement>,
    /// In the order it is done.
    pub setting_out: Vec<TapeStep>,
}

/// The floors of a session.
#[derive(Clone, Debug, Default)]
pub struct SpacePlan {
    /// What the session promises to need.
    pub floor: Option<Floor>,
    /// One a part, in order; `None` where the part says nothing or too little of its space.
    pub parts: Vec<Option<PartFloor>>,
}

/// A floor and the parts that are done on it.
#[derive(Clone, Debug)]
pub struct SharedFloor<'p> {
    pub floor: &'p PartFloor,
    /// Their indices, in order.
    pub parts: Vec<usize>,
}

impl SpacePlan {
    /// Every floor once, with the parts that share it.
    pub fn shared_floors(&self) -> Vec<SharedFloor<'_>> {
        let mut shared: Vec<SharedFloor<'_>> = Vec::new();
        for (index, floor) in self.parts.iter().enumerate() {
            let Some(floor) = floor else { continue };
            let same = |known: &&mut SharedFloor<'_>| known.floor.footprint == floor.footprint;
            match shared.iter_mut().find(same) {
                Some(known) => known.parts.push(index),
                None => shared.push(SharedFloor { floor, parts: vec![index] }),
            }
        }
        shared
    }

    /// The most headroom that any part names.
    pub fn headroom(&self) -> Option<Length> {
        self.parts.iter().flatten().filter_map(|part| part.footprint.headroom).max()
    }
}

/// Plans the floor of every part. `headroom` is what the flights of each part need.
pub fn plan_space(session: &Session, headroom: &[Option<Length>]) -> SpacePlan {
    let floor = session.space.as_ref().map(|space| Floor {
        length: space.length.value,
        width: space.width.value,
        notch: space.notch,
    });
    let parts = session.parts.iter().enumerate().map(|(index, part)| {
        let mut footprint = plan_footprint(part)?;
        footprint.headroom = footprint.headroom.max(headroom.get(index).copied().flatten());
        Some(PartFloor {
            placement: floor.as_ref().and_then(|floor| fit_on_floor(&footprint.outline, floor)),
            setting_out: plan_setting_out(part.space.as_ref()?, &footprint),
            footprint,
        })
    });
    SpacePlan { parts: parts.collect(), floor }
}
