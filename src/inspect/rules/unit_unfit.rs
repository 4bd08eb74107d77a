use super::unit_missing::units_for;
use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::words::Measured;

pub const RULE: Rule = Rule {
    code: "unit-unfit",
    severity: Severity::Problem,
    asks: "The unit fits what is measured.",
    why: "A distance in seconds, or criteria with a unit, makes a record sheet that nobody can fill in.",
    source: "",
    bad: "\
challenge:
  - title: Five hops
    time: 3 min
    effort: moderate
    movements: [hopping, landing]
    how: Start behind the first marker. Measure to your heel with the tape measure.
    easier: Hop three times.
    harder: Start from a standstill.
    measure: {what: distance, unit: hops, attempts: 3, better: more}
",
    good: "\
challenge:
  - title: Five hops
    time: 3 min
    effort: moderate
    movements: [hopping, landing]
    how: Start behind the first marker. Measure to your heel with the tape measure.
    easier: Hop three times.
    harder: Start from a standstill.
    measure: {what: count, unit: hops, attempts: 3, better: more}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for (part, measure) in session.measured() {
        let Some(unit) = &measure.unit else { continue };
        let what = measure.what.value;
        if what == Measured::Criteria {
            notes.find(
                unit.place,
                format!("The {} is judged by criteria, and they have no unit.", part.named()),
                "Take “unit” out, or say what is counted with “what: count”.",
            );
        } else if !what.units().is_empty() && !what.units().contains(&&*unit.value.0) {
            notes.find(
                unit.place,
                format!("“{unit}” is no unit of {}.", what.word()),
                format!("Write {}, or change what is measured.", units_for(what)),
            );
        }
    }
}
