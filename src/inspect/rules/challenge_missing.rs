use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, PartKind, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "challenge-missing",
    severity: Severity::Advice,
    asks: "A session has a challenge with a mark.",
    why: "A mark of one’s own to beat is a reason to try again, and something to send in.",
    source: "",
    bad: "\
challenge: ~
equipment: [{need: marker, count: 2, for: [warm_up]}]
stretch:
  - title: Change feet
    time: 5 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
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
    if session.parts_of(PartKind::Challenge).next().is_none() {
        notes.find(
            session.title.place,
            format!("“{}” has no challenge.", session.title),
            "Add “challenge:” with something to measure, count, time or judge.",
        );
    }
}
