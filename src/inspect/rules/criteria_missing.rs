use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::words::Measured;

pub const RULE: Rule = Rule {
    code: "criteria-missing",
    severity: Severity::Problem,
    asks: "A challenge that is judged says by what.",
    why: "A child can only judge a movement by things that can be seen: three or four, each plainly there or \
          not.",
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
    measure: {what: criteria, attempts: 3}
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
    measure: {what: criteria, attempts: 3, criteria: [I land on a bent knee, I stay still for three seconds]}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for (part, measure) in session.measured() {
        if measure.what.value == Measured::Criteria && measure.criteria.is_empty() {
            notes.find(
                measure.place,
                format!("The {} is judged by criteria, and lists none.", part.named()),
                "Add “criteria:” with a list of what can be seen, such as “I stay still for three seconds”.",
            );
        }
    }
}
