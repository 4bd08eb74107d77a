use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::inspect::wording::Names;
use crate::pack::{Need, Pack, Part, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "equipment-unused",
    severity: Severity::Warning,
    asks: "Everything on the equipment list is used in a part.",
    why: "Nobody should search the house for a thing that then lies about, or wonder which part they have \
          missed.",
    source: "",
    bad: "\
equipment:
  - {need: marker, count: 2, for: [warm_up, challenge]}
  - {need: tape measure, for: [challenge]}
  - {need: hand weight, mass: at most 500 g}
",
    good: "\
equipment:
  - {need: marker, count: 2, for: [warm_up, challenge]}
  - {need: tape measure, for: [challenge]}
  - {need: hand weight, mass: at most 500 g, for: [stretch]}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for need in &session.needs {
        let has_users = !need.parts.is_empty() || !need.strangers.is_empty();
        if !has_users && !is_named(need, session) {
            notes.find(
                need.place(),
                format!("“{}” is listed, and no part uses it.", need.name),
                "Say which parts use it, such as “for: [warm_up, challenge]”, or take it off the list.",
            );
        }
    }
}

fn is_named(need: &Need, session: &Session) -> bool {
    let mut names = Names::default();
    names.add(&need.name, "found");
    names.add(&need.plural, "found");
    let mut texts = session.parts.iter().flat_map(Part::texts);
    texts.any(|text| !names.keys_in(&text).is_empty())
}
