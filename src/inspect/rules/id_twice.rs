use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;
use crate::place::Place;

pub const RULE: Rule = Rule {
    code: "id-twice",
    severity: Severity::Problem,
    asks: "No two files make the same session address.",
    why: "A session’s address is made from its file’s name in small letters, with hyphens for everything \
          else. Two with one address would overwrite each other.",
    source: "",
    bad: "\
# file: games/Example.yaml
title: Hop and turn
",
    good: "\
# file: games/example-turn.yaml
title: Hop and turn
",
    check: Check::Pack(check),
};

fn check(pack: &Pack, notes: &mut Notes<'_>) {
    for pair in pack.sessions.windows(2) {
        if pair[0].id == pair[1].id {
            notes.find(
                Place::top_of(pair[1].file),
                format!(
                    "This file and “{}” both become the session “{}”.",
                    pair[0].path, pair[1].id
                ),
                "Rename one of the two files.",
            );
        }
    }
    for (at, unit) in pack.units.iter().enumerate() {
        if pack.units[..at].iter().any(|other| other.id == unit.id) {
            notes.find(
                Place::top_of(unit.file),
                format!("This file and another one both become the unit “{}”.", unit.id),
                "Rename one of the two files.",
            );
        }
    }
}
