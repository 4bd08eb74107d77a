use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Need, Pack, Session};
use crate::place::Place;
use crate::plan::Plans;
use crate::read::words::Movement;

pub const RULE: Rule = Rule {
    code: "weight-unlimited",
    severity: Severity::Problem,
    asks: "A thing lifted as a weight has a mass it may not go over.",
    why: "“A bottle” can be half a litre or five. The child lifts alone, so the session has to say how \
          heavy is enough. The limit is yours to set; the school’s risk assessment comes first.",
    source: "",
    bad: "\
equipment:
  - {need: marker, count: 2, for: [warm_up, challenge]}
  - {need: tape measure, for: [challenge]}
  - {need: hand weight, count: 2, for: [stretch]}
",
    good: "\
equipment:
  - {need: marker, count: 2, for: [warm_up, challenge]}
  - {need: tape measure, for: [challenge]}
  - {need: hand weight, count: 2, for: [stretch], mass: at most 500 g}
",
    check: Check::Session(check),
};

const WAY_OUT: &str = "Add a limit to what is lifted, such as “mass: at most 500 g”.";

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for need in session.needs.iter().filter(|need| need.is_weight() && !has_limit(need)) {
        let says =
            format!("“{}” is lifted as a weight, and nothing says how heavy it may be.", need.name);
        notes.find(
            need.limits.mass.as_ref().map_or(need.place(), |mass| mass.place),
            says,
            WAY_OUT,
        );
    }
    for (index, part) in session.parts.iter().enumerate() {
        let used = || session.needs.iter().filter(|need| need.parts.contains(&index));
        if let Some(place) = place_of_lifting(part)
            && used().next().is_some()
            && !used().any(|need| need.is_weight() || has_limit(need))
        {
            let says = format!(
                "The {} lifts something, and none of its things has a mass limit.",
                part.named()
            );
            notes.find(place, says, WAY_OUT);
        }
    }
}

fn has_limit(need: &Need) -> bool {
    need.limits.mass.as_ref().is_some_and(|mass| mass.most.is_some())
}

fn place_of_lifting(part: &crate::pack::Part) -> Option<Place> {
    part.movements.iter().find(|found| found.value == Movement::Lifting).map(|found| found.place)
}
