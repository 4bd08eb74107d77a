//! The angle at which a throw of known speed and height goes farthest.
//!
//! It belongs to a fixed speed. A person’s own speed falls as the angle rises: shot-putters do
//! best at 37–38°, not at the 42° reckoned here (Lenz and Rappl, arXiv:1007.3689). Any answer to
//! a reader about the “best” angle must say so.

use super::{Ball, GRAVITY, Release, distance_of, plan_flight_in_air};

/// The best angle and what it gives.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BestThrow {
    /// Degrees above level.
    pub angle: f64,
    /// m.
    pub distance: f64,
}

/// The widest gap left around the best angle with drag, degrees. Nearer together two distances
/// differ by less than their own error.
const NARROWEST: f64 = 1e-3;

/// The golden section, 1/φ.
const GOLDEN: f64 = 0.618_033_988_749_894_9;

/// The best throw at a speed (m/s) from a height (m), with drag or without; `None` where nothing
/// is thrown. With drag the angle is good to a hundredth of a degree.
pub fn plan_best_throw(speed: f64, height: f64, drag: Option<&Ball>) -> Option<BestThrow> {
    let throw = Release { speed, angle: 45.0, height };
    if !(throw.is_possible() && speed > 0.0) {
        return None;
    }
    match drag {
        None => best_without_drag(speed, height),
        Some(ball) => best_with_drag(&throw, ball),
    }
}

/// tanθ = v/√(v² + 2gh) and R = (v/g)√(v² + 2gh). Source: standard mechanics.
fn best_without_drag(speed: f64, height: f64) -> Option<BestThrow> {
    let landing_speed = speed.hypot((2.0 * GRAVITY * height).sqrt());
    let distance = speed / GRAVITY * landing_speed;
    let angle = speed.atan2(landing_speed).to_degrees();
    distance.is_finite().then_some(BestThrow { angle, distance })
}

/// A look every ten degrees finds the hill, the golden section its top.
fn best_with_drag(throw: &Release, ball: &Ball) -> Option<BestThrow> {
    let distance_at = |angle: f64| distance_of(&throw.at_angle(angle), Some(ball));
    let mut hill = (0.0, distance_at(0.0)?);
    for tens in 1..9_u32 {
        let angle = f64::from(tens) * 10.0;
        let distance = distance_at(angle)?;
        if distance > hill.1 {
            hill = (angle, distance);
        }
    }
    let angle = climb_hill((hill.0 - 10.0).max(0.0), hill.0 + 10.0, distance_at)?;
    let best = plan_flight_in_air(&throw.at_angle(angle), ball)?;
    Some(BestThrow { angle, distance: best.flight.distance })
}

/// The golden-section search (J. Kiefer, Sequential minimax search for a maximum, 1953).
fn climb_hill(from: f64, to: f64, height_at: impl Fn(f64) -> Option<f64>) -> Option<f64> {
    let (mut low, mut high) = (from, to);
    let mut left = high - GOLDEN * (high - low);
    let mut right = low + GOLDEN * (high - low);
    let (mut at_left, mut at_right) = (height_at(left)?, height_at(right)?);
    while high - low > NARROWEST {
        if at_left >= at_right {
            (high, right, at_right) = (right, left, at_left);
            left = high - GOLDEN * (high - low);
            at_left = height_at(left)?;
        } else {
            (low, left, at_left) = (left, right, at_right);
            right = low + GOLDEN * (high - low);
            at_right = height_at(right)?;
        }
    }
    Some(low.midpoint(high))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn best_angles_from_two_metres_ten() {
        // h = 2.1 m, computed from tanθ = v/√(v² + 2gh).
        for (speed, angle, distance) in [
            (8.0, 37.96, 8.367),
            (10.0, 40.08, 12.117),
            (12.0, 41.41, 16.652),
            (14.0, 42.27, 21.986),
        ] {
            let best = plan_best_throw(speed, 2.1, None).unwrap();
            assert!((best.angle - angle).abs() < 0.005 && (best.distance - distance).abs() < 5e-4);
        }
    }

    #[test]
    fn nothing_beside_the_best_goes_farther() {
        let best = plan_best_throw(12.0, 1.6, Some(&Ball::TABLE_TENNIS)).unwrap();
        let at = |angle| {
            distance_of(&Release { speed: 12.0, angle, height: 1.6 }, Some(&Ball::TABLE_TENNIS))
                .unwrap()
        };
        assert!(best.angle < plan_best_throw(12.0, 1.6, None).unwrap().angle);
        assert!(at(best.angle - 0.05) < best.distance && at(best.angle + 0.05) < best.distance);
    }

    #[test]
    fn no_throw_has_no_best() {
        assert_eq!(plan_best_throw(0.0, 1.0, None), None);
        assert_eq!(plan_best_throw(f64::NAN, 1.0, Some(&Ball::TENNIS)), None);
        assert_eq!(plan_best_throw(5.0, -1.0, None), None);
    }
}
