use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Unit};
use crate::plan::unit::UnitPlan;

pub const RULE: Rule = Rule {
    code: "unit-session-unknown",
    severity: Severity::Problem,
    asks: "A unit names sessions that are in the pack and still offered.",
    why: "A session that is not there, or is retired, has no page that a family could open on its day.",
    source: "",
    bad: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
sessions: [games/exmaple]
",
    good: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
sessions: [games/example]
",
    check: Check::Unit(check),
};

fn check(unit: &Unit, _: &UnitPlan, pack: &Pack, notes: &mut Notes<'_>) {
    for entry in &unit.entries {
        match pack.find_session(&entry.named) {
            // What is wrong with it is said in its own file.
            None if pack.is_unread(&entry.named) => {}
            None => notes.find(
                entry.named.place,
                format!("There is no session “{}” in the pack.", entry.named),
                super::builds_on_unknown::way_to(&entry.named, pack),
            ),
            Some(at) if pack.sessions[at].is_retired() => notes.find(
                entry.named.place,
                format!("The session “{}” is retired.", entry.named),
                "Name one that is still offered, or take its standing back from retired.",
            ),
            Some(_) => {}
        }
    }
}
