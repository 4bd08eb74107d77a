use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "space-unfit",
    severity: Severity::Problem,
    asks: "The floor of every part fits the space that the session asks for.",
    why: "Families choose a session by its space and clear just that. It is tried straight \
          and turned, from corner to corner as well.",
    source: "",
    bad: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  space: {kind: strip, length: 3 m, run_up: 1 m, stopping: 1 m}
",
    good: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  space: {kind: strip, length: 2 m, run_up: 1 m, stopping: 1 m}
",
    check: Check::Session(check),
};

fn check(session: &Session, plans: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let Some(floor) = &plans.space.floor else { return };
    for (part, planned) in session.parts.iter().zip(&plans.space.parts) {
        let (Some(space), Some(planned)) = (&part.space, planned) else { continue };
        if planned.placement.is_some() {
            continue;
        }
        let (width, length) = planned.footprint.size();
        notes.find(
            space.place,
            format!(
                "The {} takes a floor of {length} × {width} with its margins, and the session asks for {} × {}.",
                part.named(),
                floor.length,
                floor.width
            ),
            "Ask for a larger space at the top, or shorten the run-up, the reach or the margin here.",
        );
    }
}
