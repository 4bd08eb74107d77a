use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::words::Movement;

pub const RULE: Rule = Rule {
    code: "climbing-unwatched",
    severity: Severity::Warning,
    asks: "Where a child climbs, an adult is nearby or helping.",
    why: "Furniture tips and children fall. Whether climbing is allowed at home at all is for the school’s \
          risk assessment and local rules.",
    source: "Common practice",
    bad: "\
stretch:
  - title: Up and down
    time: 2 min 30 s
    effort: moderate
    movements: [climbing]
    task: extend
    how: Step up onto the lowest stair and down again.
    easier: Hold the rail.
    harder: Change the leading foot.
",
    good: "\
adult: {nearby: 3 min, why: To stand by at the stair}
stretch:
  - title: Up and down
    time: 2 min 30 s
    effort: moderate
    movements: [climbing]
    adult: nearby
    task: extend
    how: Step up onto the lowest stair and down again.
    easier: Hold the rail.
    harder: Change the leading foot.
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for part in session.parts.iter().filter(|part| part.adult.is_none()) {
        let climbing = part.movements.iter().find(|found| found.value == Movement::Climbing);
        if let Some(movement) = climbing {
            notes.find(
                movement.place,
                format!("The {} has climbing, and no adult with it.", part.named()),
                "Add “adult: nearby” or “adult: helping” to the part, or keep both feet on the floor.",
            );
        }
    }
}
