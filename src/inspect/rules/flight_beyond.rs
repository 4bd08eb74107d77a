use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::quantity::Length;

pub const RULE: Rule = Rule {
    code: "flight-beyond",
    severity: Severity::Warning,
    asks: "What flies comes down within the reach that the part’s space keeps.",
    why: "The floor plan keeps the landing clear as far as “reach” says. A throw that flies \
          further ends among people or furniture.",
    source: "Standard mechanics; drag of a sphere",
    bad: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  flight: {speed: 5 m/s, angle: 40, height: 1 m}
  space: {kind: throw, reach: 2 m, sector: 10, margin: 50 cm}
",
    good: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  flight: {distance: 1.9 m, angle: 40, height: 1 m}
  space: {kind: throw, reach: 2 m, sector: 10, margin: 50 cm}
",
    check: Check::Session(check),
};

fn check(session: &Session, plans: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for (part, flight) in session.parts.iter().zip(&plans.flights) {
        let reach = part.space.as_ref().and_then(|space| space.reach.as_ref());
        let (Some(reach), Some(flight)) = (reach, flight) else { continue };
        let flown = flight.flight.distance;
        if flown <= f64::from(reach.value.millimetres()) / 1000.0 + SLACK {
            continue;
        }
        notes.find(
            reach.place,
            format!(
                "The flight of the {} comes down {flown:.1} m away, beyond the reach of {}.",
                part.named(),
                reach.value
            ),
            format!("Write a reach of at least {}, or a slower or flatter flight.", tenths_up(flown)),
        );
    }
}

/// What the reckoning may be off, in metres.
const SLACK: f64 = 0.005;

#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "no throw of a session goes further than a length can be"
)]
fn tenths_up(metres: f64) -> Length {
    Length::from_millimetres(((metres * 10.0).ceil() as u32).saturating_mul(100))
}
