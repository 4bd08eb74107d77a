//! The two kinds of text in a file: one line, and prose of several paragraphs. Both are CommonMark;
//! what they mean is the business of [`crate::prose`].

use std::fmt;
use std::ops::Deref;

use super::desk::{Desk, FromNode, read_scalar};
use super::node::Node;
use super::shape::Shape;

/// One line of text; line breaks in the file count as spaces.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Line(pub String);

/// Text of one or more paragraphs.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Prose(pub String);

/// The longest text a field takes, in bytes: far more than a page of print.
pub(super) const LONGEST: usize = 20_000;

impl FromNode for Line {
    fn from_node(node: &Node, desk: &mut Desk) -> Option<Self> {
        let text = read_bounded(node, desk, "a line of text")?;
        Some(Self(text.split_whitespace().collect::<Vec<_>>().join(" ")))
    }
    fn shape() -> Shape {
        Shape::Text { most: LONGEST }
    }
}

impl FromNode for Prose {
    fn from_node(node: &Node, desk: &mut Desk) -> Option<Self> {
        read_bounded(node, desk, "text").map(|text| Self(text.trim_end().to_owned()))
    }
    fn shape() -> Shape {
        Shape::Text { most: LONGEST }
    }
}

fn read_bounded<'n>(node: &'n Node, desk: &mut Desk, asked: &str) -> Option<&'n str> {
    let text = read_scalar(node, desk, asked)?;
    if text.trim().is_empty() {
        desk.refuse(node.place, "This text is empty.", "Write it, or take the key out.");
        return None;
    }
    if text.len() > LONGEST {
        desk.refuse(
            node.place,
            format!("This text is {} characters long, more than {LONGEST}.", text.chars().count()),
            "Shorten it, or share it out over several parts.",
        );
        return None;
    }
    Some(text)
}

macro_rules! shows_its_text {
    ($($kind:ty),*) => {$(
        impl Deref for $kind {
            type Target = str;
            fn deref(&self) -> &str {
                &self.0
            }
        }
        impl fmt::Display for $kind {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str(&self.0)
            }
        }
    )*};
}
shows_its_text!(Line, Prose);
