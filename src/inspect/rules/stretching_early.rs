use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, PartKind, Session};
use crate::plan::Plans;
use crate::read::words::Movement;

pub const RULE: Rule = Rule {
    code: "stretching-early",
    severity: Severity::Advice,
    asks: "The warm-up moves, and leaves held stretches to the cool-down.",
    why: "Moving warm-ups prepare better for running and jumping than held stretches do.",
    source: "Duncan & Woodfield: dynamic work in the warm-up; Merino-Marban 2025: static stretching in the cool-down",
    bad: "\
warm_up:
  title: Reach for the moon
  time: {explain: 30 s, work: 30 s, rest: 30 s, rounds: 4, recover: 30 s}
  effort: moderate
  movements: [stretching]
  how: Stand between both markers and hold each stretch.
  easier: Sit down.
  harder: Stand on your toes.
",
    good: "\
warm_up:
  title: Reach for the moon
  time: {explain: 30 s, work: 30 s, rest: 30 s, rounds: 4, recover: 30 s}
  effort: moderate
  movements: [skipping, stretching]
  how: Skip round both markers and reach up at each.
  easier: Walk.
  harder: Skip backwards.
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for part in session.parts_of(PartKind::WarmUp) {
        if let [only] = part.movements.as_slice()
            && only.value == Movement::Stretching
        {
            notes.find(
                only.place,
                format!("The {} does nothing but stretch.", part.named()),
                "Let it travel, skip or swing first, and move the held stretches to the cool-down.",
            );
        }
    }
}
