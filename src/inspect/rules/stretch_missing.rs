use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, PartKind, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "stretch-missing",
    severity: Severity::Advice,
    asks: "A session has a stretch task for the confident.",
    why: "The child who has it at once would otherwise be done early, and bored.",
    source: "",
    bad: "\
stretch: ~
technique:
  - title: Push and hold
    time: 8 min 30 s
    effort: moderate
    movements: [hopping, landing]
    task: refine
    how: Hop forward once and hold for three seconds.
    key_points: [Bend your knee]
    faults: [{see: The knee is stiff, say: Land as if on eggs}]
    easier: Hop on the spot.
    harder: Hop to the side.
",
    good: "\
stretch:
  - title: Change feet
    time: 2 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    if session.parts_of(PartKind::Stretch).next().is_none() {
        notes.find(
            session.title.place,
            format!("“{}” has no stretch task.", session.title),
            "Add “stretch:” with a harder task for those who want more.",
        );
    }
}
