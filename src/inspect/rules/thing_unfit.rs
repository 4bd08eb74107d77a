use crate::finding::Severity;
use crate::inspect::fit::misfits;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
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
        // A thing that says nothing of softness is not held to be hard: the school knows its own.
        let soft = thing.soft.or(need.limits.soft);
        for misfit in misfits(&need.limits, (&thing.mass, &thing.size, soft)) {
            notes.find(
                misfit.asked.unwrap_or(need.place()),
                format!(
                    "The “{}” of equipment.yaml doesn’t suit this session: {}.",
                    need.name, misfit.says
                ),
                "Change the limit here or the figure in equipment.yaml, or ask for another thing.",
            );
        }
    }
}
