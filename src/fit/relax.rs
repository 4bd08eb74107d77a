//! What one thing would make a session fit a home: the first that does of a thing to lend, more time, more
//! floor, a floor such as the session asks for, one more person, or another version that nobody has written yet.

use super::choose::fits;
use super::doable::SessionFacts;
use super::stock::Cupboard;
use crate::homes::{Home, HomeFloor, HomeNeed};
use crate::plan::{Floor, HomeThings};
use crate::quantity::{Duration, Length};
use crate::read::words::Whereabouts;

/// The one thing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OneThing {
    Lend(HomeThings),
    /// A slot so long.
    Minutes(Duration),
    /// So much more each way on one of the home’s floors, counted from 0.
    MoreFloor {
        floor: usize,
        by: Length,
    },
    /// A floor such as the session asks for.
    Floor {
        length: Length,
        width: Length,
        place: Whereabouts,
    },
    Helper,
    /// Versions of its parts for a child who sits, or for a home that must be quiet.
    Version(HomeNeed),
}

/// Time is added by five minutes: our own choice.
const STEP: u32 = 300;

/// Floor is added by half a metre each way, up to a metre and a half: our own choice.
const MORE_FLOOR: [u32; 3] = [500, 1000, 1500];

/// Names the one thing, if there is one.
pub(super) fn plan_one_thing(
    facts: &SessionFacts<'_>,
    home: &Home,
    cupboard: &Cupboard,
) -> Option<OneThing> {
    one_to_lend(facts, home, cupboard)
        .or_else(|| more_minutes(facts, home, cupboard))
        .or_else(|| more_floor(facts, home, cupboard))
        .or_else(|| floor_asked(facts, home, cupboard))
        .or_else(|| one_helper(facts, home, cupboard))
        .or_else(|| other_version(facts, home, cupboard))
}

fn would_fit(facts: &SessionFacts<'_>, home: &Home, cupboard: &Cupboard) -> bool {
    fits(&facts.model(home, cupboard.stock_of(home)).0)
}

fn one_to_lend(facts: &SessionFacts<'_>, home: &Home, cupboard: &Cupboard) -> Option<OneThing> {
    let stock = cupboard.stock_of(home);
    let (model, _) = facts.model(home, stock.clone());
    let lendable = cupboard.lendable();
    let with = |thing: usize, count: u32| {
        let mut more = stock.clone();
        more[thing] = more[thing].saturating_add(count);
        fits(&model.with_stock(more))
    };
    let asked = facts.wants.iter().filter(|want| !want.optional);
    let own = asked.filter_map(|want| Some((want.suits.first()?.thing, want.count)));
    own.filter(|(thing, _)| lendable[*thing] > 0).find_map(|(thing, most)| {
        let count = (1..=most).find(|count| with(thing, *count))?;
        Some(OneThing::Lend(cupboard.counted(thing, count)))
    })
}

fn more_minutes(facts: &SessionFacts<'_>, home: &Home, cupboard: &Cupboard) -> Option<OneThing> {
    let longest = facts.session.slot.seconds().max(home.minutes.seconds()) / STEP + 1;
    let slots = (home.minutes.seconds() / STEP + 1..=longest).map(|n| n * STEP);
    slots.map(Duration::from_seconds).find_map(|minutes| {
        let longer = Home { minutes, ..home.clone() };
        would_fit(facts, &longer, cupboard).then_some(OneThing::Minutes(minutes))
    })
}

fn more_floor(facts: &SessionFacts<'_>, home: &Home, cupboard: &Cupboard) -> Option<OneThing> {
    let each = |by: u32| (0..home.floors.len()).map(move |floor| (by, floor));
    MORE_FLOOR.into_iter().flat_map(each).find_map(|(by, floor)| {
        let mut larger = home.clone();
        let grown = &mut larger.floors[floor].floor;
        let add = |length: Length| Length::from_millimetres(length.millimetres() + by);
        (grown.length, grown.width) = (add(grown.length), add(grown.width));
        let by = Length::from_millimetres(by);
        would_fit(facts, &larger, cupboard).then_some(OneThing::MoreFloor { floor, by })
    })
}

fn floor_asked(facts: &SessionFacts<'_>, home: &Home, cupboard: &Cupboard) -> Option<OneThing> {
    let space = facts.session.space.as_ref()?;
    let (length, width) = (space.length.value, space.width.value);
    space.whereabouts.iter().find_map(|place| {
        let mut other = home.clone();
        other.floors.push(HomeFloor {
            floor: Floor { length, width, notch: None },
            height: space.height.as_ref().map(|height| height.value),
            surface: space.surfaces.first().copied(),
            is_outdoors: *place == Whereabouts::Outdoors,
        });
        let floor = OneThing::Floor { length, width, place: *place };
        would_fit(facts, &other, cupboard).then_some(floor)
    })
}

fn one_helper(facts: &SessionFacts<'_>, home: &Home, cupboard: &Cupboard) -> Option<OneThing> {
    let other = Home { helpers: home.helpers + 1, ..home.clone() };
    would_fit(facts, &other, cupboard).then_some(OneThing::Helper)
}

fn other_version(facts: &SessionFacts<'_>, home: &Home, cupboard: &Cupboard) -> Option<OneThing> {
    let needs = [HomeNeed::Seated, HomeNeed::Quiet].into_iter();
    needs.filter(|need| home.has_need(*need)).find_map(|need| {
        let mut other = home.clone();
        other.needs.remove(&need);
        would_fit(facts, &other, cupboard).then_some(OneThing::Version(need))
    })
}
