use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, PartKind, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "measure-missing",
    severity: Severity::Warning,
    asks: "A challenge says what is measured.",
    why: "The record sheet is drawn from it: what to write, in which unit, and how many attempts.",
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
    for part in session.parts_of(PartKind::Challenge).filter(|part| part.measure.is_none()) {
        notes.find(
            part.title.place,
            format!("The {} doesn’t say what is measured.", part.named()),
            "Add “measure:”, such as {what: distance, unit: cm, attempts: 3, better: more}.",
        );
    }
}
