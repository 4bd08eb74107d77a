use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::words::{Effort, Movement};

pub const RULE: Rule = Rule {
    code: "movements-missing",
    severity: Severity::Warning,
    asks: "Every part says what the body does.",
    why: "The safety rules go by it: a throw is asked for its landing zone and a jump for its surface \
          only where the part says that it throws or jumps.",
    source: "",
    bad: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
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
    for part in &session.parts {
        let is_still = part.effort.as_ref().is_some_and(|effort| effort.value == Effort::Rest);
        if part.movements.is_empty() && !is_still {
            notes.find(
                part.title.place,
                format!("The {} doesn’t say what the body does.", part.named()),
                format!("Add “movements:” with a list of these: {}.", Movement::WORDS.join(", ")),
            );
        }
    }
}
