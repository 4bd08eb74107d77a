use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, PartKind, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "task-missing",
    severity: Severity::Advice,
    asks: "A technique step says what its task does: inform, extend, refine or apply.",
    why: "Seen side by side, the four show whether there is time to get better before it gets harder.",
    source: "Rink: inform, extend, refine, apply",
    bad: "\
technique:
  - title: Push and hold
    time: 6 min
    effort: moderate
    movements: [hopping, landing]
    how: Hop forward once and hold for three seconds.
    key_points: [Bend your knee]
    faults: [{see: The knee is stiff, say: Land as if on eggs}]
    easier: Hop on the spot.
    harder: Hop to the side.
",
    good: "\
technique:
  - title: Push and hold
    time: 6 min
    effort: moderate
    movements: [hopping, landing]
    task: refine
    how: Hop forward once and hold for three seconds.
    key_points: [Bend your knee]
    faults: [{see: The knee is stiff, say: Land as if on eggs}]
    easier: Hop on the spot.
    harder: Hop to the side.
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for step in session.parts_of(PartKind::Technique).filter(|step| step.task.is_none()) {
        notes.find(
            step.title.place,
            format!("The {} doesn’t say what its task does.", step.named()),
            "Add “task:” with inform (first try), extend (harder), refine (better) or apply (use it).",
        );
    }
}
