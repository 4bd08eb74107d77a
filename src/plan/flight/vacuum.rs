//! Flight without drag, in closed form. Source: standard mechanics (uniform acceleration).

use super::{Flight, GRAVITY, Release};

/// The flight without drag; `None` for a release that can't be.
///
/// Thrown level or downwards at height 0 it has landed at once, where it is.
pub fn plan_flight(release: &Release) -> Option<Flight> {
    if !release.is_possible() {
        return None;
    }
    let (along, up) = release.parts();
    let down = downward_at_landing(up, release.height);
    let time = time_aloft(up, down, release.height);
    let rise = if up > 0.0 { up * up / (2.0 * GRAVITY) } else { 0.0 };
    Flight {
        distance: along * time,
        apex: release.height + rise,
        time,
        landing_speed: along.hypot(down),
        landing_angle: down.atan2(along).to_degrees(),
    }
    .if_finite()
}

/// √(up² + 2gh); `hypot` neither overflows nor loses the smaller of the two.
fn downward_at_landing(up: f64, height: f64) -> f64 {
    up.hypot((2.0 * GRAVITY * height).sqrt())
}

/// (up + down)/g. Thrown downwards that would subtract two near numbers: 2h/(down − up) is the
/// same without the loss.
fn time_aloft(up: f64, down: f64, height: f64) -> f64 {
    if up >= 0.0 {
        (up + down) / GRAVITY
    } else if height > 0.0 {
        2.0 * height / (down - up)
    } else {
        0.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fly(speed: f64, angle: f64, height: f64) -> Flight {
        plan_flight(&Release { speed, angle, height }).unwrap()
    }

    #[test]
    fn a_throw_goes_as_far_as_the_closed_form() {
        // 10 m/s, 40°, 1.5 m: 11.591 m (computed from R = (v cosθ/g)(v sinθ + √(v²sin²θ + 2gh))).
        assert!((fly(10.0, 40.0, 1.5).distance - 11.591).abs() < 5e-4);
    }

    #[test]
    fn a_toss_straight_up_comes_straight_down() {
        let toss = fly(4.429, 90.0, 0.0);
        assert!(toss.distance == 0.0 && (toss.landing_angle - 90.0).abs() < 1e-12);
        // A toss of 1.0 m: 0.903 s (computed from 2√(2h/g)).
        assert!((toss.apex - 1.0).abs() < 5e-4 && (toss.time - 0.903).abs() < 5e-4);
    }

    #[test]
    fn downwards_and_dropped() {
        // A fall of 2 m takes 0.6387 s without drag (computed from √(2h/g)).
        assert!((fly(0.0, 0.0, 2.0).time - 0.6387).abs() < 5e-5);
        let down = fly(5.0, -30.0, 2.0);
        assert!((down.apex - 2.0).abs() < 1e-15 && down.time < 0.6387);
        assert!(fly(5.0, -30.0, 0.0).time == 0.0);
    }

    #[test]
    fn what_cannot_be_has_no_flight() {
        for (speed, angle, height) in [
            (f64::NAN, 40.0, 1.0),
            (10.0, f64::INFINITY, 1.0),
            (10.0, 40.0, -1.0),
            (-1.0, 40.0, 1.0),
            (10.0, 91.0, 1.0),
            (1e300, 40.0, 1.0),
        ] {
            assert_eq!(plan_flight(&Release { speed, angle, height }), None);
        }
    }
}
