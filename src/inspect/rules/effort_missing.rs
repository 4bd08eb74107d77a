use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "effort-missing",
    severity: Severity::Warning,
    asks: "Every part says how hard it should feel.",
    why: "A child alone can’t see how hard the others are working. The effort also tells whether a part \
          needs a rest, and how much of the slot is active.",
    source: "",
    bad: "\
cool_down:
  title: Slow reach
  time: 4 min
  movements: [stretching]
  how: Reach up slowly.
",
    good: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up slowly.
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for part in session.parts.iter().filter(|part| part.effort.is_none()) {
        notes.find(
            part.title.place,
            format!("The {} doesn’t say how hard it should feel.", part.named()),
            "Add “effort:” with rest, light, moderate or vigorous.",
        );
    }
}
