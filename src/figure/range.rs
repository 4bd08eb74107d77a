//! How far each joint goes.
//!
//! Source: the normal ranges of motion of the American Academy of Orthopaedic Surgeons (Joint Motion, 1965),
//! as Norkin and White, Measurement of Joint Motion, table them; written down from memory.

use super::joint::{Angles, Joint, Motion, Turn};

/// The least and most degrees of a movement; `None` for the lean of the whole body.
pub const fn range_of((joint, motion): Turn) -> Option<(f64, f64)> {
    Some(match (joint, motion) {
        (Joint::Trunk, _) => return None,
        (Joint::Back, Motion::Forward) => (-25.0, 80.0),
        (Joint::Back, Motion::Sideways) => (-35.0, 35.0),
        (Joint::Back | Joint::Leg(_), Motion::Turned)
        | (Joint::Head, Motion::Forward | Motion::Sideways) => (-45.0, 45.0),
        (Joint::Head, Motion::Turned) => (-60.0, 60.0),
        (Joint::Arm(_), Motion::Forward) => (-60.0, 180.0),
        (Joint::Arm(_), Motion::Sideways) => (-75.0, 180.0),
        (Joint::Arm(_), Motion::Turned) => (-70.0, 90.0),
        (Joint::Elbow(_), Motion::Forward) => (0.0, 150.0),
        (Joint::Wrist(_), Motion::Forward) => (-70.0, 80.0),
        (Joint::Leg(_), Motion::Forward) => (-30.0, 120.0),
        (Joint::Leg(_), Motion::Sideways) => (-30.0, 45.0),
        (Joint::Knee(_), Motion::Forward) => (0.0, 135.0),
        (Joint::Foot(_), Motion::Forward) => (-20.0, 50.0),
        (Joint::Elbow(_) | Joint::Wrist(_) | Joint::Knee(_) | Joint::Foot(_), _) => (0.0, 0.0),
    })
}

/// A movement beyond its range.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Beyond {
    pub turn: Turn,
    pub degrees: f64,
    /// The last angle that the joint reaches that way.
    pub most: f64,
}

/// Every angle that no usual joint reaches. Half a degree is let pass: angles are said in whole ones.
pub fn beyond_range(angles: &Angles) -> Vec<Beyond> {
    let each = angles.each().filter_map(|(turn, degrees)| {
        let (least, most) = range_of(turn)?;
        let end = if degrees > most { most } else { least };
        let is_beyond = degrees > most + 0.5 || degrees < least - 0.5;
        is_beyond.then_some(Beyond { turn, degrees, most: end })
    });
    each.collect()
}
