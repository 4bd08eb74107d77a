use std::collections::BTreeSet;

use super::equipment_unknown::slip_of;
use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::inspect::wording::Names;
use crate::pack::{Pack, Session, Thing};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "equipment-unlisted",
    severity: Severity::Warning,
    asks: "A thing that a part speaks of is in the session’s equipment.",
    why: "A parent gathers from the list. A thing that first turns up in the middle of a part stops the \
          session. Things of equipment.yaml are looked for by name; those that every home has are let pass.",
    source: "",
    bad: "\
stretch:
  - title: Change feet
    time: 2 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Put the hand weight down and hop round it.
    easier: Step between.
    harder: Hop backwards.
",
    good: "\
stretch:
  - title: Change feet
    time: 2 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Put the second marker down and hop round it.
    easier: Step between.
    harder: Hop backwards.
",
    check: Check::SessionInPack(check),
};

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    let names = names_to_find(session, pack);
    let mut told = BTreeSet::new();
    for part in &session.parts {
        for text in part.texts() {
            for name in names.keys_in(&text) {
                if name.is_empty() || !told.insert(name.to_owned()) {
                    continue;
                }
                notes.find(
                    pack.files.place_within(text.place, name),
                    format!(
                        "The {} speaks of “{name}”, which the session’s equipment doesn’t list.",
                        part.named()
                    ),
                    format!("Add “- need: {name}” to the equipment, or take it out of the text."),
                );
            }
        }
    }
}

/// Names of unlisted things stand for themselves; those that are listed, for nothing.
fn names_to_find(session: &Session, pack: &Pack) -> Names {
    let mut names = Names::default();
    let mut listed = BTreeSet::new();
    for need in &session.needs {
        listed.insert(slip_of(need, pack).unwrap_or(&need.name));
        names.add(&need.name, "");
        names.add(&need.plural, "");
        for substitute in &need.substitutes {
            names.add(&substitute.thing, "");
            names.add(&substitute.plural, "");
        }
    }
    let is_listed = |thing: &Thing| thing.household || listed.contains(&*thing.name.value);
    for thing in pack.things.values() {
        let key = if is_listed(thing) { "" } else { &*thing.name.value };
        names.add(&thing.name, key);
        names.add(&thing.plural, key);
    }
    names
}
