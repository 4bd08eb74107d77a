use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, PartKind, Session};
use crate::plan::Plans;
use crate::read::nearest;

pub const RULE: Rule = Rule {
    code: "equipment-for-nothing",
    severity: Severity::Problem,
    asks: "What stands after “for” is a part of the session.",
    why: "Cards and pages show each thing beside the part that uses it. A name that is no part would hide \
          the thing.",
    source: "",
    bad: "\
equipment:
  - {need: marker, count: 2, for: [warmup, challenge]}
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
    let keys = PartKind::ALL.into_iter().filter(|kind| session.parts_of(*kind).next().is_some());
    let titles = session.parts.iter().map(|part| &*part.title.value);
    let mut known: Vec<&str> = keys.map(PartKind::key).collect();
    known.extend(titles);
    for stranger in session.needs.iter().flat_map(|need| &need.strangers) {
        let way_out = match nearest(stranger, &known) {
            Some(near) => format!("Did you mean “{near}”?"),
            None => format!(
                "Write one of: {}. Put a title that has a comma in quotation marks.",
                known.join(", ")
            ),
        };
        notes.find(stranger.place, format!("“{stranger}” is no part of this session."), way_out);
    }
}
