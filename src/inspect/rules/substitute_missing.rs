use super::equipment_unknown::slip_of;
use crate::finding::Severity;
use crate::inspect::fit::say_fault;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Need, Pack, Session};
use crate::plan::Plans;
use crate::quantity::Ages;

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
    check: Check::SessionInPack(check),
};

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    for need in &session.needs {
        let is_covered = need.is_household() || need.optional || !need.substitutes.is_empty();
        if !is_covered && slip_of(need, pack).is_none() {
            notes.find(
                need.place(),
                format!(
                    "Nothing in a home can stand in for “{}”{}.",
                    need.name,
                    why_refused(need, session.ages.value)
                ),
                "Add “instead:” here or in equipment.yaml, or say “optional: true” if the session works without.",
            );
        }
    }
}

/// “: “slipper” is refused (it can be too large: …)”
fn why_refused(need: &Need, ages: Ages) -> String {
    let refused: Vec<String> = need
        .refused
        .iter()
        .map(|refused| {
            let reasons = refused.reasons.iter().map(|misfit| say_fault(&misfit.fault, ages));
            format!("“{}” is refused ({})", refused.thing, reasons.collect::<Vec<_>>().join("; "))
        })
        .collect();
    if refused.is_empty() { String::new() } else { format!(": {}", refused.join(", ")) }
}
