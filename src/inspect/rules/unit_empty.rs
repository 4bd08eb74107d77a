use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Unit};
use crate::plan::unit::{MOST_WEEKS, UnitPlan};

pub const RULE: Rule = Rule {
    code: "unit-empty",
    severity: Severity::Problem,
    asks: "A unit has 1 to 60 weeks, days of the week, and sessions or statements to cover.",
    why: "Without weeks and days no session has a date, and without sessions there is nothing to do on \
          them.",
    source: "",
    bad: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: []
sessions: [games/example]
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

fn check(unit: &Unit, _: &UnitPlan, _: &Pack, notes: &mut Notes<'_>) {
    let weeks = unit.weeks.value;
    if weeks == 0 || weeks > MOST_WEEKS {
        notes.find(
            unit.weeks.place,
            format!("A unit of {weeks} weeks can’t be planned."),
            format!("Write a number from 1 to {MOST_WEEKS}."),
        );
    }
    if unit.days.is_empty() {
        notes.find(
            unit.title.place,
            "This unit has no days of the week.",
            "Add “days:” with a line such as “- {day: monday, at: 9:30}”.",
        );
    }
    if unit.was_cut {
        notes.find(
            unit.title.place,
            "This unit has more days, sessions or holidays than can be planned.",
            "Make several units of it: 14 days a week, 400 sessions and 100 holidays are the most.",
        );
    }
    let covers = unit.cover.as_ref().is_some_and(|cover| !cover.statements.is_empty());
    if unit.entries.is_empty() && !covers {
        notes.find(
            unit.title.place,
            "This unit has no sessions.",
            "List their addresses under “sessions:”, or statements under “cover:”.",
        );
    }
}
