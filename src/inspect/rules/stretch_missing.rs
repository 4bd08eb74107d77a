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
    bad: "stretch: ~\ntechnique:\n  - title: Push and hold\n    time: 8 min 30 s\n    effort: moderate\n    movements: [hopping, landing]\n    task: refine\n    how: Hop forward once and hold for three seconds.\n    key_points: [Bend your knee]\n    faults: [{see: The knee is stiff, say: Land as if on eggs}]\n    easier: Hop on the spot.\n    harder: Hop to the side.\n",
    good: "stretch:\n  - title: Change feet\n    time: 2 min 30 s\n    effort: moderate\n    movements: [hopping]\n    task: extend\n    how: Hop twice on one foot and twice on the other.\n    easier: Step between.\n    harder: Hop backwards.\n",
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
