use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Unit};
use crate::plan::unit::{Origin, UnitPlan};

pub const RULE: Rule = Rule {
    code: "unit-overfull",
    severity: Severity::Problem,
    asks: "Every session of a unit has a day.",
    why: "What finds no day is done by nobody, and its review questions never come back.",
    source: "",
    bad: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 1
days: [{day: monday, at: 9:30}]
sessions: [games/example, games/example-2]
# file: games/example-2.yaml
title: Hop, turn and rest
",
    good: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}]
sessions: [games/example, games/example-2]
# file: games/example-2.yaml
title: Hop, turn and rest
",
    check: Check::Unit(check),
};

fn check(unit: &Unit, plan: &UnitPlan, _: &Pack, notes: &mut Notes<'_>) {
    for origin in &plan.left_over {
        let Origin::Entry(at) = origin else { continue };
        let entry = &unit.entries[*at];
        let is_sound = |week: u32| (1..=unit.weeks.value).contains(&week);
        // A week or day that is not there is told of elsewhere.
        if plan.slots.is_empty()
            || entry.day.is_some()
            || entry.week.as_ref().is_some_and(|week| !is_sound(week.value))
        {
            continue;
        }
        notes.find(
            entry.named.place,
            match &entry.week {
                Some(week) => format!("Week {} has no day left for this session.", week.value),
                None => "No day is left for this session.".to_owned(),
            },
            "Add a week or a day, or take a session out.",
        );
    }
}
