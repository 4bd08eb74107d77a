//! The shared list, and each session's needs joined with it.

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;
use std::sync::Arc;

use crate::pack::{Figures, Limits, Need, Part, Refused, Substitute, Thing, filled_mass, misfits};
use crate::place::Placed;
use crate::read::Line;
use crate::read::pack_files::{EquipmentDoc, ThingDoc};
use crate::read::session_file::{NeedDoc, SubstituteDoc};

/// The shared list by name, and the names that stand in it again: of two the first counts.
pub(super) fn resolve_things(
    doc: EquipmentDoc,
) -> (BTreeMap<String, Arc<Thing>>, Vec<Placed<Line>>) {
    let (mut things, mut twice) = (BTreeMap::new(), Vec::new());
    for thing in doc.equipment.into_iter().map(resolve_thing) {
        match things.entry(thing.name.to_string()) {
            Entry::Vacant(free) => {
                free.insert(Arc::new(thing));
            }
            Entry::Occupied(_) => twice.push(thing.name),
        }
    }
    (things, twice)
}

fn resolve_thing(doc: ThingDoc) -> Thing {
    let is = |written: Option<Placed<bool>>| written.is_some_and(|written| written.value);
    Thing {
        plural: plural_of(&doc.name, doc.plural.as_ref()),
        name: doc.name,
        mass: doc.mass,
        size: doc.size,
        soft: doc.soft.map(|soft| soft.value),
        qualities: qualities_of(&doc.is),
        at_home: doc.at_home.map(|count| count.value),
        weight: is(doc.weight),
        grip: doc.grip,
        household: is(doc.household),
        substitutes: doc.instead.into_iter().map(resolve_substitute).collect(),
    }
}

fn resolve_substitute(doc: SubstituteDoc) -> Substitute {
    let filling = doc.filling.as_ref().zip(doc.volume.as_ref());
    let half_filled = match (&doc.filling, &doc.volume) {
        (Some(filling), None) => Some(filling.place),
        (None, Some(volume)) => Some(volume.place),
        _ => None,
    };
    Substitute {
        plural: plural_of(&doc.thing, doc.plural.as_ref()),
        thing: doc.thing,
        mass: match filling {
            Some((filling, volume)) => {
                let empty = doc.mass.as_ref().map(|mass| mass.value);
                Some(Placed::new(filled_mass(empty, volume.value, filling.value), volume.place))
            }
            None => doc.mass,
        },
        filling: filling.map(|(filling, volume)| (filling.value, volume.value)),
        half_filled,
        qualities: qualities_of(&doc.is),
        at_home: doc.at_home.map(|count| count.value),
        size: doc.size,
        soft: doc.soft.map(|soft| soft.value),
        note: doc.note,
    }
}

fn qualities_of(written: &[Placed<Line>]) -> Vec<String> {
    written.iter().map(|quality| quality.to_lowercase()).collect()
}

fn plural_of(name: &Placed<Line>, plural: Option<&Placed<Line>>) -> String {
    plural.map_or_else(|| guess_plural(&name.value), ToString::to_string)
}

/// An s is added only where that is sure to be right. Where it is not, the name stays as it is, and
/// several are counted “3 × cardboard box”.
fn guess_plural(name: &str) -> String {
    let is_unsure = name.contains(' ')
        && [" of ", " with ", " that ", " and "].iter().any(|word| name.contains(word))
        || ["s", "x", "z", "ch", "sh", "y", "f", "fe", "o", "ing"]
            .iter()
            .any(|end| name.ends_with(end))
        || !name.ends_with(|c: char| c.is_ascii_lowercase());
    if is_unsure { name.to_owned() } else { format!("{name}s") }
}

/// Joins a session's needs with the shared list and with the parts that use them.
pub(super) fn resolve_needs(
    docs: Vec<NeedDoc>,
    parts: &[Part],
    things: &BTreeMap<String, Arc<Thing>>,
) -> Vec<Need> {
    docs.into_iter().map(|doc| resolve_need(doc, parts, things)).collect()
}

fn resolve_need(doc: NeedDoc, parts: &[Part], things: &BTreeMap<String, Arc<Thing>>) -> Need {
    let thing = things.get(doc.need.value.0.as_str()).cloned();
    let plural = thing.as_ref().map_or_else(|| plural_of(&doc.need, None), |t| t.plural.clone());
    let own: Vec<Substitute> = doc.instead.into_iter().map(resolve_substitute).collect();
    let limits = Limits {
        mass: doc.mass,
        size: doc.size,
        soft: doc.soft.map(|soft| soft.value),
        qualities: doc.must_be,
    };
    let (substitutes, refused) = match &thing {
        Some(thing) if own.is_empty() => sort_out(&thing.substitutes, &limits),
        _ => (own, Vec::new()),
    };
    let (used_by, strangers) = users_of(doc.r#for, parts);
    Need {
        name: doc.need,
        plural,
        count: doc.count.map_or(1, |count| count.value),
        parts: used_by,
        strangers,
        limits,
        optional: doc.optional.is_some_and(|optional| optional.value),
        note: doc.note,
        thing,
        substitutes,
        refused,
    }
}

/// The shared list serves many sessions: what doesn’t suit this one is put aside with its reasons.
fn sort_out(shared: &[Substitute], limits: &Limits) -> (Vec<Substitute>, Vec<Refused>) {
    let (mut suitable, mut refused) = (Vec::new(), Vec::new());
    for substitute in shared {
        let reasons = misfits(limits, Figures::of(substitute));
        if reasons.is_empty() {
            suitable.push(substitute.clone());
        } else {
            refused.push(Refused { thing: substitute.thing.clone(), reasons });
        }
    }
    (suitable, refused)
}

/// The parts that the names after `for` mean, and the names that mean none.
fn users_of(names: Vec<Placed<Line>>, parts: &[Part]) -> (Vec<usize>, Vec<Placed<Line>>) {
    let (mut users, mut strangers) = (Vec::new(), Vec::new());
    for name in names {
        let is_meant = |part: &Part| {
            part.kind.key() == name.value.0 || part.title.value.eq_ignore_ascii_case(&name.value)
        };
        let meant: Vec<usize> =
            parts.iter().enumerate().filter(|(_, part)| is_meant(part)).map(|(i, _)| i).collect();
        if meant.is_empty() {
            strangers.push(name);
        }
        users.extend(meant);
    }
    users.sort_unstable();
    users.dedup();
    (users, strangers)
}
