use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Unit};
use crate::plan::unit::UnitPlan;
use crate::read::nearest;

pub const RULE: Rule = Rule {
    code: "unit-statement-unknown",
    severity: Severity::Problem,
    asks: "What a unit covers is in curriculum.yaml.",
    why: "No session can be chosen for a code that stands for nothing.",
    source: "",
    bad: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
cover: {statements: [jmp-1]}
sessions: [games/example]
",
    good: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
cover: {statements: [jump-1]}
sessions: [games/example]
",
    check: Check::Unit(check),
};

fn check(unit: &Unit, _: &UnitPlan, pack: &Pack, notes: &mut Notes<'_>) {
    let statements = pack.curriculum.as_ref().map(|curriculum| &curriculum.statements);
    let known: Vec<&str> =
        statements.into_iter().flat_map(|known| known.keys()).map(String::as_str).collect();
    for code in unit.cover.iter().flat_map(|cover| &cover.statements) {
        if !known.contains(&&*code.value.0) {
            let way_out = match nearest(code, &known) {
                Some(near) => format!("Did you mean “{near}”?"),
                None => "Add it to curriculum.yaml with what it says, or take it out here.".into(),
            };
            notes.find(code.place, format!("“{code}” is not in curriculum.yaml."), way_out);
        }
    }
}
