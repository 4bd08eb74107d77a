use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "landing-zone-missing",
    severity: Severity::Problem,
    asks: "Where something is thrown, kicked or struck, a landing zone is kept clear.",
    why: "A soft ball still breaks a lamp, and a good throw lands where a small brother is standing. Name \
          the zone in things that can be seen.",
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
    throw: {stop_and_collect: Both are thrown before anyone fetches}
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
        let has_zone = part.throw.as_ref().is_some_and(|rules| rules.landing_zone.is_some());
        if let Some(movement) = part.sending().filter(|_| !has_zone) {
            notes.find(
                movement.place,
                format!("The {} has {} and no landing zone.", part.named(), movement.value.word()),
                "Add “throw:” with “landing_zone:”, such as “The rug and one step beyond it, nobody in it”.",
            );
        }
    }
}
