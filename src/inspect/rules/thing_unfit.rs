use crate::finding::Severity;
use crate::inspect::fit::say_fault;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Figures, MisfitFault, Pack, Session, misfits};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "thing-unfit",
    severity: Severity::Warning,
    asks: "The school’s own thing keeps to the limits that the session sets.",
    why: "Some families borrow from school. What equipment.yaml says of the thing must suit what the \
          session asks of it.",
    source: "",
    bad: "\
equipment:
  - {need: marker, count: 2, for: [warm_up, challenge], size: at most 14 cm}
  - {need: tape measure, for: [challenge]}
",
    good: "\
equipment:
  - {need: marker, count: 2, for: [warm_up, challenge], size: at most 25 cm}
  - {need: tape measure, for: [challenge]}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for need in &session.needs {
        let Some(thing) = &need.thing else { continue };
        let misfits = misfits(&need.limits, Figures::of_own(thing, &need.limits));
        // The school knows the qualities of its own things.
        for misfit in misfits.into_iter().filter(|m| !matches!(m.fault, MisfitFault::Lacks(_))) {
            notes.find(
                misfit.asked.unwrap_or(need.place()),
                format!(
                    "The “{}” of equipment.yaml doesn’t suit this session: {}.",
                    need.name,
                    say_fault(&misfit.fault, session.ages.value)
                ),
                "Change the limit here or the figure in equipment.yaml, or ask for another thing.",
            );
        }
    }
}
