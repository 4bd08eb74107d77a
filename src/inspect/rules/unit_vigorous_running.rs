use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Unit};
use crate::plan::unit::{Origin, UnitPlan};

pub const RULE: Rule = Rule {
    code: "unit-vigorous-running",
    severity: Severity::Advice,
    asks: "No vigorous day follows directly on another.",
    why: "Muscles and bones that are still growing want a day between hard ones, and a child who is \
          still tired learns less. A day is counted as vigorous where a fifth of its session or more is \
          vigorous work, rests left out.",
    source: "Common practice; the fifth is our own choice",
    bad: "\
warm_up:
  title: Stone and stream
  time: {explain: 30 s, work: 30 s, rest: 30 s, rounds: 8, recover: 30 s}
  effort: vigorous
  movements: [running, hopping]
  how: Run on the spot until you hear “stone”, then stand still on one foot. Jog round both markers.
  easier: Put your other toes on the floor.
  harder: Close one eye.
minutes: 24
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: tuesday, at: 9:30}]
sessions:
  - {session: games/example, week: 1, day: monday}
  - {session: games/example, week: 1, day: tuesday}
",
    good: "\
warm_up:
  title: Stone and stream
  time: {explain: 30 s, work: 30 s, rest: 30 s, rounds: 8, recover: 30 s}
  effort: vigorous
  movements: [running, hopping]
  how: Run on the spot until you hear “stone”, then stand still on one foot. Jog round both markers.
  easier: Put your other toes on the floor.
  harder: Close one eye.
minutes: 24
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
sessions:
  - {session: games/example, week: 1, day: monday}
  - {session: games/example, week: 1, day: thursday}
",
    check: Check::Unit(check),
};

fn check(unit: &Unit, plan: &UnitPlan, _: &Pack, notes: &mut Notes<'_>) {
    if plan.lacks_sessions {
        return;
    }
    for pair in plan.days.windows(2) {
        let [before, day] = pair else { continue };
        let is_next = day.slot.date.days_after(before.slot.date) == 1;
        if !(is_next && before.is_vigorous && day.is_vigorous) {
            continue;
        }
        let place = match day.origin {
            Origin::Entry(at) => unit.entries[at].named.place,
            Origin::Added(_) => unit.title.place,
        };
        notes.find(
            place,
            format!(
                "{} and {} {} are both vigorous days.",
                before.slot.day.name(),
                day.slot.day.name(),
                day.slot.date.in_words()
            ),
            "Put a quieter session between them, or leave a day free.",
        );
    }
}
