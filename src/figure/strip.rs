//! A figure as a part of a session has it: one moment, or a strip of two to five.

use super::pose::{Arrow, Pose};
use crate::place::{FileId, Place, Placed};
use crate::read::Line;

/// What stands under a moment.
#[derive(Clone, Debug)]
pub enum Caption {
    /// A key point of the part, from 1.
    Point(Placed<u32>),
    Words(Placed<Line>),
}

/// One moment of a movement.
#[derive(Clone, Debug)]
pub struct Moment {
    pub place: Place,
    /// The trade’s name of the pose it begins from.
    pub name: Option<String>,
    /// Angles were changed on top of it.
    pub is_changed: bool,
    pub pose: Pose,
    /// Names that there is no pose of.
    pub unknown: Vec<Placed<Line>>,
    /// A thing of the session’s equipment that is held.
    pub holds: Option<Placed<Line>>,
    pub caption: Option<Caption>,
    pub arrows: Vec<Arrow>,
}

/// The moments of a movement in their order.
#[derive(Clone, Debug, Default)]
pub struct Figure {
    pub moments: Vec<Moment>,
}

impl Figure {
    /// Which moment shows each of so many key points, from 1; 0 where none does. A figure of one moment needs
    /// no number.
    pub fn pictured(&self, points: usize) -> Vec<usize> {
        let shows = |point: usize| {
            self.moments.iter().position(|moment| match &moment.caption {
                Some(Caption::Point(number)) => number.value as usize == point,
                _ => false,
            })
        };
        let number = |point| shows(point).filter(|_| self.moments.len() > 1).map_or(0, |at| at + 1);
        (1..=points).map(number).collect()
    }
}

impl Moment {
    /// A pose by its name alone.
    pub fn of(name: &str, pose: Pose) -> Self {
        Self {
            place: Place::top_of(FileId(0)),
            name: Some(name.to_owned()),
            is_changed: false,
            pose,
            unknown: Vec::new(),
            holds: None,
            caption: None,
            arrows: Vec::new(),
        }
    }
}
