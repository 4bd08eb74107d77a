use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::words::QuestionKind;

pub const RULE: Rule = Rule {
    code: "question-kinds-few",
    severity: Severity::Advice,
    asks: "Review questions say their kind, and three or more are not all of one kind.",
    why: "Recall alone shows what was read; explaining, comparing and applying show what was understood.",
    source: "Common practice",
    bad: "\
review:
  - {ask: What bends when you land?, answer: The ankle and the knee., kind: recall}
  - {ask: What touches first?, answer: The toes., kind: recall}
  - {ask: Where do you look?, answer: Ahead., kind: recall}
",
    good: "\
review:
  - {ask: What bends when you land?, answer: The ankle and the knee., kind: recall}
  - {ask: Why do they bend?, answer: To slow down over a longer time., kind: explain}
  - {ask: Where else do you land like this?, answer: After a skip or a catch., kind: apply}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let Some(first) = session.review.first() else { return };
    let offer = QuestionKind::WORDS.join(", ");
    for question in session.review.iter().filter(|question| question.kind.is_none()) {
        notes.find(
            question.ask.place,
            "This review question doesn’t say its kind.",
            format!("Add “kind:” with one of: {offer}."),
        );
    }
    let kinds: Vec<QuestionKind> =
        session.review.iter().filter_map(|q| q.kind.as_ref()).map(|kind| kind.value).collect();
    if let [one, rest @ ..] = kinds.as_slice()
        && rest.len() >= 2
        && rest.iter().all(|kind| kind == one)
    {
        notes.find(
            first.kind.as_ref().map_or(first.ask.place, |kind| kind.place),
            format!("All {} review questions are of the kind “{}”.", kinds.len(), one.word()),
            format!("Turn one of them into another kind: {offer}."),
        );
    }
}
