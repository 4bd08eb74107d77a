use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "jump-surface-missing",
    severity: Severity::Problem,
    asks: "A session with jumps, hops or landings says what may be underfoot.",
    why: "The same jump is kind on grass and hard on paving. A parent can’t see from “jump” which one \
          you had in mind.",
    source: "",
    bad: "space: {length: 4 m, width: 2 m, height: 2.2 m, where: [indoors, outdoors]}\n",
    good: "space: {length: 4 m, width: 2 m, height: 2.2 m, where: [indoors, outdoors], surface: [grass, carpet]}\n",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    // A session without any space is another rule's business.
    let Some(space) = session.space.as_ref().filter(|space| space.surfaces.is_empty()) else {
        return;
    };
    let mut movements = session.parts.iter().flat_map(|part| &part.movements);
    if let Some(movement) = movements.find(|movement| movement.value.lands()) {
        notes.find(
            space.place,
            format!("This session has {}, and no surface is named.", movement.value.word()),
            "Add “surface:” with what is kind to land on, such as [grass, carpet, mat].",
        );
    }
}
