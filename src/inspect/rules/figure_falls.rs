use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::figure::balance::{falls, outward};
use crate::figure::place_body;
use crate::figure::proportions::Proportions;

pub const RULE: Rule = Rule {
    code: "figure-falls",
    severity: Severity::Warning,
    asks: "A figure that is not in the air stays up.",
    why: "A child copies what it sees. Who copies a pose that is out of balance takes a step or falls.",
    source: "Centre of mass by segment masses of Dempster (1955) in Winter, Biomechanics and Motor Control of Human Movement",
    bad: "\
stretch:
  - title: Change feet
    time: 2 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
    figure: {trunk: forward 60, legs: forward 10, knees: straight}
",
    good: "\
stretch:
  - title: Change feet
    time: 2 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
    figure: {trunk: forward 60, knees: straight}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let ages = session.ages.value;
    let years = f64::midpoint(f64::from(ages.youngest), f64::from(ages.oldest));
    let proportions = Proportions::of_age(years);
    for moment in session.parts.iter().flat_map(|part| &part.figure.moments) {
        let (body, _) = place_body(&moment.pose, proportions);
        if falls(&moment.pose, &body) {
            let way = outward(&moment.pose, &body);
            notes.find(
                moment.place,
                format!("This figure would fall {way}: its weight is not over what it stands on."),
                "Leave “legs” open where it stands, so that they find the balance; or change the trunk, or \
                 write “on: air” for a jump.",
            );
        }
    }
}
