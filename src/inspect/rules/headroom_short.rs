use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Part, Session};
use crate::place::Place;
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "headroom-short",
    severity: Severity::Problem,
    asks: "No part needs more headroom than the session asks for.",
    why: "A ball tossed higher than the room breaks the lamp, or the child stops tossing. \
          The height of a flight is reckoned from its speed, its distance or its rise.",
    source: "Standard mechanics; drag of a sphere",
    bad: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  flight: {rise: 1.2 m, height: 1.2 m}
",
    good: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  flight: {rise: 80 cm, height: 1.2 m}
",
    check: Check::Session(check),
};

fn check(session: &Session, plans: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let promised = session.space.as_ref().and_then(|space| space.height.as_ref());
    let Some(promised) = promised.map(|height| height.value) else { return };
    for (index, part) in session.parts.iter().enumerate() {
        let said = part.space.as_ref().and_then(|space| space.height.as_ref());
        let flown = plans.flights.get(index).and_then(|flight| flight.as_ref());
        let asked = [said.map(|height| height.value), flown.map(|flight| flight.headroom)];
        let Some(asked) = asked.into_iter().flatten().max().filter(|asked| *asked > promised) else {
            continue;
        };
        notes.find(
            place_of(part),
            format!(
                "The {} needs {asked} of headroom, and the session asks for {promised}.",
                part.named()
            ),
            "Ask for more height at the top, keep it lower here, or take it outdoors.",
        );
    }
}

fn place_of(part: &Part) -> Place {
    let height = part.space.as_ref().and_then(|space| space.height.as_ref());
    let said = height.map(|height| height.place);
    part.flight.as_ref().map(|flight| flight.place).or(said).unwrap_or(part.title.place)
}
