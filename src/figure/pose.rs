//! A pose as it is said: angles, what carries the body, what is held, from where it is seen.

use std::collections::BTreeSet;

use super::joint::{Angles, Side, Turn};
use super::support::Support;
use crate::read::record::choice;

choice! {
    /// From where a figure is seen.
    pub enum View = "a view" {
        Side = "side",
        Front = "front",
        Back = "back",
        /// Half from the side, half from the front.
        Corner = "corner",
        /// Facing the other way.
        OtherSide = "other side",
    }
}

choice! {
    /// Which hand holds something.
    pub enum Holding = "a hand" {
        Both = "both hands",
        Left = "left hand",
        Right = "right hand",
        Each = "each hand",
    }
}

choice! {
    /// Something drawn on the floor or behind, none of it held.
    pub enum Scene = "something to draw beside a figure" {
        Line = "line",
        Marker = "marker",
        Mat = "mat",
        Wall = "wall",
        Ball = "ball",
        Cushion = "cushion",
        ChairBeside = "chair",
        Skittles = "skittles",
    }
}

choice! {
    /// What an arrow starts at.
    pub enum Part = "a part of the body for an arrow" {
        Body = "body",
        Hands = "hands",
        Hand = "hand",
        Feet = "feet",
        Foot = "foot",
        Knees = "knees",
        Knee = "knee",
        Head = "head",
        Thing = "thing",
    }
}

choice! {
    /// Where an arrow points.
    pub enum Way = "the way of an arrow" {
        Forward = "forward",
        Back = "back",
        Up = "up",
        Down = "down",
        ForwardUp = "forward and up",
        ForwardDown = "forward and down",
        BackUp = "back and up",
        Left = "left",
        Right = "right",
    }
}

/// The way something moves.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Arrow {
    pub of: Part,
    pub way: Way,
}

/// A pose.
#[derive(Clone, Debug, PartialEq)]
pub struct Pose {
    pub angles: Angles,
    pub on: Support,
    pub view: View,
    /// Which hand holds, where something is held.
    pub hold: Option<Holding>,
    pub with: Vec<Scene>,
    /// One side leads – the throwing arm, the kicking leg – so that left-handers mirror it.
    pub is_handed: bool,
}

impl Default for Pose {
    fn default() -> Self {
        Self {
            angles: Angles::default(),
            on: Support::Feet,
            view: View::Side,
            hold: None,
            with: Vec::new(),
            is_handed: false,
        }
    }
}

impl Pose {
    /// Left for right: for who throws with the left.
    #[must_use]
    pub fn mirrored(&self) -> Self {
        let hold = self.hold.map(|hold| match hold {
            Holding::Left => Holding::Right,
            Holding::Right => Holding::Left,
            other => other,
        });
        Self { angles: self.angles.mirrored(), on: self.on.mirrored(), hold, ..self.clone() }
    }

    /// The side that shows the most of an arm or leg that is told by its side.
    pub const fn lead(&self) -> Side {
        match self.on {
            Support::RightFoot => Side::Left,
            _ => Side::Right,
        }
    }
}

/// A pose so much of the way (0 to 1) from one to another; what is no angle is that of the nearer.
pub fn blend(from: &Pose, to: &Pose, share: f64) -> Pose {
    let turns: BTreeSet<Turn> =
        from.angles.each().chain(to.angles.each()).map(|(turn, _)| turn).collect();
    let mut angles = Angles::default();
    for (joint, motion) in turns {
        let (a, b) = (from.angles.of(joint, motion), to.angles.of(joint, motion));
        angles.set(joint, motion, a + (b - a) * share);
    }
    let nearer = if share < 0.5 { from } else { to };
    Pose { angles, ..nearer.clone() }
}
