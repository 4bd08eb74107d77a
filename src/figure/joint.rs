//! The joints and the ways they move, and a set of angles.

use std::fmt;

/// A side of the body.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
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
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
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

    /// How many there are.
    const COUNT: usize = 15;

    /// All of them, in the order of their places in a table.
    const ALL: [Self; Self::COUNT] = [
        Self::Trunk,
        Self::Back,
        Self::Head,
        Self::Arm(Side::Left),
        Self::Arm(Side::Right),
        Self::Elbow(Side::Left),
        Self::Elbow(Side::Right),
        Self::Wrist(Side::Left),
        Self::Wrist(Side::Right),
        Self::Leg(Side::Left),
        Self::Leg(Side::Right),
        Self::Knee(Side::Left),
        Self::Knee(Side::Right),
        Self::Foot(Side::Left),
        Self::Foot(Side::Right),
    ];

    const fn place(self) -> usize {
        match self {
            Self::Trunk => 0,
            Self::Back => 1,
            Self::Head => 2,
            Self::Arm(side) => 3 + side as usize,
            Self::Elbow(side) => 5 + side as usize,
            Self::Wrist(side) => 7 + side as usize,
            Self::Leg(side) => 9 + side as usize,
            Self::Knee(side) => 11 + side as usize,
            Self::Foot(side) => 13 + side as usize,
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
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Motion {
    Forward,
    Sideways,
    Turned,
}

impl Motion {
    const ALL: [Self; 3] = [Self::Forward, Self::Sideways, Self::Turned];
}

/// One movement of one joint.
pub type Turn = (Joint, Motion);

/// Movements, as bits by their places in the table.
type Turns = u64;

const TURNS: usize = Joint::COUNT * Motion::ALL.len();

/// Angles in degrees, as far as they are said. A table, not a map: finding a stance tries hundreds of them.
#[derive(Clone, Copy, PartialEq)]
pub struct Angles {
    degrees: [f64; TURNS],
    said: Turns,
    /// Those among them that were found for the sake of balance.
    found: Turns,
}

impl Default for Angles {
    fn default() -> Self {
        Self { degrees: AT_EASE, said: 0, found: 0 }
    }
}

const fn place_of(joint: Joint, motion: Motion) -> usize {
    joint.place() * Motion::ALL.len() + motion as usize
}

const fn bit_of(joint: Joint, motion: Motion) -> Turns {
    1 << place_of(joint, motion)
}

impl Angles {
    pub const fn set(&mut self, joint: Joint, motion: Motion, degrees: f64) {
        self.degrees[place_of(joint, motion)] = degrees;
        self.said |= bit_of(joint, motion);
    }

    /// These with one changed.
    #[must_use]
    pub const fn but(mut self, joint: Joint, motion: Motion, degrees: f64) -> Self {
        self.set(joint, motion, degrees);
        self
    }

    /// What is said, or how it hangs at ease.
    pub const fn of(&self, joint: Joint, motion: Motion) -> f64 {
        self.degrees[place_of(joint, motion)]
    }

    pub const fn is_said(&self, joint: Joint, motion: Motion) -> bool {
        self.said & bit_of(joint, motion) != 0
    }

    pub const fn is_found(&self, joint: Joint, motion: Motion) -> bool {
        self.found & bit_of(joint, motion) != 0
    }

    pub const fn mark_found(&mut self, joint: Joint, motion: Motion) {
        self.found |= bit_of(joint, motion);
    }

    /// Those that are said.
    pub fn each(&self) -> impl Iterator<Item = (Turn, f64)> + '_ {
        let turns = Joint::ALL.into_iter().flat_map(|joint| Motion::ALL.map(|m| (joint, m)));
        turns
            .filter(|(joint, motion)| self.is_said(*joint, *motion))
            .map(|(joint, motion)| ((joint, motion), self.of(joint, motion)))
    }

    /// These with others on top.
    #[must_use]
    pub fn with(mut self, others: &Self) -> Self {
        for ((joint, motion), degrees) in others.each() {
            self.set(joint, motion, degrees);
        }
        self
    }

    /// Left for right.
    #[must_use]
    pub fn mirrored(&self) -> Self {
        let mut turned = Self::default();
        for ((joint, motion), degrees) in self.each() {
            let is_signed = joint.side().is_none() && motion != Motion::Forward;
            turned.set(joint.mirrored(), motion, if is_signed { -degrees } else { degrees });
        }
        turned
    }
}

impl fmt::Debug for Angles {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_map().entries(self.each()).finish()
    }
}

/// Every joint of a body at ease.
const AT_EASE: [f64; TURNS] = {
    let mut table = [0.0; TURNS];
    let mut joint = 0;
    while joint < Joint::COUNT {
        let mut motion = 0;
        while motion < Motion::ALL.len() {
            let turn = (Joint::ALL[joint], Motion::ALL[motion]);
            table[place_of(turn.0, turn.1)] = at_ease(turn.0, turn.1);
            motion += 1;
        }
        joint += 1;
    }
    table
};

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
