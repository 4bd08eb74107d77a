use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, PartKind, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "technique-missing",
    severity: Severity::Warning,
    asks: "A session teaches something: it has at least one technique step.",
    why: "Without one it keeps children busy, and nobody moves better at the end than at the beginning.",
    source: "",
    bad: "\
technique: ~
stretch:
  - title: Change feet
    time: 8 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
",
    good: "\
technique:
  - title: Push and hold
    time: 6 min
    effort: moderate
    movements: [hopping, landing]
    task: refine
    how: Hop forward once and hold for three seconds.
    key_points: [Bend your knee, Eyes up]
    faults: [{see: The knee is stiff, say: Land as if on eggs}]
    easier: Hop on the spot.
    harder: Hop to the side.
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    if session.parts_of(PartKind::Technique).next().is_none() {
        notes.find(
            session.title.place,
            format!("“{}” has no technique step.", session.title),
            "Add “technique:” with one to four steps, each with its key points.",
        );
    }
}
