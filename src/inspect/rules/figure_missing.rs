use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Part, PartKind, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "figure-missing",
    severity: Severity::Advice,
    asks: "In a session with figures, every technique step, warm-up and stretch task has one.",
    why: "A child at home has no one to copy. Said once a session is half drawn: who draws nothing is not asked to.",
    source: "Common practice",
    bad: "\
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
    figure: hop landing
stretch:
  - title: Change feet
    time: 2 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
    figure: hop
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
    figure: hop landing
stretch:
  - title: Change feet
    time: 2 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
    figure: hop
warm_up:
  title: Stone and stream
  time: {explain: 30 s, work: 30 s, rest: 30 s, rounds: 4, recover: 30 s}
  effort: vigorous
  movements: [running, hopping]
  how: Run on the spot until you hear “stone”, then stand still on one foot. Jog round both markers.
  easier: Put your other toes on the floor.
  harder: Close one eye.
  figure: running
",
    check: Check::Session(check),
};

fn wants_figure(part: &Part) -> bool {
    matches!(part.kind, PartKind::WarmUp | PartKind::Technique | PartKind::Stretch)
}

fn is_shown(part: &Part) -> bool {
    !part.figure.moments.is_empty() || !part.pictures.is_empty()
}

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let wanted: Vec<&Part> = session.parts.iter().filter(|part| wants_figure(part)).collect();
    let drawn = wanted.iter().filter(|part| !part.figure.moments.is_empty()).count();
    if drawn * 2 < wanted.len() || drawn == 0 {
        return;
    }
    for part in wanted.into_iter().filter(|part| !is_shown(part)) {
        notes.find(
            part.title.place,
            format!("The {} has no picture.", part.named()),
            "Add “figure:” with the name of a pose, such as “figure: ready stance”.",
        );
    }
}
