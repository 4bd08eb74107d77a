use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Unit};
use crate::plan::unit::UnitPlan;

pub const RULE: Rule = Rule {
    code: "unit-day-unknown",
    severity: Severity::Problem,
    asks: "A session’s week and day are among those of its unit.",
    why: "A session on another week or day stands in nobody’s calendar.",
    source: "",
    bad: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
sessions: [{session: games/example, week: 2, day: friday}]
",
    good: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
sessions: [{session: games/example, week: 2, day: thursday}]
",
    check: Check::Unit(check),
};

fn check(unit: &Unit, _: &UnitPlan, _: &Pack, notes: &mut Notes<'_>) {
    if unit.days.is_empty() {
        return;
    }
    for entry in &unit.entries {
        let weeks = unit.weeks.value;
        if let Some(week) = entry.week.as_ref().filter(|week| week.value == 0 || week.value > weeks) {
            notes.find(
                week.place,
                format!("This unit has weeks 1 to {weeks}, and no week {}.", week.value),
                "Change the week here, or the number of weeks above.",
            );
        }
        let is_known = |day| unit.days.iter().any(|known| known.day.value == day);
        if let Some(day) = entry.day.as_ref().filter(|day| !is_known(day.value)) {
            let days: Vec<String> = unit.days.iter().map(|day| day.day.value.name()).collect();
            notes.find(
                day.place,
                format!("This unit’s days are {}, not {}.", days.join(" and "), day.value.name()),
                "Choose one of them, or add the day under “days:” with its time.",
            );
        }
    }
}
