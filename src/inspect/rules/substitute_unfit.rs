use crate::finding::Severity;
use crate::inspect::fit::say_fault;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Figures, Pack, Session, misfits};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "substitute-unfit",
    severity: Severity::Problem,
    asks: "A substitute that a session names itself keeps to the limits that it sets.",
    why: "The limits are there so that nobody is hurt and the task still works: a tin is not a beanbag. \
          What the shared list names and doesn’t suit is left out of this session by itself.",
    source: "",
    bad: "\
equipment:
  - need: marker
    count: 2
    for: [warm_up, challenge]
    mass: at most 60 g
    instead: [{thing: food tin, mass: 440-500 g, size: 10-12 cm}]
  - {need: tape measure, for: [challenge]}
",
    good: "\
equipment:
  - need: marker
    count: 2
    for: [warm_up, challenge]
    mass: at most 60 g
    instead: [{thing: paper cup, mass: 3-12 g, size: 8-12 cm}]
  - {need: tape measure, for: [challenge]}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for need in &session.needs {
        for substitute in &need.substitutes {
            for misfit in misfits(&need.limits, Figures::of(substitute)) {
                let is_own = substitute.thing.place.file == session.file;
                let own = misfit.found.unwrap_or(substitute.thing.place);
                notes.find(
                    if is_own { own } else { misfit.asked.unwrap_or(need.place()) },
                    format!(
                        "“{}” can’t stand in for “{}”: {}.",
                        substitute.thing,
                        need.name,
                        say_fault(&misfit.fault, session.ages.value)
                    ),
                    "Change the limit if it is too strict, or name another substitute under “instead”.",
                );
            }
        }
    }
}
