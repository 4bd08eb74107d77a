use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "talk-long",
    severity: Severity::Advice,
    asks: "Explaining and setting up take no more than a quarter of the slot.",
    why: "A child at home reads or listens alone. Every minute of it is a minute of standing still.",
    source: "Common practice",
    bad: "\
minutes: 25
stretch:
  - title: Change feet
    time: {explain: 2 min, set_up: 40 s, work: 3 min 50 s}
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
cool_down:
  title: Slow reach
  time: {explain: 2 min 50 s, work: 2 min 10 s}
  effort: light
  movements: [stretching]
  how: Reach up slowly.
",
    good: "\
minutes: 28
stretch:
  - title: Change feet
    time: {explain: 1 min, set_up: 1 min 30 s, work: 10 min}
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
cool_down:
  title: Slow reach
  time: 2 min
  effort: light
  movements: [stretching]
  how: Reach up slowly.
",
    check: Check::Session(check),
};

fn check(session: &Session, plans: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let (talk, slot) = (plans.time.talk(), session.slot.value);
    if talk * 4 > slot {
        notes.find(
            session.slot.place,
            format!("Explaining and setting up take {talk} of {slot}, more than a quarter."),
            "Explain with a picture, set everything out once at the start, or keep one set-up for two parts.",
        );
    }
}
