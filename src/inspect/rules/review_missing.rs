use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "review-missing",
    severity: Severity::Warning,
    asks: "A session has review questions.",
    why: "They show the teacher what was understood when nobody from school was there to see it.",
    source: "",
    bad: "review: ~\n",
    good: "\
review:
  - {ask: What bends when you land?, answer: The ankle and the knee., kind: recall}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    if session.review.is_empty() {
        notes.find(
            session.title.place,
            format!("“{}” has no review question.", session.title),
            "Add “review:” with two to five questions and their answers.",
        );
    }
}
