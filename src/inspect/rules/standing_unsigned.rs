use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::words::State;

pub const RULE: Rule = Rule {
    code: "standing-unsigned",
    severity: Severity::Warning,
    asks: "A session that is reviewed or approved says by whom.",
    why: "Two letters are enough to know whom to ask.",
    source: "",
    bad: "standing: {state: approved}\n",
    good: "standing: {state: approved, by: [AK, JM], on: 2026-03-01}\n",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let Some(standing) = &session.standing else { return };
    let state = &standing.state;
    if matches!(state.value, State::Reviewed | State::Approved) && standing.by.is_empty() {
        notes.find(
            state.place,
            format!("This session is {}, and nobody has signed for it.", state.value.word()),
            "Add “by:” with the initials of who looked, such as [AK].",
        );
    }
}
