use crate::finding::Severity;
use crate::inspect::fit::say_fault;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::{Figures, Plans, misfits};

pub const RULE: Rule = Rule {
    code: "substitute-unfit",
    severity: Severity::Problem,
    asks: "A household substitute keeps to the mass, the size and the softness asked for.",
    why: "The limits are there so that nobody is hurt and the task still works: a tin is not a beanbag.",
    source: "",
    bad: "\
equipment:
  - {need: marker, count: 2, for: [warm_up, challenge], mass: at most 60 g}
  - {need: tape measure, for: [challenge]}
",
    good: "\
equipment:
  - {need: marker, count: 2, for: [warm_up, challenge], mass: at most 120 g}
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
