use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Need, Pack, Session};
use crate::plan::Plans;
use crate::read::nearest;

pub const RULE: Rule = Rule {
    code: "equipment-unknown",
    severity: Severity::Warning,
    asks: "A thing is named as in equipment.yaml, or brings household substitutes of its own.",
    why: "A name that is nearly one of the shared list is mostly a slip, and loses the mass, the size \
          and the household substitutes written there.",
    source: "",
    bad: "\
equipment:
  - {need: markers, count: 2, for: [warm_up, challenge]}
  - {need: tape measure, for: [challenge]}
",
    good: "\
equipment:
  - {need: marker, count: 2, for: [warm_up, challenge]}
  - {need: tape measure, for: [challenge]}
",
    check: Check::SessionInPack(check),
};

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    for need in &session.needs {
        if let Some(near) = slip_of(need, pack) {
            notes.find(
                need.place(),
                format!("“{}” is not in equipment.yaml.", need.name),
                format!("Did you mean “{near}”? Otherwise say with “instead” what a home can use in its place."),
            );
        }
    }
}

/// The thing of the shared list that a need's name is probably a slip of.
pub(super) fn slip_of<'p>(need: &Need, pack: &'p Pack) -> Option<&'p str> {
    if need.thing.is_some() || !need.substitutes.is_empty() {
        return None;
    }
    let names: Vec<&str> = pack.things.keys().map(String::as_str).collect();
    nearest(&need.name, &names)
}
