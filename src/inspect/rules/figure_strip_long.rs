use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "figure-strip-long",
    severity: Severity::Warning,
    asks: "A strip has five pictures at most.",
    why: "More than five are too small to see on a card, and too many to follow.",
    source: "Common practice",
    bad: "\
stretch:
  - title: Change feet
    time: 2 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
    figure: [hop, hop landing, hop, hop landing, hop, hop landing]
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
    figure: [hop, hop landing]
",
    check: Check::Session(check),
};

/// Pictures of a strip at most.
const MOST: usize = 5;

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for part in &session.parts {
        if let Some(moment) = part.figure.moments.get(MOST) {
            notes.find(
                moment.place,
                format!("The figure of the {} has {} pictures.", part.named(), part.figure.moments.len()),
                "Keep two to five: the moments that the key points name.",
            );
        }
    }
}
