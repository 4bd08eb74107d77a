use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "count-zero",
    severity: Severity::Problem,
    asks: "A thing that is needed is needed at least once.",
    why: "“0 markers” on the list of things to gather leaves a family guessing.",
    source: "",
    bad: "\
equipment:
  - {need: marker, count: 0, for: [warm_up, challenge]}
  - {need: tape measure, for: [challenge]}
",
    good: "\
equipment:
  - {need: marker, count: 2, for: [warm_up, challenge]}
  - {need: tape measure, for: [challenge]}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for need in session.needs.iter().filter(|need| need.count == 0) {
        notes.find(
            need.place(),
            format!("“{}” is listed with a count of 0.", need.name),
            "Write how many are needed, or take it off the list.",
        );
    }
}
