use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "rest-pointless",
    severity: Severity::Advice,
    asks: "A rest is given only where there is more than one round.",
    why: "Rest lies *between* rounds. With a single round it takes no time and nobody rests; getting \
          the breath back at the end is “recover”.",
    source: "",
    bad: "\
stretch:
  - title: Change feet
    time: {work: 2 min 30 s, rest: 30 s}
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
",
    good: "\
stretch:
  - title: Change feet
    time: {work: 2 min, recover: 30 s}
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for part in &session.parts {
        let Some(time) = &part.time else { continue };
        if time.rounds == 1 && !time.rest.is_zero() {
            let (named, rest) = (part.named(), time.rest);
            notes.find(
                time.place,
                format!("The {named} has one round, so its rest of {rest} is never taken."),
                format!("Write “recover: {rest}” if it comes at the end, or say how many rounds there are."),
            );
        }
    }
}
