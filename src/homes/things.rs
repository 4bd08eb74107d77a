//! Things of a home, as a family counts them: “8 pairs of rolled socks; phone timer; 2 × tea towel”.

use super::{Home, HomeThing};
use crate::finding::{Finding, Severity};
use crate::fit::Cupboard;
use crate::place::Place;
use crate::read::nearest;

/// The things of a cell, apart by semicolons, bars or commas.
pub fn read_things(cell: &str, place: Place) -> Vec<HomeThing> {
    let things = cell.split([';', '|', ',', '\n']).map(str::trim);
    things.filter(|thing| !thing.is_empty()).map(|thing| read_thing(thing, place)).collect()
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

/// Warns of things that no session knows: they are left unused, which may be a slip of the pen.
pub fn check_things(homes: &[Home], cupboard: &Cupboard) -> Vec<Finding> {
    let names: Vec<&str> = cupboard.names().collect();
    let things = homes.iter().flat_map(|home| &home.things);
    let unknown = things.filter(|thing| cupboard.find(&thing.name).is_none());
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
