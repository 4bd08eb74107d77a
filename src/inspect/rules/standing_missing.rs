use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "standing-missing",
    severity: Severity::Advice,
    asks: "A session says where it stands: draft, reviewed, approved or retired.",
    why: "A colleague who finds it next year knows whether somebody has looked it through.",
    source: "",
    bad: "standing: ~\n",
    good: "standing: {state: draft}\n",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    if session.standing.is_none() {
        notes.find(
            session.title.place,
            format!("“{}” doesn’t say where it stands.", session.title),
            "Add “standing:”, such as {state: draft}.",
        );
    }
}
