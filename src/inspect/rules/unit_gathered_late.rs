use std::collections::BTreeSet;

use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Unit};
use crate::plan::unit::UnitPlan;

pub const RULE: Rule = Rule {
    code: "unit-gathered-late",
    severity: Severity::Warning,
    asks: "A thing is gathered by the week that first needs it.",
    why: "Where a unit says what families gather by which week, they trust the list. A thing that is \
          missing on the day stops the session.",
    source: "",
    bad: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
gather:
  - {week: 1, things: [marker]}
  - {week: 2, things: [tape measure]}
sessions: [{session: games/example, week: 1, day: monday}]
",
    good: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
gather:
  - {week: 1, things: [marker]}
  - {week: 2, things: [tape measure]}
sessions: [{session: games/example, week: 2, day: monday}]
",
    check: Check::Unit(check),
};

fn check(unit: &Unit, plan: &UnitPlan, pack: &Pack, notes: &mut Notes<'_>) {
    let Some(first) = unit.gather.first().filter(|_| !plan.lacks_sessions) else { return };
    let mut told = BTreeSet::new();
    for day in &plan.days {
        let needs = pack.sessions[day.session].needs.iter();
        for need in needs.filter(|need| !need.optional && !need.is_household()) {
            let name = &need.name.value;
            let has = |things: &[crate::place::Placed<crate::read::Line>]| {
                things.iter().any(|thing| thing.value.to_lowercase() == name.to_lowercase())
            };
            let by = unit.gather.iter().filter(|step| has(&step.things)).map(|step| &step.week);
            let by = by.min_by_key(|week| week.value);
            if by.is_some_and(|by| by.value <= day.slot.week) || !told.insert(name.clone()) {
                continue;
            }
            let says = match by {
                Some(by) => format!(
                    "“{name}” is gathered by week {}, and needed on {} of week {}.",
                    by.value,
                    day.slot.day.name(),
                    day.slot.week
                ),
                None => format!("“{name}” is needed in week {}, and in no list here.", day.slot.week),
            };
            let way_out = format!("Add it to the list of week {} or of one before.", day.slot.week);
            notes.find(by.map_or(first.week.place, |by| by.place), says, way_out);
        }
    }
}
