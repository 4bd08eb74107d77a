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
    bad: "cool_down:\n  title: Slow reach\n  time: 4 min\n  effort: light\n  movements: [stretching]\n  adult: nearby\n  how: Reach up slowly.\n",
    good: "adult: {nearby: 4 min, why: To watch the cool-down}\ncool_down:\n  title: Slow reach\n  time: 4 min\n  effort: light\n  movements: [stretching]\n  adult: nearby\n  how: Reach up slowly.\n",
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
