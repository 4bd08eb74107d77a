//! Things of a home, as a family counts them: “8 pairs of rolled socks; phone timer; 2 × tea towel”.

use std::collections::BTreeSet;

use super::{Home, HomeThing};
use crate::finding::{Finding, Severity};
use crate::fit::Cupboard;
use crate::pack::Pack;
use crate::place::Place;
use crate::read::nearest;

/// The things of a cell, apart by semicolons, bars or commas.
pub fn read_things(cell: &str, place: Place) -> Vec<HomeThing> {
    let things = cell.split([';', '|', ',', '\n']).map(str::trim);
    let places = things.filter(|thing| !thing.is_empty()).map(|thing| {
        let at = cell.find(thing).and_then(|at| u32::try_from(at).ok()).unwrap_or(0);
        let start = (place.start + at).min(place.end);
        let long = u32::try_from(thing.len()).unwrap_or(0);
        (thing, Place { start, end: (start + long).min(place.end), ..place })
    });
    places.map(|(thing, place)| read_thing(thing, place)).collect()
}

/// One thing with its number, if it has one.
pub fn read_thing(written: &str, place: Place) -> HomeThing {
    let words: Vec<&str> = written.split_whitespace().collect();
    let (count, rest) = match words.split_first() {
        Some((first, rest)) if !rest.is_empty() => match count_of(first) {
            Some(count) => (Some(count), rest),
            None => (None, words.as_slice()),
        },
        _ => (None, words.as_slice()),
    };
    let rest = match rest.split_first() {
        Some((sign, rest)) if count.is_some() && matches!(*sign, "×" | "x") => rest,
        _ => rest,
    };
    HomeThing { name: rest.join(" "), count, place }
}

/// Warns of things that no session of the pack knows, each once: they are left unused, which may be a slip of
/// the pen.
pub fn check_things(homes: &[Home], pack: &Pack) -> Vec<Finding> {
    let cupboard = Cupboard::of_pack(pack);
    let names: Vec<&str> = cupboard.names().collect();
    let mut said = BTreeSet::new();
    let things = homes.iter().flat_map(|home| &home.things);
    let unknown = things.filter(|thing| {
        cupboard.find(&thing.name).is_none() && said.insert(thing.name.to_lowercase())
    });
    let warn = |thing: &HomeThing| Finding {
        code: "homes-thing-unknown",
        severity: Severity::Warning,
        place: thing.place,
        says: format!("No session uses “{}”.", thing.name),
        way_out: match nearest(&thing.name, &names) {
            Some(near) => format!("Did you mean “{near}”?"),
            None => "It does no harm. The survey lists what the sessions can use.".into(),
        },
    };
    unknown.map(warn).collect()
}

/// No home has more of a thing.
const MOST: u32 = 1000;

fn count_of(word: &str) -> Option<u32> {
    word.trim_end_matches(['×', 'x']).parse().ok().filter(|count| *count <= MOST)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::place::FileId;

    #[test]
    fn numbers_stand_before_names() {
        let place = Place::top_of(FileId(0));
        let cell = "8 pairs of rolled socks; phone timer | 2 × tea towel, 3x paper cup";
        let things: Vec<_> =
            read_things(cell, place).into_iter().map(|thing| (thing.count, thing.name)).collect();
        let expected = [
            (Some(8), "pairs of rolled socks"),
            (None, "phone timer"),
            (Some(2), "tea towel"),
            (Some(3), "paper cup"),
        ];
        assert_eq!(things, expected.map(|(count, name)| (count, name.to_owned())));
    }
}
