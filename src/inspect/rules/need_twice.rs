use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "need-twice",
    severity: Severity::Warning,
    asks: "A session lists each thing once.",
    why: "Two lines for one thing leave open whether they are the same two markers or two more.",
    source: "",
    bad: "\
equipment:
  - {need: marker, count: 2, for: [warm_up]}
  - {need: marker, count: 2, for: [challenge]}
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
    for (index, need) in session.needs.iter().enumerate() {
        if session.needs[..index].iter().any(|earlier| earlier.name.value == need.name.value) {
            notes.find(
                need.place(),
                format!("“{}” is listed twice.", need.name),
                "Make one entry of them: the most that is needed at one moment, “for” all the parts that use it.",
            );
        }
    }
}
