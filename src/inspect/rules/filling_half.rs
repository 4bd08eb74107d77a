use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "filling-half",
    severity: Severity::Problem,
    asks: "A thing that is filled says with what, and how much it holds.",
    why: "The mass of a filled bottle follows from its volume and what is in it. One without \
          the other weighs nothing.",
    source: "",
    bad: "\
equipment:
  - {need: marker, count: 2, for: [warm_up, challenge]}
  - need: tape measure
    for: [challenge]
    instead: [{thing: ruler and string, filling: sand}]
",
    good: "\
equipment:
  - {need: marker, count: 2, for: [warm_up, challenge]}
  - need: tape measure
    for: [challenge]
    instead: [{thing: ruler and string}]
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for substitute in session.needs.iter().flat_map(|need| &need.substitutes) {
        let Some(place) = substitute.half_filled else { continue };
        let is_own = place.file == session.file;
        notes.find(
            if is_own { place } else { session.title.place },
            format!(
                "“{}” says what it is filled with or how much it holds, but not both.",
                substitute.thing
            ),
            "Write both, such as “volume: 500 ml” and “filling: water”, or neither and its mass.",
        );
    }
}
