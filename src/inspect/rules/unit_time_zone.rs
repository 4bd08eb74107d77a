use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Unit};
use crate::plan::unit::{UnitPlan, has_time_zone};

pub const RULE: Rule = Rule {
    code: "unit-time-zone",
    severity: Severity::Problem,
    asks: "A time zone is written by its name in the IANA list, such as Europe/London.",
    why: "The calendar tells phones by it when a session begins, also after the clocks change.",
    source: "IANA Time Zone Database",
    bad: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
time_zone: London
sessions: [games/example]
",
    good: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
time_zone: Europe/London
sessions: [games/example]
",
    check: Check::Unit(check),
};

fn check(unit: &Unit, _: &UnitPlan, _: &Pack, notes: &mut Notes<'_>) {
    if let Some(zone) = unit.time_zone.as_ref().filter(|zone| !has_time_zone(zone)) {
        notes.find(
            zone.place,
            format!("“{zone}” is no time zone of the IANA list."),
            "Write a region and a city, such as Europe/London; or leave it out where all families live in one.",
        );
    }
}
