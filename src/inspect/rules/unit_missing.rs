use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::words::Measured;

pub const RULE: Rule = Rule {
    code: "unit-missing",
    severity: Severity::Problem,
    asks: "A mark that is measured has a unit.",
    why: "“140” on a record sheet may be centimetres, hops or seconds. Without the unit it can’t be \
          compared with anything.",
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
    measure: {what: distance, attempts: 3, better: more}
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
    measure: {what: distance, unit: cm, attempts: 3, better: more}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for (part, measure) in session.measured() {
        if measure.unit.is_none() && measure.what.value != Measured::Criteria {
            notes.find(
                measure.place,
                format!("The {} measures {} and gives no unit.", part.named(), measure.what.word()),
                format!("Add “unit:” with {}.", units_for(measure.what.value)),
            );
        }
    }
}

/// “cm or m”
pub(super) fn units_for(what: Measured) -> String {
    match what.units() {
        [] => "the things that are counted, such as catches".to_owned(),
        units => units.join(" or "),
    }
}
