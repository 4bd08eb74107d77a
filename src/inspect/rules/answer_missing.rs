use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "answer-missing",
    severity: Severity::Warning,
    asks: "Every review question has an answer.",
    why: "The parent who asks it may not know. For a question without one right answer, say what a good \
          answer has in it.",
    source: "",
    bad: "\
review:
  - {ask: What bends when you land?, kind: recall}
",
    good: "\
review:
  - {ask: What bends when you land?, answer: The ankle and the knee., kind: recall}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for question in session.review.iter().filter(|question| question.answer.is_none()) {
        notes.find(
            question.ask.place,
            "This review question has no answer.",
            "Add “answer:”; for an open question begin with “Any honest answer, such as …”.",
        );
    }
}
