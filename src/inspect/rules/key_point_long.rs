use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::prose::plain_line;

pub const RULE: Rule = Rule {
    code: "key-point-long",
    severity: Severity::Warning,
    asks: "A key point has at most six words.",
    why: "It is called out while the child moves. What can’t be said in one breath belongs into “how”.",
    source: "Common practice",
    bad: "\
technique:
  - title: Push and hold
    time: 6 min
    effort: moderate
    movements: [hopping, landing]
    task: refine
    how: Hop forward once and hold for three seconds.
    key_points: [Bend your knee as soon as your toes touch]
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
    key_points: [Toes touch, knee bends]
    faults: [{see: The knee is stiff, say: Land as if on eggs}]
    easier: Hop on the spot.
    harder: Hop to the side.
",
    check: Check::Session(check),
};

const MOST_WORDS: usize = 6;

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for point in session.parts.iter().flat_map(|part| &part.key_points) {
        let words = plain_line(point).split_whitespace().count();
        if words > MOST_WORDS {
            notes.find(
                point.place,
                format!("This key point has {words} words, too many to call out."),
                format!("Say it in at most {MOST_WORDS}, and leave the rest to “how”."),
            );
        }
    }
}
