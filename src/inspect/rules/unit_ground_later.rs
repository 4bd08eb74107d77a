use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Unit};
use crate::plan::unit::{Origin, UnitPlan};

pub const RULE: Rule = Rule {
    code: "unit-ground-later",
    severity: Severity::Warning,
    asks: "A session comes after those it builds on.",
    why: "A skill is learnt on the ground of an earlier one. Without it the key points are new words, \
          and a landing or a throw may not be safe yet.",
    source: "",
    bad: "\
builds_on: [games/example-2]
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
sessions:
  - {session: games/example, week: 1, day: monday}
  - {session: games/example-2, week: 2, day: monday}
# file: games/example-2.yaml
title: Turn before you hop
",
    good: "\
builds_on: [games/example-2]
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
sessions: [games/example, games/example-2]
# file: games/example-2.yaml
title: Turn before you hop
",
    check: Check::Unit(check),
};

fn check(unit: &Unit, plan: &UnitPlan, pack: &Pack, notes: &mut Notes<'_>) {
    if plan.lacks_sessions {
        return;
    }
    for (at, day) in plan.days.iter().enumerate() {
        let session = &pack.sessions[day.session];
        let Origin::Entry(entry) = day.origin else { continue };
        for named in &session.builds_on {
            let Some(ground) = pack.find_session(named).filter(|ground| *ground != day.session) else {
                continue;
            };
            let is_before = plan.days[..at].iter().any(|other| other.session == ground);
            let later = plan.days[at..].iter().find(|other| other.session == ground);
            if let Some(later) = later.filter(|_| !is_before) {
                notes.find(
                    unit.entries[entry].named.place,
                    format!(
                        "“{}” builds on “{}”, which comes later, on {}.",
                        session.title,
                        pack.sessions[ground].title,
                        later.slot.date.in_words()
                    ),
                    "Change the two over, or take week and day out: grounds are then put first.",
                );
            }
        }
    }
}
