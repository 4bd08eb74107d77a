//! The figure of distance against angle, for the teacher’s answers.

use super::{Ball, Release, distance_of};

/// Distance against angle at one speed and height.
#[derive(Clone, Debug, PartialEq)]
pub struct Figure {
    /// Angle in degrees, distance in m; from 5 to at most 85 degrees, rising.
    pub points: Vec<(f64, f64)>,
    /// Which of the points goes farthest; the first of several.
    pub best: usize,
}

/// The flattest and the steepest throw shown, degrees.
const FLATTEST: u32 = 5;
const STEEPEST: u32 = 85;

/// The figure for a throw at a speed (m/s) from a height (m), one point every `step` degrees,
/// with drag or without.
pub fn plan_figure(speed: f64, height: f64, drag: Option<&Ball>, step: u32) -> Option<Figure> {
    if step == 0 {
        return None;
    }
    let degrees = (FLATTEST..=STEEPEST).step_by(usize::try_from(step).ok()?);
    let points = degrees
        .map(|angle| {
            let angle = f64::from(angle);
            Some((angle, distance_of(&Release { speed, angle, height }, drag)?))
        })
        .collect::<Option<Vec<_>>>()?;
    let best =
        (1..points.len()).fold(0, |best, at| if points[at].1 > points[best].1 { at } else { best });
    Some(Figure { points, best })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn seventeen_points_and_the_best() {
        let figure = plan_figure(10.0, 2.1, None, 5).unwrap();
        assert_eq!(figure.points.len(), 17);
        // The best angle is 40.08° (computed from tanθ = v/√(v² + 2gh)).
        assert!((figure.points[figure.best].0 - 40.0).abs() < 1e-12);
        let drag = plan_figure(10.0, 2.1, Some(&Ball::TENNIS), 5).unwrap();
        assert!(drag.points.iter().zip(&figure.points).all(|(with, without)| with.1 < without.1));
    }

    #[test]
    fn no_step_and_no_throw_have_no_figure() {
        assert_eq!(plan_figure(10.0, 2.1, None, 0), None);
        assert_eq!(plan_figure(f64::NAN, 2.1, None, 5), None);
    }
}
