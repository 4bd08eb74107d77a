use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Unit};
use crate::plan::unit::{Origin, UnitPlan};

pub const RULE: Rule = Rule {
    code: "unit-no-school",
    severity: Severity::Warning,
    asks: "No session of a unit stands on a day without school.",
    why: "Families are away, and the next session builds on something that was not done.",
    source: "",
    bad: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
no_school: [{from: 2027-01-18, what: Training day}]
sessions: [{session: games/example, week: 2, day: monday}]
",
    good: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
no_school: [{from: 2027-01-18, what: Training day}]
sessions: [{session: games/example, week: 2, day: thursday}]
",
    check: Check::Unit(check),
};

fn check(unit: &Unit, plan: &UnitPlan, _: &Pack, notes: &mut Notes<'_>) {
    for day in plan.days.iter().filter(|day| day.slot.is_out) {
        let Origin::Entry(at) = day.origin else { continue };
        let entry = &unit.entries[at];
        let date = day.slot.date;
        let why = match unit.no_school_on(date).map(|days| &days.what) {
            Some(Some(what)) => format!("without school ({what})"),
            Some(None) => "without school".to_owned(),
            None => "before the unit begins".to_owned(),
        };
        notes.find(
            entry.day.as_ref().map_or(entry.named.place, |day| day.place),
            format!("{} {} is a day {why}.", day.slot.day.name(), date.in_words()),
            "Choose another week or day, or leave both out: then the first free days are used.",
        );
    }
}
