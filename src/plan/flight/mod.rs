//! Flight: how far, how high and how long something thrown, kicked, tossed or jumped flies.
//!
//! In: a [`Release`], and a [`Ball`] where the drag of the air counts. Out: a [`Flight`], the best
//! angle, the speed behind a measured distance, the headroom and the figure of distance against
//! angle. Everything is `f64` in SI units (metres, seconds, kilograms), angles in degrees.
//!
//! The thing is a point that flies over level ground at height 0, in still air, without spin or
//! lift. Without drag the closed forms of standard mechanics hold; with drag the equations of
//! motion are integrated. What can't be (a mass of nothing, a speed that is no number) has no
//! flight: `None`.

mod ball;
mod best;
mod ceiling;
mod drag;
mod figure;
mod motion;
mod release;
mod root;
mod speed;
mod stepper;
mod toss;
mod vacuum;

pub use ball::Ball;
pub use best::{BestThrow, plan_best_throw};
pub use ceiling::{plan_farthest_under, plan_headroom};
pub use drag::{FlightInAir, plan_flight_in_air};
pub use figure::{Figure, plan_figure};
pub use release::{Flight, Release};
pub use speed::plan_speed;
pub use toss::{Toss, plan_jump_height, plan_toss, plan_toss_in_air};
pub use vacuum::plan_flight;

/// Standard acceleration of free fall, m/s². Source: 3rd CGPM 1901, as in `scipy.constants.g`.
pub const GRAVITY: f64 = 9.80665;

/// Density of dry air at sea level and 15 °C, kg/m³. Source: ICAO standard atmosphere (ISO 2533),
/// which follows from 101325 Pa and 15 °C.
pub const AIR_DENSITY: f64 = 1.225;

/// Drag coefficient of a smooth sphere at the speeds of play. A textbook value from memory; the
/// true figure changes with speed, seams and fluff, so that a distance with drag is an estimate.
pub const SPHERE_DRAG: f64 = 0.47;

/// The distance of one throw to about a thousand-millionth, with the drag of `ball` or without
/// any: for figures and searches, which look at many throws.
fn distance_of(release: &Release, drag: Option<&Ball>) -> Option<f64> {
    let flight = match drag {
        None => plan_flight(release)?,
        Some(ball) => drag::fly_quickly(release, ball)?,
    };
    Some(flight.distance)
}

/// One flight with all care, with the drag of `ball` or without any.
fn fly(release: &Release, drag: Option<&Ball>) -> Option<Flight> {
    match drag {
        None => plan_flight(release),
        Some(ball) => drag::fly_once(release, ball),
    }
}
