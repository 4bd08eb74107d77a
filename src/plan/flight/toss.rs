//! Tosses straight up and jumps on the spot, without drag. Source: standard mechanics.

use super::GRAVITY;

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
    fn jumps_by_their_time() {
        // Computed from g·t²/8: 0.4 s → 0.196 m, 0.5 s → 0.306 m.
        assert!((plan_jump_height(0.4).unwrap() - 0.196).abs() < 5e-4);
        assert!((plan_jump_height(0.5).unwrap() - 0.306).abs() < 5e-4);
        assert!(plan_jump_height(-0.5).is_none() && plan_jump_height(f64::INFINITY).is_none());
    }
}
