use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "collect-rule-missing",
    severity: Severity::Problem,
    asks: "Where something is thrown, kicked or struck, it is said when to stop and collect.",
    why: "Whoever runs to fetch runs into what is still flying. One rule settles it: everything is \
          sent, a call, then all fetch together.",
    source: "",
    bad: "\
stretch:
  - title: Hop and toss
    time: 2 min 30 s
    effort: moderate
    movements: [throwing, hopping]
    task: extend
    how: Hop twice, then toss the marker ahead of you.
    easier: Step.
    harder: Use your other hand.
    throw: {landing_zone: The free half of the rug}
",
    good: "\
stretch:
  - title: Hop and toss
    time: 2 min 30 s
    effort: moderate
    movements: [throwing, hopping]
    task: extend
    how: Hop twice, then toss the marker ahead of you.
    easier: Step.
    harder: Use your other hand.
    throw: {landing_zone: The free half of the rug, stop_and_collect: Both are thrown before anyone fetches}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for part in &session.parts {
        let has_rule = part.throw.as_ref().is_some_and(|rules| rules.stop_and_collect.is_some());
        if let Some(movement) = part.sending().filter(|_| !has_rule) {
            notes.find(
                movement.place,
                format!("The {} has {} and no stop-and-collect rule.", part.named(), movement.value.word()),
                "Add “throw:” with “stop_and_collect:”, such as “Send them all, call out, then walk to fetch”.",
            );
        }
    }
}
