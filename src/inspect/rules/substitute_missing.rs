use super::equipment_unknown::slip_of;
use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "substitute-missing",
    severity: Severity::Warning,
    asks: "Every thing has a household substitute, unless every home has it or the session works without.",
    why: "Homes have no equipment store. Without something that can stand in, some children can’t take \
          part.",
    source: "",
    bad: "\
equipment:
  - {need: marker, count: 2, for: [warm_up, challenge]}
  - {need: tape measure, for: [challenge]}
  - {need: parachute, for: [stretch]}
",
    good: "\
equipment:
  - {need: marker, count: 2, for: [warm_up, challenge]}
  - {need: tape measure, for: [challenge]}
  - {need: parachute, for: [stretch], instead: [{thing: bed sheet}]}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    for need in &session.needs {
        let is_covered = need.is_household() || need.optional || !need.substitutes.is_empty();
        if !is_covered && slip_of(need, pack).is_none() {
            notes.find(
                need.place(),
                format!("Nothing in a home can stand in for “{}”.", need.name),
                "Add “instead:” here or in equipment.yaml, or say “optional: true” if the session works without.",
            );
        }
    }
}
