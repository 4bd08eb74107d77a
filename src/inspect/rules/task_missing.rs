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
    bad: "technique:\n  - title: Push and hold\n    time: 6 min\n    effort: moderate\n    movements: [hopping, landing]\n    how: Hop forward once and hold for three seconds.\n    key_points: [Bend your knee]\n    faults: [{see: The knee is stiff, say: Land as if on eggs}]\n    easier: Hop on the spot.\n    harder: Hop to the side.\n",
    good: "technique:\n  - title: Push and hold\n    time: 6 min\n    effort: moderate\n    movements: [hopping, landing]\n    task: refine\n    how: Hop forward once and hold for three seconds.\n    key_points: [Bend your knee]\n    faults: [{see: The knee is stiff, say: Land as if on eggs}]\n    easier: Hop on the spot.\n    harder: Hop to the side.\n",
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
