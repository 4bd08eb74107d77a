//! Answers a check’s questions about flight.
//!
//! In: `{"ask": "flight", "what": …}` with speed, angle, height, ball and so on in SI units and
//! degrees. Out: the figures, or null where there is no such flight.

use homeground::plan::flight::{
    AIR_DENSITY, Ball, BestThrow, Figure, Flight, GRAVITY, Release, SPHERE_DRAG, plan_best_throw,
    plan_farthest_under, plan_figure, plan_flight, plan_flight_in_air, plan_headroom,
    plan_jump_height, plan_speed, plan_toss,
};
use serde_json::{Value, json};

pub fn answer(question: &Value) -> Value {
    let number = |key: &str| question[key].as_f64().unwrap_or(f64::NAN);
    let (speed, angle, height) = (number("speed"), number("angle"), number("height"));
    let ball = read_ball(&question["ball"]);
    let drag = ball.as_ref();
    let found = match question["what"].as_str().unwrap_or_default() {
        "flight" => fly(&Release { speed, angle, height }, drag),
        "best" => plan_best_throw(speed, height, drag).map(best),
        "speed" => plan_speed(number("distance"), angle, height, drag).map(Value::from),
        "toss" => plan_toss(number("rise")).map(|toss| json!([toss.speed, toss.time])),
        "jump" => plan_jump_height(number("time")).map(Value::from),
        "under" => {
            plan_farthest_under(number("ceiling"), speed, height, number("radius"), drag).map(best)
        }
        "figure" => {
            let step = question["step"].as_u64().and_then(|step| u32::try_from(step).ok());
            plan_figure(speed, height, drag, step.unwrap_or(0)).map(|found| figure(&found))
        }
        "published" => Some(published()),
        other => Some(json!({ "unknown": other })),
    };
    found.unwrap_or(Value::Null)
}

/// Null is no drag; otherwise [mass, diameter] or [mass, diameter, drag coefficient].
fn read_ball(value: &Value) -> Option<Ball> {
    let part = |at: usize| value[at].as_f64();
    value.as_array()?;
    let ball = Ball::of_mass_and_size(part(0).unwrap_or(f64::NAN), part(1).unwrap_or(f64::NAN));
    Some(part(2).map_or(ball, |drag_coefficient| Ball { drag_coefficient, ..ball }))
}

fn fly(release: &Release, drag: Option<&Ball>) -> Option<Value> {
    let Some(ball) = drag else {
        return plan_flight(release).map(|flight| figures(&flight, 0.0, 0.0));
    };
    plan_flight_in_air(release, ball)
        .map(|found| figures(&found.flight, found.error, ball.radius()))
}

fn figures(flight: &Flight, error: f64, radius: f64) -> Value {
    json!({
        "distance": flight.distance,
        "apex": flight.apex,
        "time": flight.time,
        "landing_speed": flight.landing_speed,
        "landing_angle": flight.landing_angle,
        "error": error,
        "headroom": plan_headroom(flight, radius),
    })
}

fn best(throw: BestThrow) -> Value {
    json!([throw.angle, throw.distance])
}

fn figure(figure: &Figure) -> Value {
    json!({ "points": figure.points, "best": figure.best })
}

fn published() -> Value {
    let balls = Ball::PUBLISHED.iter().map(|(name, ball)| json!([name, ball.mass, ball.diameter]));
    json!({
        "gravity": GRAVITY,
        "air": AIR_DENSITY,
        "sphere": SPHERE_DRAG,
        "balls": balls.collect::<Vec<_>>(),
    })
}
