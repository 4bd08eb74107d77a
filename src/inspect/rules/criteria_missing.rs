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
    bad: "challenge:\n  - title: Five hops\n    time: 3 min\n    effort: moderate\n    movements: [hopping, landing]\n    how: Start behind the first marker. Measure to your heel with the tape measure.\n    easier: Hop three times.\n    harder: Start from a standstill.\n    measure: {what: criteria, attempts: 3}\n",
    good: "challenge:\n  - title: Five hops\n    time: 3 min\n    effort: moderate\n    movements: [hopping, landing]\n    how: Start behind the first marker. Measure to your heel with the tape measure.\n    easier: Hop three times.\n    harder: Start from a standstill.\n    measure: {what: criteria, attempts: 3, criteria: [I land on a bent knee, I stay still for three seconds]}\n",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for part in &session.parts {
        let Some(measure) = &part.measure else { continue };
        if measure.what.value == Measured::Criteria && measure.criteria.is_empty() {
            notes.find(
                measure.place,
                format!("The {} is judged by criteria, and lists none.", part.named()),
                "Add “criteria:” with a list of what can be seen, such as “I stay still for three seconds”.",
            );
        }
    }
}

