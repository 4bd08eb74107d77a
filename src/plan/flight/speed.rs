//! The speed behind a measured distance.

use super::root::find_root;
use super::{Ball, GRAVITY, Release, fly, plan_flight_in_air};

/// Faster than anything is thrown or kicked, m/s: a search for a speed goes no farther.
const FASTEST: f64 = 1000.0;

/// How often the speed without drag is doubled in search of one that is enough.
const MOST_DOUBLINGS: i32 = 30;

/// The speed (m/s) at which a throw at `angle` degrees from `height` m goes `distance` m, with
/// drag or without. `None` where no speed does: straight up, at a floor that is nearer than the
/// distance when thrown downwards, or through air that stops the ball before it.
pub fn plan_speed(distance: f64, angle: f64, height: f64, drag: Option<&Ball>) -> Option<f64> {
    let throw = Release { speed: 1.0, angle, height };
    if !(throw.is_possible() && distance.is_finite() && distance > 0.0) {
        return None;
    }
    let without = speed_without_drag(distance, &throw)?;
    match drag {
        None => Some(without),
        Some(ball) => speed_with_drag(distance, &throw, ball, without),
    }
}

/// v = (d/cosθ)·√(g/(2(h + d·tanθ))), which is the range formula solved for v.
fn speed_without_drag(distance: f64, throw: &Release) -> Option<f64> {
    let (cosine, sine) = throw.parts();
    // How far below the line of the throw it lands; gravity must bring it down by so much.
    let drop = throw.height + distance * sine / cosine;
    let speed = distance / cosine * (GRAVITY / (2.0 * drop)).sqrt();
    (cosine > 0.0 && drop > 0.0 && speed.is_finite()).then_some(speed)
}

/// Drag always shortens a throw, so that the speed without drag is a lower end.
fn speed_with_drag(distance: f64, throw: &Release, ball: &Ball, without: f64) -> Option<f64> {
    let beyond = |speed: f64| Some(fly(&throw.at_speed(speed), Some(ball))?.distance - distance);
    // With no drag at all the two meet, and rounding may put the lower end just above.
    let low = without * (1.0 - 1e-9);
    let speed = find_root(low, fast_enough(without, beyond)?, beyond)?;
    plan_flight_in_air(&throw.at_speed(speed), ball).map(|_| speed)
}

/// A speed at which the ball goes at least as far as asked.
fn fast_enough(without: f64, beyond: impl Fn(f64) -> Option<f64>) -> Option<f64> {
    (1..=MOST_DOUBLINGS)
        .map(|times| without * 2.0_f64.powi(times))
        .take_while(|speed| *speed <= FASTEST)
        .find(|speed| beyond(*speed).is_some_and(|over| over >= 0.0))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::flight::plan_flight;

    #[test]
    fn a_throw_gives_back_its_speed() {
        for angle in [-20.0, 0.0, 35.0, 80.0] {
            let throw = Release { speed: 9.0, angle, height: 1.7 };
            let distance = plan_flight(&throw).unwrap().distance;
            let speed = plan_speed(distance, angle, 1.7, None).unwrap();
            assert!((speed - 9.0).abs() < 1e-12, "{angle}: {speed}");
            for (name, ball) in Ball::PUBLISHED {
                let distance = fly(&throw, Some(ball)).unwrap().distance;
                let speed = plan_speed(distance, angle, 1.7, Some(ball)).unwrap();
                assert!((speed - 9.0).abs() < 1e-8, "{name} {angle}: {speed}");
            }
        }
    }

    #[test]
    fn what_no_speed_does() {
        assert_eq!(plan_speed(5.0, 90.0, 1.0, None), None);
        assert_eq!(plan_speed(5.0, 0.0, 0.0, None), None);
        assert_eq!(plan_speed(5.0, -45.0, 2.0, None), None);
        assert_eq!(plan_speed(0.0, 45.0, 2.0, None), None);
        assert_eq!(plan_speed(f64::NAN, 45.0, 2.0, Some(&Ball::TENNIS)), None);
        assert_eq!(plan_speed(500.0, 45.0, 2.0, Some(&Ball::TABLE_TENNIS)), None);
    }
}
