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
    bad: "\
technique:
  - title: Push and hold
    time: 6 min
    effort: moderate
    movements: [hopping, landing]
    task: refine
    how: Hop forward once and hold for three seconds.
    key_points: [Bend your knee]
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
    for step in session.parts_of(PartKind::Technique).filter(|step| step.faults.is_empty()) {
        notes.find(
            step.title.place,
            format!("The {} names no common fault.", step.named()),
            "Add “faults:” with what is seen and what to say: {see: The knee is stiff, say: Land as if on eggs}.",
        );
    }
}
