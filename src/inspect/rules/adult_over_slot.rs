use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "adult-over-slot",
    severity: Severity::Warning,
    asks: "An adult is asked for no longer than the slot.",
    why: "More minutes than the session has are a slip, and put families off.",
    source: "",
    bad: "adult: {nearby: 40 min, why: To see that the landing place stays clear}\n",
    good: "adult: {nearby: 20 min, why: To see that the landing place stays clear}\n",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let Some(adult) = &session.adult else { return };
    for time in adult.nearby.iter().chain(&adult.helping) {
        if time.value > session.slot.value {
            notes.find(
                time.place,
                format!("An adult is asked for {time}, and the slot is {}.", session.slot),
                "Write the minutes of this session in which an adult is needed.",
            );
        }
    }
}
