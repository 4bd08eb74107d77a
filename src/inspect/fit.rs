//! Whether a thing keeps to the mass, size and softness that a session asks for.

use std::fmt::Display;

use crate::pack::Limits;
use crate::place::{Place, Placed};
use crate::quantity::{Length, Mass, Range};

/// One way in which a thing doesn't suit.
#[derive(Debug)]
pub(super) struct Misfit {
    /// “it can be too heavy (400–550 g; asked for: at most 300 g)”
    pub says: String,
    /// Where the thing's own figure stands; softness has no place of its own.
    pub found: Option<Place>,
    /// Where the limit stands.
    pub asked: Option<Place>,
}

/// Mass, size and softness of a thing.
type Found<'f> = (&'f Option<Placed<Range<Mass>>>, &'f Option<Placed<Range<Length>>>, Option<bool>);

/// Every way in which what was found doesn't suit the limits; an unknown mass or size suits.
pub(super) fn misfits(limits: &Limits, (mass, size, soft): Found<'_>) -> Vec<Misfit> {
    let mut misfits = Vec::new();
    misfits.extend(compare(limits.mass.as_ref(), mass.as_ref(), ["too heavy", "too light"]));
    misfits.extend(compare(limits.size.as_ref(), size.as_ref(), ["too large", "too small"]));
    if limits.soft == Some(true) && soft != Some(true) {
        let says = "something soft is asked for, and it is not said to be soft".to_owned();
        misfits.push(Misfit { says, found: None, asked: None });
    }
    misfits
}

fn compare<T: Copy + Ord + Display>(
    asked: Option<&Placed<Range<T>>>,
    found: Option<&Placed<Range<T>>>,
    [above, below]: [&str; 2],
) -> Option<Misfit> {
    let (asked, found) = (asked?, found?);
    let fault = if asked.is_above(found) {
        above
    } else if asked.is_below(found) {
        below
    } else {
        return None;
    };
    let says = format!("it can be {fault} ({}; asked for: {})", found.value, asked.value);
    Some(Misfit { says, found: Some(found.place), asked: Some(asked.place) })
}
