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
    bad: "challenge:\n  - title: Five hops\n    time: 3 min\n    effort: moderate\n    movements: [hopping, landing]\n    how: Start behind the first marker. Measure to your heel with the tape measure.\n    easier: Hop three times.\n    harder: Start from a standstill.\n",
    good: "challenge:\n  - title: Five hops\n    time: 3 min\n    effort: moderate\n    movements: [hopping, landing]\n    how: Start behind the first marker. Measure to your heel with the tape measure.\n    easier: Hop three times.\n    harder: Start from a standstill.\n    measure: {what: distance, unit: cm, attempts: 3, better: more}\n",
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
