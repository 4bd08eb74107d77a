use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::quantity::Duration;

pub const RULE: Rule = Rule {
    code: "slot-long",
    severity: Severity::Warning,
    asks: "The slot is not too long for the age.",
    why: "At home nobody carries a child along for a whole lesson. Usual lengths are up to 20 min to the \
          age of 7, 30 min to 11, 45 min to 16 and 60 min after that, by the oldest child the session \
          is for.",
    source: "Common practice",
    bad: "\
ages: 5-7
minutes: 30
stretch:
  - title: Change feet
    time: 12 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
",
    good: "\
ages: 5-7
minutes: 20
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let longest = longest_slot(session.ages.oldest);
    if session.slot.value > longest {
        notes.find(
            session.slot.place,
            format!(
                "The slot is {}; for ages {} up to {longest} is usual.",
                session.slot, session.ages
            ),
            "Make two sessions of it, or name older ages.",
        );
    }
}

const fn longest_slot(oldest: u8) -> Duration {
    Duration::from_minutes(match oldest {
        0..=7 => 20,
        8..=11 => 30,
        12..=16 => 45,
        _ => 60,
    })
}
