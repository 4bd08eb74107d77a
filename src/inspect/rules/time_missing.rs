use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::{Plans, total_of};

pub const RULE: Rule = Rule {
    code: "time-missing",
    severity: Severity::Problem,
    asks: "Every part has a time.",
    why: "Nobody in the room keeps an eye on the clock. Without a time a child does a part for ten \
          seconds or for ten minutes, and the slot can’t be added up.",
    source: "",
    bad: "\
cool_down:
  title: Slow reach
  effort: light
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
    for part in &session.parts {
        let is_empty = part.time.as_ref().is_none_or(|time| total_of(time).is_zero());
        if is_empty {
            notes.find(
                part.time.as_ref().map_or(part.title.place, |time| time.place),
                format!("The {} has no time.", part.named()),
                "Add one, such as “time: 3 min” or “time: {work: 30 s, rest: 30 s, rounds: 4}”.",
            );
        }
    }
}
