//! The joints and the ways they move, and a set of angles.

use std::collections::{BTreeMap, BTreeSet};

/// A side of the body.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Side {
    Left,
    Right,
}

impl Side {
    pub const BOTH: [Self; 2] = [Self::Left, Self::Right];

    /// +1 to the left, −1 to the right, as the axis y runs.
    pub const fn sign(self) -> f64 {
        match self {
            Self::Left => 1.0,
            Self::Right => -1.0,
        }
    }

    #[must_use]
    pub const fn other(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Right => Self::Left,
        }
    }
}

/// A joint; the trunk is no joint but the lean of the whole body.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Joint {
    Trunk,
    Back,
    Head,
    Arm(Side),
    Elbow(Side),
    Wrist(Side),
    Leg(Side),
    Knee(Side),
    Foot(Side),
}

impl Joint {
    pub const fn side(self) -> Option<Side> {
        match self {
            Self::Trunk | Self::Back | Self::Head => None,
            Self::Arm(side)
            | Self::Elbow(side)
            | Self::Wrist(side)
            | Self::Leg(side)
            | Self::Knee(side)
            | Self::Foot(side) => Some(side),
        }
    }

    #[must_use]
    pub const fn mirrored(self) -> Self {
        match self {
            Self::Arm(side) => Self::Arm(side.other()),
            Self::Elbow(side) => Self::Elbow(side.other()),
            Self::Wrist(side) => Self::Wrist(side.other()),
            Self::Leg(side) => Self::Leg(side.other()),
            Self::Knee(side) => Self::Knee(side.other()),
            Self::Foot(side) => Self::Foot(side.other()),
            central => central,
        }
    }
}

/// How a joint moves. Forward is flexion (knees, elbows: bent; feet: pointed; back: rounded), sideways is
/// away from the middle (trunk, back and head: to the left), turned is outwards (or to the left).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Motion {
    Forward,
    Sideways,
    Turned,
}

/// One movement of one joint.
pub type Turn = (Joint, Motion);

/// Angles in degrees, as far as they are said.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Angles {
    said: BTreeMap<Turn, f64>,
    /// Those among them that were found for the sake of balance.
    found: BTreeSet<Turn>,
}

impl Angles {
    pub fn set(&mut self, joint: Joint, motion: Motion, degrees: f64) {
        self.said.insert((joint, motion), degrees);
    }

    /// What is said, or how it hangs at ease.
    pub fn of(&self, joint: Joint, motion: Motion) -> f64 {
        self.said.get(&(joint, motion)).copied().unwrap_or_else(|| at_ease(joint, motion))
    }

    pub fn is_said(&self, joint: Joint, motion: Motion) -> bool {
        self.said.contains_key(&(joint, motion))
    }

    pub fn is_found(&self, joint: Joint, motion: Motion) -> bool {
        self.found.contains(&(joint, motion))
    }

    pub fn mark_found(&mut self, joint: Joint, motion: Motion) {
        self.found.insert((joint, motion));
    }

    pub fn each(&self) -> impl Iterator<Item = (Turn, f64)> + '_ {
        self.said.iter().map(|(turn, degrees)| (*turn, *degrees))
    }

    /// These with others on top.
    #[must_use]
    pub fn with(mut self, others: &Self) -> Self {
        self.said.extend(&others.said);
        self
    }

    /// Left for right.
    #[must_use]
    pub fn mirrored(&self) -> Self {
        let turned = self.said.iter().map(|((joint, motion), degrees)| {
            let is_signed = joint.side().is_none() && *motion != Motion::Forward;
            ((joint.mirrored(), *motion), if is_signed { -degrees } else { *degrees })
        });
        Self { said: turned.collect(), found: BTreeSet::new() }
    }
}

/// Arms hang a little away from the sides, and elbows are never quite straight.
const fn at_ease(joint: Joint, motion: Motion) -> f64 {
    match (joint, motion) {
        (Joint::Arm(_), Motion::Sideways) => 7.0,
        (Joint::Elbow(_), Motion::Forward) => 10.0,
        (Joint::Leg(_), Motion::Sideways) => 2.0,
        (Joint::Leg(_), Motion::Turned) => 6.0,
        _ => 0.0,
    }
}
