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
    bad: "minutes: 28\nstretch:\n  - title: Change feet\n    time: {explain: 5 min, set_up: 1 min 30 s, work: 6 min}\n    effort: moderate\n    movements: [hopping]\n    task: extend\n    how: Hop twice on one foot and twice on the other.\n    easier: Step between.\n    harder: Hop backwards.\ncool_down:\n  title: Slow reach\n  time: 2 min\n  effort: light\n  movements: [stretching]\n  how: Reach up slowly.\n",
    good: "minutes: 28\nstretch:\n  - title: Change feet\n    time: {explain: 1 min, set_up: 1 min 30 s, work: 10 min}\n    effort: moderate\n    movements: [hopping]\n    task: extend\n    how: Hop twice on one foot and twice on the other.\n    easier: Step between.\n    harder: Hop backwards.\ncool_down:\n  title: Slow reach\n  time: 2 min\n  effort: light\n  movements: [stretching]\n  how: Reach up slowly.\n",
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
