use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, PartKind, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "key-points-missing",
    severity: Severity::Warning,
    asks: "A technique step has a key point.",
    why: "One thing to think of helps more than none; without it a child repeats what it could do before.",
    source: "Pontes 2023: one cue about the movement was better than none at ages 6 to 9",
    bad: "\
technique:
  - title: Push and hold
    time: 6 min
    effort: moderate
    movements: [hopping, landing]
    task: refine
    how: Hop forward once and hold for three seconds.
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
    for step in session.parts_of(PartKind::Technique).filter(|step| step.key_points.is_empty()) {
        notes.find(
            step.title.place,
            format!("The {} has no key point.", step.named()),
            "Add “key_points:” with one to three, each short enough to call out.",
        );
    }
}
