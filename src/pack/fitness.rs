//! Whether a thing keeps to the mass, size and qualities that a session asks for; if not, why.

use super::{Limits, Substitute, Thing};
use crate::place::{Place, Placed};
use crate::quantity::{Length, Mass, Range};

/// What is known of a thing.
#[derive(Clone, Copy, Debug)]
pub struct Figures<'t> {
    pub mass: Option<&'t Placed<Range<Mass>>>,
    pub size: Option<&'t Placed<Range<Length>>>,
    pub soft: Option<bool>,
    /// In small letters.
    pub qualities: &'t [String],
}

impl<'t> Figures<'t> {
    pub fn of(substitute: &'t Substitute) -> Self {
        Self {
            mass: substitute.mass.as_ref(),
            size: substitute.size.as_ref(),
            soft: substitute.soft,
            qualities: &substitute.qualities,
        }
    }

    /// The school’s own thing. Where it says nothing of softness or qualities it is not held to lack
    /// them: the school knows its own.
    pub fn of_own(thing: &'t Thing, limits: &Limits) -> Self {
        Self {
            mass: thing.mass.as_ref(),
            size: thing.size.as_ref(),
            soft: thing.soft.or(limits.soft),
            qualities: &thing.qualities,
        }
    }
}

/// One way in which a thing doesn’t suit.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Misfit {
    pub fault: Fault,
    /// Where the thing’s own figure stands, if it has one.
    pub found: Option<Place>,
    /// Where the limit stands, if it has a place of its own.
    pub asked: Option<Place>,
}

/// What is wrong: what the thing has, and what is asked for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fault {
    TooHeavy(Range<Mass>, Range<Mass>),
    TooLight(Range<Mass>, Range<Mass>),
    TooLarge(Range<Length>, Range<Length>),
    TooSmall(Range<Length>, Range<Length>),
    NotSoft,
    /// It is not said to be so.
    Lacks(String),
}

/// Every way in which a thing doesn’t suit; an unknown mass or size suits.
pub fn misfits(limits: &Limits, found: Figures<'_>) -> Vec<Misfit> {
    let mut misfits = Vec::new();
    misfits.extend(compare(limits.mass.as_ref(), found.mass, Fault::TooHeavy, Fault::TooLight));
    misfits.extend(compare(limits.size.as_ref(), found.size, Fault::TooLarge, Fault::TooSmall));
    if limits.soft == Some(true) && found.soft != Some(true) {
        misfits.push(Misfit { fault: Fault::NotSoft, found: None, asked: None });
    }
    for quality in &limits.qualities {
        let wanted = quality.to_lowercase();
        if !found.qualities.contains(&wanted) {
            let fault = Fault::Lacks(wanted);
            misfits.push(Misfit { fault, found: None, asked: Some(quality.place) });
        }
    }
    misfits
}

fn compare<T: Copy + Ord>(
    asked: Option<&Placed<Range<T>>>,
    found: Option<&Placed<Range<T>>>,
    above: impl Fn(Range<T>, Range<T>) -> Fault,
    below: impl Fn(Range<T>, Range<T>) -> Fault,
) -> Option<Misfit> {
    let (asked, found) = (asked?, found?);
    let fault = if asked.is_above(found) {
        above(found.value, asked.value)
    } else if asked.is_below(found) {
        below(found.value, asked.value)
    } else {
        return None;
    };
    Some(Misfit { fault, found: Some(found.place), asked: Some(asked.place) })
}
