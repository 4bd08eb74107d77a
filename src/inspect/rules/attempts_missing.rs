use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "attempts-missing",
    severity: Severity::Problem,
    asks: "A challenge says how many attempts count.",
    why: "The record sheet has one box for each. It is usual to allow one or two for practice and to count \
          three.",
    source: "Common practice",
    bad: "\
challenge:
  - title: Five hops
    time: 3 min
    effort: moderate
    movements: [hopping, landing]
    how: Start behind the first marker. Measure to your heel with the tape measure.
    easier: Hop three times.
    harder: Start from a standstill.
    measure: {what: distance, unit: cm, better: more}
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
        let attempts = measure.attempts.as_ref();
        if attempts.is_none_or(|attempts| attempts.value == 0) {
            notes.find(
                attempts.map_or(measure.place, |attempts| attempts.place),
                format!("The {} doesn’t say how many attempts count.", part.named()),
                "Add “attempts:”, such as 3.",
            );
        }
    }
}
