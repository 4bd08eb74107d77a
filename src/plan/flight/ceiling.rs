//! Throwing in a room: the headroom a throw needs, and the farthest throw that a ceiling allows.
//!
//! The figures are for the flight alone. Room for arms, for a throw that goes wrong and for lamps
//! is a matter of space, not of flight.

use super::root::find_root;
use super::{Ball, BestThrow, Flight, GRAVITY, Release, fly, plan_best_throw, plan_flight_in_air};

/// How high above the floor (m) the top of the ball comes, where the flight is of its middle.
pub fn plan_headroom(flight: &Flight, radius: f64) -> Option<f64> {
    let headroom = flight.apex + radius;
    (radius >= 0.0 && headroom.is_finite()).then_some(headroom)
}

/// The farthest throw at a speed (m/s) from a height (m) whose ball, of so many metres’ radius,
/// stays under a ceiling (m above the floor), with drag or without. `None` where the ball does not
/// even fit at its release.
pub fn plan_farthest_under(
    ceiling: f64,
    speed: f64,
    height: f64,
    radius: f64,
    drag: Option<&Ball>,
) -> Option<BestThrow> {
    let highest = ceiling - radius;
    if !(highest.is_finite() && radius >= 0.0 && height <= highest) {
        return None;
    }
    // Up to the best angle a steeper throw goes farther, so that the steepest that fits is best.
    let best = plan_best_throw(speed, height, drag)?;
    let throw = Release { speed, angle: best.angle, height };
    if fly(&throw, drag)?.apex <= highest {
        return Some(best);
    }
    let angle = match drag {
        None => steepest_without_drag(&throw, highest),
        Some(_) => steepest(&throw, highest, drag)?,
    };
    throw_at(&throw.at_angle(angle), drag)
}

/// sinθ = √(2g·rise)/v: the upward speed that is used up just at the highest point allowed.
fn steepest_without_drag(throw: &Release, highest: f64) -> f64 {
    let sine = (2.0 * GRAVITY * (highest - throw.height)).sqrt() / throw.speed;
    sine.min(1.0).asin().to_degrees()
}

/// The steeper, the higher: where the apex passes the highest point, on the lower side.
fn steepest(throw: &Release, highest: f64, drag: Option<&Ball>) -> Option<f64> {
    let above = |angle: f64| Some(fly(&throw.at_angle(angle), drag)?.apex - highest);
    find_root(0.0, throw.angle, above)
}

fn throw_at(release: &Release, drag: Option<&Ball>) -> Option<BestThrow> {
    let flight = match drag {
        None => fly(release, None)?,
        Some(ball) => plan_flight_in_air(release, ball)?.flight,
    };
    Some(BestThrow { angle: release.angle, distance: flight.distance })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::flight::plan_flight;

    #[test]
    fn a_room_of_ordinary_height_flattens_the_throw() {
        // 2.3 m: the height asked over most of the floor by the space standard for homes in England.
        let radius = Ball::TENNIS.radius();
        for drag in [None, Some(&Ball::TENNIS)] {
            let best = plan_farthest_under(2.3, 8.0, 1.2, radius, drag).unwrap();
            let flight =
                fly(&Release { speed: 8.0, angle: best.angle, height: 1.2 }, drag).unwrap();
            let headroom = plan_headroom(&flight, radius).unwrap();
            assert!((headroom - 2.3).abs() < 1e-9, "{headroom}");
            assert!(best.distance < plan_best_throw(8.0, 1.2, drag).unwrap().distance);
        }
    }

    #[test]
    fn under_the_sky_it_is_the_best_throw() {
        assert_eq!(plan_farthest_under(50.0, 8.0, 1.2, 0.1, None), plan_best_throw(8.0, 1.2, None));
    }

    #[test]
    fn a_ball_that_does_not_fit_is_not_thrown() {
        assert_eq!(plan_farthest_under(1.2, 8.0, 1.2, 0.1, None), None);
        assert_eq!(plan_farthest_under(f64::NAN, 8.0, 1.2, 0.1, None), None);
        let level = plan_farthest_under(1.3, 8.0, 1.2, 0.1, Some(&Ball::TENNIS)).unwrap();
        assert!(level.angle.abs() < 1e-6, "it just fits, thrown level: {level:?}");
    }

    #[test]
    fn headroom_is_the_apex_and_half_the_ball() {
        let toss = plan_flight(&Release { speed: 4.0, angle: 90.0, height: 1.0 }).unwrap();
        assert_eq!(plan_headroom(&toss, 0.1), Some(toss.apex + 0.1));
        assert_eq!(plan_headroom(&toss, -0.1), None);
    }
}
