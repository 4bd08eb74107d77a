use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, PartKind, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "faults-missing",
    severity: Severity::Advice,
    asks: "A technique step names a common fault and what to say.",
    why: "A parent who is no teacher sees that something looks wrong. Your words turn that into help.",
    source: "",
    bad: "technique:\n  - title: Push and hold\n    time: 6 min\n    effort: moderate\n    movements: [hopping, landing]\n    task: refine\n    how: Hop forward once and hold for three seconds.\n    key_points: [Bend your knee]\n    easier: Hop on the spot.\n    harder: Hop to the side.\n",
    good: "technique:\n  - title: Push and hold\n    time: 6 min\n    effort: moderate\n    movements: [hopping, landing]\n    task: refine\n    how: Hop forward once and hold for three seconds.\n    key_points: [Bend your knee]\n    faults: [{see: The knee is stiff, say: Land as if on eggs}]\n    easier: Hop on the spot.\n    harder: Hop to the side.\n",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for step in session.parts_of(PartKind::Technique).filter(|step| step.faults.is_empty()) {
        notes.find(
            step.title.place,
            format!("The {} names no common fault.", step.named()),
            "Add “faults:” with what is seen and what to say: {see: The knee is stiff, say: Land as if on eggs}.",
        );
    }
}
