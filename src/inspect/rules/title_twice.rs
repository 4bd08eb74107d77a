use std::collections::BTreeMap;

use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;

pub const RULE: Rule = Rule {
    code: "title-twice",
    severity: Severity::Warning,
    asks: "No two sessions have the same title.",
    why: "In a list, a family can’t tell which one the teacher meant.",
    source: "",
    bad: "\
# file: games/second.yaml
title: Hop and hold
",
    good: "\
# file: games/second.yaml
title: Hop and turn
",
    check: Check::Pack(check),
};

fn check(pack: &Pack, notes: &mut Notes<'_>) {
    let mut seen: BTreeMap<String, &str> = BTreeMap::new();
    for session in &pack.sessions {
        if let Some(path) = seen.get(&session.title.to_lowercase()) {
            notes.find(
                session.title.place,
                format!("“{}” is the title of “{path}” too.", session.title),
                "Say in one of the titles what is different, such as the thing used or the age.",
            );
        } else {
            seen.insert(session.title.to_lowercase(), &session.path);
        }
    }
}
