use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Need, Pack, Session, Substitute};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "substitute-unmeasured",
    severity: Severity::Advice,
    asks: "Where a mass or size is asked for, the household substitutes give theirs.",
    why: "A limit can only be kept if the parent knows what the thing in the cupboard weighs. A range is \
          best, since no two pairs of socks are alike.",
    source: "",
    bad: "\
equipment:
  - {need: marker, count: 2, for: [warm_up, challenge], mass: at most 120 g, instead: [{thing: slipper}]}
  - {need: tape measure, for: [challenge]}
",
    good: "\
equipment:
  - {need: marker, count: 2, for: [warm_up, challenge], mass: at most 250 g, instead: [{thing: slipper, mass: 80-200 g}]}
  - {need: tape measure, for: [challenge]}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for need in &session.needs {
        for substitute in &need.substitutes {
            let Some(what) = what_is_unsaid(need, substitute) else { continue };
            let is_own = substitute.thing.place.file == session.file;
            notes.find(
                if is_own { substitute.thing.place } else { need.place() },
                format!("“{}” is asked for with a limit, but the {what} of “{}” is not said.", need.name, substitute.thing),
                "Weigh or measure one and write a range, such as “mass: 40-100 g” or “size: 8-14 cm”.",
            );
        }
    }
}

fn what_is_unsaid(need: &Need, substitute: &Substitute) -> Option<&'static str> {
    let is_mass_open = need.limits.mass.is_some() && substitute.mass.is_none();
    let is_size_open = need.limits.size.is_some() && substitute.size.is_none();
    match (is_mass_open, is_size_open) {
        (true, true) => Some("mass and size"),
        (true, false) => Some("mass"),
        (false, true) => Some("size"),
        (false, false) => None,
    }
}
