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
    bad: "technique: ~\nstretch:\n  - title: Change feet\n    time: 8 min 30 s\n    effort: moderate\n    movements: [hopping]\n    task: extend\n    how: Hop twice on one foot and twice on the other.\n    easier: Step between.\n    harder: Hop backwards.\n",
    good: "technique:\n  - title: Push and hold\n    time: 6 min\n    effort: moderate\n    movements: [hopping, landing]\n    task: refine\n    how: Hop forward once and hold for three seconds.\n    key_points: [Bend your knee, Eyes up]\n    faults: [{see: The knee is stiff, say: Land as if on eggs}]\n    easier: Hop on the spot.\n    harder: Hop to the side.\n",
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
