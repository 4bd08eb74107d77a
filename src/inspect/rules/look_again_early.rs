use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "look-again-early",
    severity: Severity::Warning,
    asks: "The day to look again comes after the day it was last looked at.",
    why: "The other way round is a slip, mostly last year’s date.",
    source: "",
    bad: "standing: {state: retired, on: 2026-03-01, look_again: 2025-09-01}\n",
    good: "standing: {state: reviewed, by: [AK], on: 2026-03-01, look_again: 2027-03-01}\n",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let Some(standing) = &session.standing else { return };
    let (Some(on), Some(again)) = (&standing.on, &standing.look_again) else { return };
    if again.value <= on.value {
        notes.find(
            again.place,
            format!(
                "Looking again on {} comes before {}.",
                again.value.in_words(),
                on.value.in_words()
            ),
            "Write a later day under “look_again:”.",
        );
    }
}
