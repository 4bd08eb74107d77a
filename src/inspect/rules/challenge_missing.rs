use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, PartKind, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "challenge-missing",
    severity: Severity::Advice,
    asks: "A session has a challenge with a mark.",
    why: "A mark of one’s own to beat is what many children come back for, and what can be sent in.",
    source: "",
    bad: "challenge: ~\nequipment: [{need: marker, count: 2, for: [warm_up]}]\nstretch:\n  - title: Change feet\n    time: 5 min 30 s\n    effort: moderate\n    movements: [hopping]\n    task: extend\n    how: Hop twice on one foot and twice on the other.\n    easier: Step between.\n    harder: Hop backwards.\n",
    good: "challenge:\n  - title: Five hops\n    time: 3 min\n    effort: moderate\n    movements: [hopping, landing]\n    how: Start behind the first marker. Measure to your heel with the tape measure.\n    easier: Hop three times.\n    harder: Start from a standstill.\n    measure: {what: distance, unit: cm, attempts: 3, better: more}\n",
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
