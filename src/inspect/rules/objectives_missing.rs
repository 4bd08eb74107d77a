use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "objectives-missing",
    severity: Severity::Advice,
    asks: "A session has a learning objective.",
    why: "It tells the next teacher what the parts are for, and what may be changed without losing it.",
    source: "",
    bad: "objectives: ~\n",
    good: "objectives: [Land on one foot with control]\n",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    if session.objectives.is_empty() {
        notes.find(
            session.title.place,
            format!("“{}” has no learning objective.", session.title),
            "Add “objectives:” with one or two, such as “Land on one foot with control”.",
        );
    }
}
