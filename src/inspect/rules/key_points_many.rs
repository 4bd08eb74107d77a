use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "key-points-many",
    severity: Severity::Advice,
    asks: "A part has at most three key points.",
    why: "Nobody can think of more while moving. One at a time is best.",
    source: "Common practice",
    bad: "\
technique:
  - title: Push and hold
    time: 6 min
    effort: moderate
    movements: [hopping, landing]
    task: refine
    how: Hop forward once and hold for three seconds.
    key_points: [Eyes up, Arms back, Bend your knee, Toes first]
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
    key_points: [Eyes up, Bend your knee, Toes first]
    faults: [{see: The knee is stiff, say: Land as if on eggs}]
    easier: Hop on the spot.
    harder: Hop to the side.
",
    check: Check::Session(check),
};

const MOST: usize = 3;

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for part in &session.parts {
        if let Some(extra) = part.key_points.get(MOST) {
            notes.find(
                extra.place,
                format!("The {} has {} key points.", part.named(), part.key_points.len()),
                "Keep the three that matter most, or split the step in two.",
            );
        }
    }
}
