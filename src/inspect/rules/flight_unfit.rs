use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{FlightSaid, Pack, Session};
use crate::plan::flight::Ball;
use crate::plan::{FlightPlan, Plans};

pub const RULE: Rule = Rule {
    code: "flight-unfit",
    severity: Severity::Problem,
    asks: "A flight says one thing of how it is let go, and what flies is known.",
    why: "The flight follows from the speed, from how far it comes or from how far it rises: \
          one of them, not two. What flies is a thing of this session with a mass and a \
          size, or a ball of the rules; without it the drag of the air is left out.",
    source: "",
    bad: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  flight: {rise: 50 cm, distance: 3 m, height: 1.2 m}
",
    good: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  flight: {rise: 50 cm, height: 1.2 m}
",
    check: Check::Session(check),
};

fn check(session: &Session, plans: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for (part, planned) in session.parts.iter().zip(&plans.flights) {
        let Some(said) = &part.flight else { continue };
        if let Some((says, way_out)) = fault_of(said, planned.as_ref()) {
            let place = if planned.is_some() && ways_of(said) == 1 {
                said.of.as_ref().map_or(said.place, |of| of.place)
            } else {
                said.place
            };
            notes.find(place, format!("The flight of the {} {says}.", part.named()), way_out);
        }
    }
}

fn ways_of(said: &FlightSaid) -> usize {
    [said.speed.is_some(), said.distance.is_some(), said.rise.is_some()]
        .into_iter()
        .filter(|is_said| *is_said)
        .count()
}

fn fault_of(said: &FlightSaid, planned: Option<&FlightPlan>) -> Option<(String, String)> {
    let one = "Write one of speed, distance or rise, such as “distance: 4 m”.".to_owned();
    match (ways_of(said), planned) {
        (0, _) => Some(("says nothing of how far or fast it goes".to_owned(), one)),
        (1, None) => Some((
            "can’t be: no speed brings it so far at this angle".to_owned(),
            "Look at the distance, the angle and the height again.".to_owned(),
        )),
        (1, Some(planned)) => unknown_ball(said, planned),
        _ => Some(("says how it is let go more than once".to_owned(), one)),
    }
}

fn unknown_ball(said: &FlightSaid, planned: &FlightPlan) -> Option<(String, String)> {
    let of = said.of.as_ref().filter(|_| planned.ball.is_none())?;
    let known: Vec<&str> = Ball::PUBLISHED.iter().map(|(name, _)| *name).collect();
    Some((
        format!("is of “{of}”, of which mass and size are not known"),
        format!("Give it a mass and a size in equipment.yaml, or name one of: {}.", known.join("; ")),
    ))
}
