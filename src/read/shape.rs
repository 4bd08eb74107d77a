//! The shape of what can be written in a file: which keys a group has, which words a choice, which form a
//! quantity. `record!` and `choice!` give it beside the reading, so that whoever writes the schema or mends a
//! file asks the readers themselves and keeps no list of their own.

use crate::quantity::Form;

/// What one value may be.
#[derive(Clone, Debug)]
pub enum Shape {
    /// A group of keys.
    Group(&'static Group),
    /// One of a fixed set of words.
    Words(&'static [&'static str]),
    /// Text of at most so many bytes.
    Text {
        most: usize,
    },
    /// A whole number.
    Count {
        least: u32,
        most: u32,
    },
    /// A number with its unit, a date, ages.
    Quantity(Form),
    YesNo,
    /// Several; one alone may stand without its list marks.
    List(Box<Shape>),
    /// May be left empty.
    Maybe(Box<Shape>),
    /// A single value, or a group that says more.
    Either(Box<Shape>, &'static Group),
}

/// A group of keys.
#[derive(Debug)]
pub struct Group {
    /// The name of its type.
    pub name: &'static str,
    /// What it is called in a sentence: “a part of the session”.
    pub whole: &'static str,
    /// Lines of its description.
    pub about: &'static [&'static str],
    /// In the order they are best written.
    pub keys: &'static [Key],
}

/// One key of a group.
#[derive(Debug)]
pub struct Key {
    pub name: &'static str,
    /// Lines of its description.
    pub about: &'static [&'static str],
    /// A value as it could be written, for texts; quantities and words have their own.
    pub example: Option<&'static str>,
    pub shape: fn() -> Shape,
    pub is_needed: fn() -> bool,
}

impl Key {
    pub fn described(&self) -> String {
        one_line(self.about)
    }
}

impl Group {
    pub fn described(&self) -> String {
        one_line(self.about)
    }

    pub fn key(&self, name: &str) -> Option<&'static Key> {
        self.keys.iter().find(|key| key.name == name)
    }
}

fn one_line(lines: &[&str]) -> String {
    lines.iter().map(|line| line.trim()).collect::<Vec<_>>().join(" ")
}

impl Shape {
    /// The group that a value of this shape, or each entry of it, may be.
    pub fn group(&self) -> Option<&'static Group> {
        match self {
            Self::Group(group) | Self::Either(_, group) => Some(group),
            Self::List(inner) | Self::Maybe(inner) => inner.group(),
            _ => None,
        }
    }
}
