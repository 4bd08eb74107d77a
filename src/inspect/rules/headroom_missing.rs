use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::words::{Movement, Whereabouts};

pub const RULE: Rule = Rule {
    code: "headroom-missing",
    severity: Severity::Advice,
    asks: "Indoors, a session that jumps, skips, throws or strikes says how much headroom it needs.",
    why: "Ceilings and lamps are low at home. A child with arms up, jumping, reaches higher than one \
          thinks.",
    source: "",
    bad: "space: {length: 4 m, width: 2 m, where: [indoors], surface: [carpet]}\n",
    good: "space: {length: 4 m, width: 2 m, height: 2.2 m, where: [indoors], surface: [carpet]}\n",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let Some(space) = session.space.as_ref().filter(|space| space.height.is_none()) else { return };
    let rises = |movement: Movement| {
        matches!(movement, Movement::Jumping | Movement::Hopping | Movement::Skipping)
            || movement.sends_something()
    };
    let mut movements = session.parts.iter().flat_map(|part| &part.movements);
    let rising = movements.find(|movement| rises(movement.value));
    if let Some(movement) = rising.filter(|_| space.whereabouts.contains(&Whereabouts::Indoors)) {
        notes.find(
            space.place,
            format!(
                "This session has {} indoors, and no headroom is given.",
                movement.value.word()
            ),
            "Add “height:”, such as 2.2 m.",
        );
    }
}
