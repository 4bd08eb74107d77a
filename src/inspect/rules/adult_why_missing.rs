use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "adult-why-missing",
    severity: Severity::Advice,
    asks: "Where a session asks for an adult, it says what for.",
    why: "Someone who knows that they are to watch the landings watches the landings.",
    source: "",
    bad: "adult: {nearby: 20 min}\n",
    good: "adult: {nearby: 20 min, why: To see that the landing place stays clear}\n",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    if let Some(adult) = session.adult.as_ref().filter(|adult| adult.why.is_none()) {
        notes.find(
            adult.place,
            "An adult is asked for, and not told what for.",
            "Add “why:”, such as “To see that the landing place stays clear”.",
        );
    }
}
