//! Flight through still air: quadratic drag on a sphere, integrated up to the apex and from there
//! down to the ground, so that each part has one end and no more.
//!
//! In: a release and a ball. Out: the flight and how far it may be from the truth.

use super::motion::{Motion, State};
use super::stepper::{Event, go_until};
use super::{Ball, Flight, GRAVITY, Release};

/// A flight with drag.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlightInAir {
    pub flight: Flight,
    /// The largest relative error that any of the five figures may have from the integration
    /// (0.000001 is a millionth). It says nothing of the drag coefficient, which is far less sure.
    pub error: f64,
}

/// Doubt allowed for each step of the run whose figures are given.
const TIGHT: f64 = 1e-11;
/// Doubt allowed for each step of the run it is compared with.
const LOOSE: f64 = 1e-9;
/// What rounding and the tight run’s own steps may come to.
const LEAST_ERROR: f64 = 20.0 * TIGHT;
/// A flight less exact than this is not given.
const WORST_ERROR: f64 = 1e-6;

/// The flight of a ball through still air. `None` for a release or a ball that can't be, and
/// where the figures can't be had to a millionth (a feather from a tower).
///
/// The error is the difference from a run with a hundredth of the care, so that it is that run’s
/// error, and the figures given are better than it says.
pub fn plan_flight_in_air(release: &Release, ball: &Ball) -> Option<FlightInAir> {
    let flight = fly_with(release, ball, TIGHT)?;
    let other = fly_with(release, ball, LOOSE)?;
    let pairs = flight.figures().into_iter().zip(other.figures());
    let apart = pairs.map(|(a, b)| relative_difference(a, b)).fold(0.0, f64::max);
    let error = apart + LEAST_ERROR;
    (error <= WORST_ERROR).then_some(FlightInAir { flight, error })
}

/// The same figures without the second run.
pub(super) fn fly_once(release: &Release, ball: &Ball) -> Option<Flight> {
    fly_with(release, ball, TIGHT)
}

/// A flight in less than half the time, with the doubt of the looser run.
pub(super) fn fly_quickly(release: &Release, ball: &Ball) -> Option<Flight> {
    fly_with(release, ball, LOOSE)
}

fn relative_difference(a: f64, b: f64) -> f64 {
    let size = a.abs().max(b.abs());
    if size > 0.0 { (a - b).abs() / size } else { 0.0 }
}

fn fly_with(release: &Release, ball: &Ball, tolerance: f64) -> Option<Flight> {
    if !(release.is_possible() && ball.is_possible()) {
        return None;
    }
    let (along, up) = release.parts();
    let motion = Motion { slowing: ball.slowing(), along };
    let start = State { way: 0.0, keep: 1.0, rise: 0.0, up };
    let (top, climb_time) = climb(&motion, start, tolerance)?;
    let apex = release.height + top.rise;
    let (end, fall_time) = fall(&motion, State { rise: 0.0, ..top }, apex, tolerance)?;
    let left = along * end.keep;
    Flight {
        distance: along * end.way,
        apex,
        time: climb_time + fall_time,
        landing_speed: left.hypot(end.up),
        landing_angle: (-end.up).atan2(left).abs().to_degrees(),
    }
    .if_finite()
}

/// Up to the apex; thrown level or downwards it is there at once.
fn climb(motion: &Motion, start: State, tolerance: f64) -> Option<(State, f64)> {
    if start.up <= 0.0 {
        return Some((start, 0.0));
    }
    // Without drag the apex would come after up/g; with drag it comes sooner.
    let first = first_span(motion, &start).min(start.up / GRAVITY);
    let (top, time) = go_until(Event::Apex, motion, start, first, tolerance)?;
    Some((State { up: 0.0, ..top }, time))
}

/// Down from the highest point to the ground.
fn fall(motion: &Motion, top: State, height: f64, tolerance: f64) -> Option<(State, f64)> {
    if height <= 0.0 {
        return Some((top, 0.0));
    }
    let first = first_span(motion, &top).min((2.0 * height / GRAVITY).sqrt());
    go_until(Event::Down(height), motion, top, first, tolerance)
}

/// A careful first step: a twentieth of the time in which the forces would stop it.
fn first_span(motion: &Motion, state: &State) -> f64 {
    let speed = motion.speed(state);
    if speed > 0.0 { 0.05 / (GRAVITY / speed + motion.slowing * speed) } else { f64::INFINITY }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::flight::plan_flight;

    const THROW: Release = Release { speed: 10.0, angle: 40.0, height: 1.5 };

    #[test]
    fn balls_fly_as_far_as_reckoned_elsewhere() {
        // 10 m/s, 40°, 1.5 m: computed with another program’s integrator, to a centimetre.
        for (ball, distance) in
            [(Ball::TENNIS, 10.25), (Ball::FOOTBALL_5, 9.77), (Ball::TABLE_TENNIS, 6.17)]
        {
            let flight = plan_flight_in_air(&THROW, &ball).unwrap();
            assert!((flight.flight.distance - distance).abs() < 0.005, "{flight:?}");
            assert!(flight.error < 1e-6);
        }
    }

    #[test]
    fn a_table_tennis_ball_falls_slowly() {
        let drop = Release { speed: 0.0, angle: 0.0, height: 2.0 };
        let flight = plan_flight_in_air(&drop, &Ball::TABLE_TENNIS).unwrap().flight;
        // A fall of 2 m takes 0.6675 s with drag: (v/g)·arcosh(exp(gh/v²)), v the speed it tends to.
        assert!((flight.time - 0.6675).abs() < 5e-5 && flight.distance == 0.0);
        let limit = (GRAVITY / Ball::TABLE_TENNIS.slowing()).sqrt();
        let exact = (GRAVITY * 2.0 / (limit * limit)).exp().acosh() * limit / GRAVITY;
        assert!((flight.time / exact - 1.0).abs() < 1e-10);
    }

    #[test]
    fn without_a_drag_coefficient_it_is_the_closed_form() {
        let smooth = Ball { drag_coefficient: 0.0, ..Ball::TENNIS };
        for angle in [-60.0, 0.0, 1e-9, 40.0, 89.999, 90.0] {
            let release = THROW.at_angle(angle);
            let ours = fly_once(&release, &smooth).unwrap().figures();
            let exact = plan_flight(&release).unwrap().figures();
            let apart = ours.into_iter().zip(exact).map(|(a, b)| relative_difference(a, b));
            assert!(apart.fold(0.0, f64::max) < 1e-10, "{angle}: {ours:?} {exact:?}");
        }
    }

    #[test]
    fn what_cannot_be_has_no_flight() {
        for ball in [
            Ball::of_mass_and_size(0.0, 0.1),
            Ball::of_mass_and_size(f64::NAN, 0.1),
            Ball::of_mass_and_size(0.1, -0.1),
            Ball::of_mass_and_size(0.1, 0.0),
            Ball { drag_coefficient: f64::INFINITY, ..Ball::TENNIS },
        ] {
            assert_eq!(plan_flight_in_air(&THROW, &ball), None);
        }
        assert_eq!(plan_flight_in_air(&THROW.at_speed(f64::NAN), &Ball::TENNIS), None);
        assert_eq!(plan_flight_in_air(&THROW.at_speed(-1.0), &Ball::TENNIS), None);
    }

    #[test]
    fn extremes_end() {
        let extremes = [0.0, f64::MIN_POSITIVE, 1.0, 1e6, f64::MAX];
        for (speed, height) in extremes.map(|speed| extremes.map(|height| (speed, height))).concat()
        {
            for angle in [-90.0, -1e-300, 0.0, 1e-300, 45.0, 90.0] {
                let release = Release { speed, angle, height };
                for mass in &extremes[1..] {
                    let found = plan_flight_in_air(&release, &Ball::of_mass_and_size(*mass, 0.1));
                    assert!(found.is_none_or(|found| found.error <= WORST_ERROR));
                }
            }
        }
    }
}
