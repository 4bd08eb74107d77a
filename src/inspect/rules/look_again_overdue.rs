use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "look-again-overdue",
    severity: Severity::Warning,
    asks: "A session is looked at again by the day it names.",
    why: "Links die, rules change, and a year of marks shows what was too hard.",
    source: "",
    bad: "standing: {state: reviewed, by: [AK], on: 2025-03-01, look_again: 2026-03-01}\n",
    good: "standing: {state: reviewed, by: [AK], on: 2026-03-01, look_again: 2027-03-01}\n",
    check: Check::SessionInPack(check),
};

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    let due = session.standing.as_ref().and_then(|standing| standing.look_again.as_ref());
    if let Some(due) = due.filter(|due| due.value < pack.today && !session.is_retired()) {
        notes.find(
            due.place,
            format!("This session was to be looked at again by {}.", due.value.in_words()),
            "Look it through, then write the new date under “on:” and “look_again:”, or retire it.",
        );
    }
}
