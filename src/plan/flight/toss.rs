//! Tosses straight up and jumps on the spot. Source: standard mechanics.

use super::{Ball, GRAVITY};

/// A toss straight up that is caught where it was let go.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Toss {
    /// Out of the hand, m/s.
    pub speed: f64,
    /// From hand to hand, s.
    pub time: f64,
}

/// The toss that rises by so many metres above the hand: v = √(2gh), t = 2√(2h/g).
pub fn plan_toss(rise: f64) -> Option<Toss> {
    let toss =
        Toss { speed: (2.0 * GRAVITY * rise).sqrt(), time: 2.0 * (2.0 * rise / GRAVITY).sqrt() };
    (rise >= 0.0 && toss.speed.is_finite()).then_some(toss)
}

/// The speed (m/s) at which a ball must leave the hand to rise by so many metres against the drag of
/// the air: v² = g/k · (e^(2k·rise) − 1), where the drag slows it by k·v² (standard mechanics). `None`
/// for a rise or a ball that can’t be.
pub fn plan_toss_in_air(rise: f64, ball: &Ball) -> Option<f64> {
    let slowing = ball.slowing();
    // Without drag the formula would divide nought by nought.
    if slowing < 1e-12 {
        return plan_toss(rise).map(|toss| toss.speed);
    }
    let speed = (GRAVITY / slowing * (2.0 * slowing * rise).exp_m1()).sqrt();
    (rise >= 0.0 && ball.is_possible() && speed.is_finite()).then_some(speed)
}

/// How high (m) a jump on the spot rises in so many seconds in the air: g·t²/8. It holds where
/// take-off and landing are alike, legs straight; bent legs at landing make it read too high.
pub fn plan_jump_height(flight_time: f64) -> Option<f64> {
    let height = GRAVITY * flight_time * flight_time / 8.0;
    (flight_time >= 0.0 && height.is_finite()).then_some(height)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_toss_of_a_metre() {
        // Computed from the formulas above: 0.903 s, 4.429 m/s.
        let toss = plan_toss(1.0).unwrap();
        assert!((toss.time - 0.903).abs() < 5e-4 && (toss.speed - 4.429).abs() < 5e-4);
        assert!(plan_toss(-0.1).is_none() && plan_toss(f64::NAN).is_none());
    }

    #[test]
    fn a_toss_against_the_air_rises_as_far_as_was_asked() {
        use crate::plan::flight::{Release, plan_flight_in_air};
        for ball in [Ball::TABLE_TENNIS, Ball::TENNIS, Ball::BASKETBALL_7] {
            let speed = plan_toss_in_air(1.5, &ball).unwrap();
            let flight = plan_flight_in_air(&Release { speed, angle: 90.0, height: 1.0 }, &ball);
            assert!((flight.unwrap().flight.apex - 2.5).abs() < 1e-6);
            assert!(speed > plan_toss(1.5).unwrap().speed);
        }
        assert!(plan_toss_in_air(-1.0, &Ball::TENNIS).is_none());
    }

    #[test]
    fn jumps_by_their_time() {
        // Computed from g·t²/8: 0.4 s → 0.196 m, 0.5 s → 0.306 m.
        assert!((plan_jump_height(0.4).unwrap() - 0.196).abs() < 5e-4);
        assert!((plan_jump_height(0.5).unwrap() - 0.306).abs() < 5e-4);
        assert!(plan_jump_height(-0.5).is_none() && plan_jump_height(f64::INFINITY).is_none());
    }
}
