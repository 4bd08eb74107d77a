use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::figure::Caption;

pub const RULE: Rule = Rule {
    code: "figure-point-unknown",
    severity: Severity::Problem,
    asks: "A picture shows a key point that the part has.",
    why: "The number under the picture leads nowhere.",
    source: "",
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
    figure: {pose: hop landing, point: 1}
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
    figure: {pose: hop landing, says: Sink}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for part in &session.parts {
        for moment in &part.figure.moments {
            let Some(Caption::Point(number)) = &moment.caption else { continue };
            let count = part.key_points.len();
            if !(1..=count).contains(&(number.value as usize)) {
                notes.find(
                    number.place,
                    format!("The {} has {count} key points, but this is for number {}.", part.named(), number.value),
                    "Count them from 1 as they stand under “key_points:”, or write “says:” with words of its own.",
                );
            }
        }
    }
}
