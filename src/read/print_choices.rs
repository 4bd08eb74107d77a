//! What a department wants printed: `print:` in pack.yaml, whose words are those of `publish` too.

use super::desk::{Desk, FromNode};
use super::node::Node;
use super::record::{choice, record};
use super::shape::Shape;
use crate::place::Placed;

choice! {
    /// How many activity cards stand on one sheet.
    pub enum CardCount = "a number of cards that fits a sheet" {
        One = "1",
        Two = "2",
        Four = "4",
        Eight = "8",
    }
}

choice! {
    /// Which sides of the sheet the cards are on.
    pub enum Sides = "a way to print the sides of a sheet" {
        /// Fronts only.
        One = "one",
        /// Fronts and backs, for a printer that turns the sheet over like the page of a book.
        LongEdge = "long_edge",
        /// Fronts and backs, for a printer that turns the sheet over like a wall calendar.
        ShortEdge = "short_edge",
    }
}

choice! {
    /// How far letters, words and lines stand apart.
    pub enum Spacing = "a spacing this program knows" {
        Usual = "usual",
        Wide = "wide",
    }
}

choice! {
    /// Whom and how long a record sheet is for.
    pub enum RecordKind = "a record sheet this program knows" {
        Child = "child",
        Class = "class",
        Week = "week",
    }
}

/// How many sets of cards a class needs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Copies(pub u32);

impl Copies {
    /// More than any class needs; each is a file’s worth of pages.
    pub const MOST: u32 = 40;
}

impl FromNode for Copies {
    fn from_node(node: &Node, desk: &mut Desk) -> Option<Self> {
        let count = u32::from_node(node, desk)?;
        if (1..=Self::MOST).contains(&count) {
            return Some(Self(count));
        }
        let says = format!("{count} is not a number of sets from 1 to {}.", Self::MOST);
        desk.refuse(node.place, says, "Write how many children get a set of cards, such as 12.");
        None
    }
    fn shape() -> Shape {
        Shape::Count { least: 1, most: Self::MOST }
    }
}

record! {
    /// What is printed, and how.
    pub struct PrintDoc = "print" {
        /// How many cards stand on a sheet, 4 where it is not said.
        cards: Option<Placed<CardCount>>,
        /// One side, where it is not said.
        sides: Option<Placed<Sides>>,
        /// Whether there is a set in large print too.
        large_print: Option<Placed<bool>>,
        /// How far letters, words and lines stand apart.
        spacing: Option<Placed<Spacing>>,
        /// Whether there is a booklet to fold.
        booklet: Option<Placed<bool>>,
        /// Whether there is a poster of the key points.
        poster: Option<Placed<bool>>,
        /// How many numbered sets of cards there are for a class.
        copies: Option<Placed<Copies>>,
        /// Which record sheets there are, `child` where it is not said.
        record: Vec<Placed<RecordKind>>,
    }
}
