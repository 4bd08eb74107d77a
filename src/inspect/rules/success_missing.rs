use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "success-missing",
    severity: Severity::Problem,
    asks: "A session has success criteria.",
    why: "They are how a child alone knows that it has worked, and what the child reports back.",
    source: "",
    bad: "success: ~\n",
    good: "\
success:
  - I land on a bent knee and stay still
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    if session.success.is_empty() {
        notes.find(
            session.title.place,
            format!("“{}” has no success criteria.", session.title),
            "Add “success:” with one to three sentences that begin with “I”.",
        );
    }
}
