use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Unit};
use crate::plan::unit::{Origin, UnitPlan};

pub const RULE: Rule = Rule {
    code: "unit-day-twice",
    severity: Severity::Warning,
    asks: "No session stands twice on the same day.",
    why: "A second time on the same day teaches little; some days later it shows what has stayed.",
    source: "Cepeda, Pashler, Vul, Wixted and Rohrer 2006, Psychological Bulletin 132, 354–380: practice \
          that is spread out lasts longer",
    bad: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
sessions:
  - {session: games/example, week: 1, day: monday}
  - {session: games/example, week: 1, day: monday}
",
    good: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
sessions:
  - {session: games/example, week: 1, day: monday}
  - {session: games/example, week: 2, day: monday}
",
    check: Check::Unit(check),
};

fn check(unit: &Unit, plan: &UnitPlan, _: &Pack, notes: &mut Notes<'_>) {
    for (at, day) in plan.days.iter().enumerate() {
        let is_same = |other: &crate::plan::unit::PlannedDay| {
            other.slot.date == day.slot.date && other.session == day.session
        };
        let Origin::Entry(entry) = day.origin else { continue };
        if plan.days[..at].iter().any(is_same) {
            let named = &unit.entries[entry].named;
            notes.find(
                named.place,
                format!("“{named}” stands on {} already.", day.slot.date.in_words()),
                "Give it another day, or take it out.",
            );
        }
    }
}
