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

    /// The moments with the one first that stands for the whole where there is room for one: the moment with
    /// an arrow, since it tells where the movement goes; else the one in the middle.
    pub fn by_weight(&self) -> Vec<&Moment> {
        let arrowed = self.moments.iter().position(|moment| !moment.arrows.is_empty());
        let chief = arrowed.unwrap_or(self.moments.len() / 2);
        let mut moments: Vec<&Moment> = self.moments.iter().collect();
        if chief < moments.len() {
            let chief = moments.remove(chief);
            moments.insert(0, chief);
        }
        moments
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::figure::pose::{Part, Way};

    #[test]
    fn the_moment_with_an_arrow_stands_for_the_whole_else_the_middle_one() {
        let named = |name: &str| Moment::of(name, Pose::default());
        let mut figure = Figure { moments: ["a", "b", "c"].map(named).to_vec() };
        let first = |figure: &Figure| figure.by_weight()[0].name.clone().unwrap_or_default();
        assert_eq!(first(&figure), "b");
        figure.moments[2].arrows.push(Arrow { of: Part::Hands, way: Way::Up });
        assert_eq!(first(&figure), "c");
        assert_eq!(figure.by_weight().len(), 3);
        assert!(Figure::default().by_weight().is_empty());
    }
}
