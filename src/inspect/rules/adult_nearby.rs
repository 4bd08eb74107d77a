use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::words::AdultHelp;

pub const RULE: Rule = Rule {
    code: "adult-nearby",
    severity: Severity::Advice,
    asks: "Where a part wants an adult nearby, the session says for how long.",
    why: "A parent who has to be in the room wants to know it before the session begins.",
    source: "",
    bad: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  adult: nearby
  how: Reach up slowly.
",
    good: "\
adult: {nearby: 4 min, why: To watch the cool-down}
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  adult: nearby
  how: Reach up slowly.
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let is_said = session.adult.as_ref().is_some_and(|a| a.nearby.is_some() || a.helping.is_some());
    let asking = |part: &&crate::pack::Part| {
        part.adult.as_ref().is_some_and(|help| help.value == AdultHelp::Nearby)
    };
    if let Some(part) = session.parts.iter().find(asking).filter(|_| !is_said) {
        notes.find(
            part.adult.as_ref().map_or(part.title.place, |help| help.place),
            format!("The {} wants an adult nearby, and the session doesn’t say so.", part.named()),
            "Add “adult:” to the session, such as {nearby: 4 min, why: To watch the landing}.",
        );
    }
}
