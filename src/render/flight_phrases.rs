//! Sentences about flights, for the teacher’s answers.

use crate::plan::FlightPlan;
use crate::render::quantities::{Said, say_amount};
use crate::words::{Filling, Words};

/// What becomes of a throw or a toss, with its headroom and what a room allows; figures to the
/// centimetre and the hundredth of a second, since no throw at home is known better.
pub fn flight_sentences(plan: &FlightPlan, words: &Words) -> Vec<String> {
    let flight = &plan.flight;
    let named = plan.ball.as_ref().map(|(name, _)| name.as_str());
    let metres = |value: f64| say_amount(&format!("{value:.2} m"), words);
    let (speed, angle) =
        (words.number(&format!("{:.1}", plan.release.speed)), format!("{:.0}", plan.release.angle));
    let (height, apex) = (metres(plan.release.height), metres(flight.apex));
    let (distance, time) =
        (metres(flight.distance), say_amount(&format!("{:.2} s", flight.time), words));
    let landing = words.number(&format!("{:.1}", flight.landing_speed));
    let with = [
        ("speed", Filling::Text(&speed)),
        ("angle", Filling::Text(&angle)),
        ("height", Filling::Text(&height)),
        ("distance", Filling::Text(&distance)),
        ("apex", Filling::Text(&apex)),
        ("time", Filling::Text(&time)),
        ("landing", Filling::Text(&landing)),
    ];
    let key = if plan.is_toss { "flight-toss" } else { "flight-throw" };
    let mut sentences = vec![words.say_with(key, &with)];
    sentences.push(match named {
        Some(name) => {
            let bare = metres(plan.vacuum.distance);
            let with = [("thing", Filling::Text(name)), ("distance", Filling::Text(&bare))];
            words.say_with(if plan.is_toss { "flight-drag-toss" } else { "flight-drag" }, &with)
        }
        None => words.say("flight-no-drag"),
    });
    let headroom = plan.headroom.say(words);
    sentences.push(words.say_with("flight-headroom", &[("height", Filling::Text(&headroom))]));
    if let Some((ceiling, best)) = plan.ceiling.zip(plan.best_in_room()) {
        let (ceiling, angle) = (ceiling.say(words), format!("{:.0}", best.angle));
        let distance = metres(best.distance);
        let with = [
            ("ceiling", Filling::Text(&ceiling)),
            ("angle", Filling::Text(&angle)),
            ("distance", Filling::Text(&distance)),
        ];
        sentences.push(words.say_with("flight-room", &with));
    }
    if let Some(best) = plan.best() {
        let (angle, distance) = (format!("{:.0}", best.angle), metres(best.distance));
        let with = [("angle", Filling::Text(&angle)), ("distance", Filling::Text(&distance))];
        sentences.push(words.say_with("flight-best", &with));
    }
    sentences
}
