//! The pack of one home: only the sessions it can do, each with the parts, versions, times and things that
//! were chosen, so that its pages and sheets come from the one way through the house.

use std::sync::Arc;

use crate::fit::FittedHome;
use crate::homes::{Home, HomeFloor, HomeNeed};
use crate::pack::{
    Alternative, Need, Pack, Part, PartKind, Session, Space, Substitute, Thing, Unit,
};
use crate::place::Placed;
use crate::plan::{HomeThings, total_of};
use crate::quantity::Duration;
use crate::read::words::{Suited, Whereabouts};
use crate::read::{PartTime, Prose};
use crate::words::Words;

/// A pack of some sessions and units as they are done in a home: in its language already, in large print besides
/// where someone sees little.
pub(super) fn pack_of_home(
    pack: &Pack,
    (sessions, units): (Vec<Session>, Vec<Unit>),
    home: &Home,
) -> Pack {
    let mut own = Pack { sessions: Vec::new(), ..pack.clone() };
    own.sessions = sessions.into_iter().map(Arc::new).collect();
    own.units = units;
    own.printing.large_print |= home.needs.contains(&HomeNeed::LowVision);
    own.languages.clear();
    own.translations.clear();
    // What is the teacher’s, and other homes’, stays with the teacher.
    own.curriculum = None;
    own.things_twice.clear();
    own
}

/// A session as it is done in a home: `session` is `original` in the home’s language.
pub(super) fn session_of_home(
    (session, original): (&Session, &Session),
    fitted: &FittedHome,
    home: &Home,
    words: &Words,
) -> Session {
    let kept: Vec<usize> =
        (0..session.parts.len()).filter(|part| fitted.versions[*part].is_some()).collect();
    let mut parts: Vec<Part> =
        kept.iter().map(|part| part_of_home(&session.parts[*part], *part, fitted, words)).collect();
    number_parts(&mut parts);
    let mut adult = session.adult.clone();
    if let Some(nearby) = adult.as_mut().and_then(|adult| adult.value.nearby.as_mut()) {
        nearby.value = nearby.value.min(fitted.choice.total());
    }
    Session {
        slot: Placed::new(fitted.choice.total(), session.slot.place),
        needs: needs_of_home((session, original), fitted, &kept),
        space: session
            .space
            .as_ref()
            .map(|space| Placed::new(space_of_home(&space.value, fitted, home), space.place)),
        parts,
        adult,
        ..session.clone()
    }
}

/// What tells the sheets of a session in one home from those in another.
pub(super) fn key_of(session: &Session, fitted: &FittedHome) -> String {
    let space = session.space.as_ref().map(|space| {
        let sides = (space.length.value, space.width.value, space.height.as_ref().map(|h| h.value));
        (sides, space.notch, &space.whereabouts, &space.surfaces)
    });
    let (chosen, served) = (&fitted.choice.parts, &fitted.served);
    format!("{} {:?} {chosen:?} {served:?} {space:?}", session.id, fitted.versions)
}

fn alternative_of(part: &Part, version: Option<usize>) -> Option<&Alternative> {
    part.alternatives.get(version?.checked_sub(1)?)
}

fn part_of_home(part: &Part, at: usize, fitted: &FittedHome, words: &Words) -> Part {
    let length = fitted.choice.parts[at].map_or(Duration::ZERO, |chosen| chosen.length);
    let mut changed = part.clone();
    changed.time = part.time.map(|time| Placed::new(time_of_length(&time, length), time.place));
    changed.alternatives.clear();
    if let Some(other) = alternative_of(part, fitted.versions[at]) {
        take_version(&mut changed, other, words);
    }
    changed
}

/// Shorter by whole rounds, or by work.
fn time_of_length(time: &PartTime, length: Duration) -> PartTime {
    let usual = total_of(time);
    let less = usual.seconds().saturating_sub(length.seconds());
    if less == 0 {
        return *time;
    }
    let round = time.work + time.rest;
    if time.rounds > 1 && !round.is_zero() {
        return PartTime { rounds: (time.rounds - less / round.seconds()).max(1), ..*time };
    }
    let work = Duration::from_seconds(time.work.seconds().saturating_sub(less));
    PartTime { work, counts: None, ..*time }
}

/// What was written for feet and for jumping is left out of a version that is done without.
fn take_version(part: &mut Part, other: &Alternative, words: &Words) {
    let names: Vec<String> = other
        .suits
        .iter()
        .map(|suited| words.say(&format!("fit-version-{}", suited.word().replace(' ', "-"))))
        .collect();
    let how = format!("**{}**\n\n{}", names.join(", "), other.how.value);
    part.how = Placed::new(Prose(how), other.how.place);
    if let Some(space) = &other.space {
        part.space = Some(space.clone());
    }
    if other.is_for(Suited::Seated) || other.is_for(Suited::Quiet) {
        (part.easier, part.harder) = (None, None);
        part.movements.retain(|movement| !movement.lands());
    }
    if other.is_for(Suited::Seated) {
        part.key_points.clear();
        part.faults.clear();
        part.pictures.clear();
    }
}

fn number_parts(parts: &mut [Part]) {
    for kind in PartKind::ALL {
        let of = parts.iter().filter(|part| part.kind == kind).count();
        let own = parts.iter_mut().filter(|part| part.kind == kind);
        for (part, number) in own.zip(1..) {
            (part.number, part.of) = (number, of);
        }
    }
}

/// Only what kept parts use, with what the home has of it to stand in. A home was fitted by the names of the
/// original, whose things stand in the same order.
fn needs_of_home(
    (session, original): (&Session, &Session),
    fitted: &FittedHome,
    kept: &[usize],
) -> Vec<Need> {
    let needs = session.needs.iter().zip(&original.needs).zip(&fitted.served);
    needs.filter_map(|(need, served)| need_of_home(session, need, served, fitted, kept)).collect()
}

fn need_of_home(
    session: &Session,
    (need, named): (&Need, &Need),
    served: &[HomeThings],
    fitted: &FittedHome,
    kept: &[usize],
) -> Option<Need> {
    if served.is_empty() {
        return None;
    }
    let is_used = |at: usize| {
        let other = alternative_of(&session.parts[at], fitted.versions[at]);
        let asked = other.and_then(|other| other.needs.as_ref());
        (need.parts.is_empty() || need.parts.contains(&at))
            && asked.is_none_or(|names| names.iter().any(|name| name.value == named.name.value))
    };
    let places = kept.iter().enumerate().filter(|(_, at)| is_used(**at));
    let is_itself = served.iter().all(|things| things.name == named.name.value.0);
    let stands_in = |(_, named): &(&Substitute, &Substitute)| {
        served.iter().any(|things| things.name == named.thing.value.0)
    };
    let enough = |substitute: &Substitute| Substitute { at_home: None, ..substitute.clone() };
    let substitutes = need
        .substitutes
        .iter()
        .zip(&named.substitutes)
        .filter(stands_in)
        .map(|(substitute, _)| enough(substitute))
        .collect();
    let thing = need.thing.as_ref().map(|thing| {
        Arc::new(Thing {
            household: thing.household || is_itself,
            at_home: None,
            ..(**thing).clone()
        })
    });
    Some(Need {
        count: served.iter().map(|things| things.count).sum::<u32>().max(1),
        parts: places.map(|(place, _)| place).collect(),
        substitutes,
        thing,
        optional: false,
        ..need.clone()
    })
}

/// The floor the session is done on, where that is one; what it asks for, where the floor holds that.
fn space_of_home(space: &Space, fitted: &FittedHome, home: &Home) -> Space {
    let mut used: Vec<&HomeFloor> =
        fitted.floors.iter().flatten().map(|floor| &home.floors[*floor]).collect();
    used.dedup();
    let mut changed = space.clone();
    let mut places: Vec<Whereabouts> = used.iter().map(|floor| place_of(floor)).collect();
    places.sort_unstable();
    places.dedup();
    if !places.is_empty() {
        changed.whereabouts = places;
    }
    if let [floor] = used[..] {
        take_floor(&mut changed, floor);
    }
    changed
}

fn take_floor(space: &mut Space, floor: &HomeFloor) {
    let (long, short) =
        (floor.floor.length.max(floor.floor.width), floor.floor.length.min(floor.floor.width));
    let holds = space.length.value <= long && space.width.value <= short;
    if !holds || floor.floor.notch.is_some() {
        (space.length.value, space.width.value) = (floor.floor.length, floor.floor.width);
        space.notch = floor.floor.notch;
    }
    if let (Some(asked), Some(there)) = (&mut space.height, floor.height) {
        asked.value = asked.value.min(there);
    }
    space.surfaces.retain(|surface| floor.surface.is_none_or(|there| there == *surface));
}

const fn place_of(floor: &HomeFloor) -> Whereabouts {
    if floor.is_outdoors { Whereabouts::Outdoors } else { Whereabouts::Indoors }
}
