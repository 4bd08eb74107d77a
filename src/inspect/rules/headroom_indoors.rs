use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::words::Whereabouts;

pub const RULE: Rule = Rule {
    code: "headroom-indoors",
    severity: Severity::Warning,
    asks: "Done indoors, a session needs no more headroom than a room has.",
    why: "A family can’t raise its ceiling. Where pack.yaml sets no “room_height”, a room is \
          taken to be 2.3 m high.",
    source: "England’s nationally described space standard (2015): 2.3 m over most of the floor \
          of a home",
    bad: "\
space: {length: 4 m, width: 2 m, height: 2.6 m, where: [indoors], surface: [grass, carpet]}
",
    good: "\
space: {length: 4 m, width: 2 m, height: 2.3 m, where: [indoors], surface: [grass, carpet]}
",
    check: Check::Session(check),
};

fn check(session: &Session, plans: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    let Some(space) = &session.space else { return };
    let said = space.height.as_ref().map(|height| height.value);
    let asked = said.max(plans.space.headroom()).filter(|asked| *asked > pack.room_height);
    let Some(asked) = asked.filter(|_| space.whereabouts == [Whereabouts::Indoors]) else { return };
    notes.find(
        space.height.as_ref().map_or(space.place, |height| height.place),
        format!("Indoors this needs {asked} of headroom, and a usual room has {}.", pack.room_height),
        "Keep it lower, offer it outdoors as well, or set “room_height” in pack.yaml if your rooms are higher.",
    );
}
