//! The reader's desk: turns nodes into values and collects every finding on the way, so that a
//! teacher sees all slips of a file at once.

use super::node::{Field, Node, Value};
use super::shape::Shape;
use super::text::LONGEST;
use crate::finding::Finding;
use crate::place::{Place, Placed};
use crate::quantity::{
    Ages, Angle, ClockTime, Date, Decimal, Duration, Length, Mass, Quantity, Range, Speed, Volume,
};

/// Collects the findings of one file.
#[derive(Debug, Default)]
pub struct Desk {
    pub findings: Vec<Finding>,
}

impl Desk {
    /// Notes that a value is not what its key asks for.
    pub fn refuse(&mut self, place: Place, says: impl Into<String>, way_out: impl Into<String>) {
        self.findings.push(Finding::problem("value-unfit", place, says, way_out));
    }

    fn refuse_kind(&mut self, node: &Node, asked: &str) {
        let says = format!("Here stands {}, but {asked} is asked for.", node.value.kind());
        let has_colon = matches!(node.value, Value::Fields(_)) && asked.contains("text");
        let more =
            if has_colon { " If the text has a colon, put it in quotation marks." } else { "" };
        self.refuse(node.place, says, format!("Write {asked}.{more}"));
    }
}

/// A value that can be read from a node. Reading never stops at the first fault: it notes the
/// fault at the desk and gives `None`.
pub trait FromNode: Sized {
    fn from_node(node: &Node, desk: &mut Desk) -> Option<Self>;

    /// What the value is where its key is not written; `None` where the key is needed.
    fn when_absent() -> Option<Self> {
        None
    }

    /// What may be written for it: the schema is made from this, so it says what `from_node` takes.
    fn shape() -> Shape;
}

impl<T: FromNode> FromNode for Option<T> {
    fn from_node(node: &Node, desk: &mut Desk) -> Option<Self> {
        match node.value {
            Value::Empty => Some(None),
            _ => T::from_node(node, desk).map(Some),
        }
    }
    fn when_absent() -> Option<Self> {
        Some(None)
    }
    fn shape() -> Shape {
        Shape::Maybe(Box::new(T::shape()))
    }
}

impl<T: FromNode> FromNode for Vec<T> {
    /// A single entry may stand without its list marks; entries that can't be read are left out,
    /// since their findings stop the pack anyway.
    fn from_node(node: &Node, desk: &mut Desk) -> Option<Self> {
        Some(match &node.value {
            Value::Empty => Vec::new(),
            Value::List(items) => {
                // Parts are large: room for twice as many would stay empty in every session.
                let mut all = Self::with_capacity(items.len());
                all.extend(items.iter().filter_map(|item| T::from_node(item, desk)));
                all
            }
            _ => T::from_node(node, desk).into_iter().collect(),
        })
    }
    fn when_absent() -> Option<Self> {
        Some(Vec::new())
    }
    fn shape() -> Shape {
        Shape::List(Box::new(T::shape()))
    }
}

impl<T: FromNode> FromNode for Placed<T> {
    fn from_node(node: &Node, desk: &mut Desk) -> Option<Self> {
        T::from_node(node, desk).map(|value| Placed::new(value, node.place))
    }
    fn shape() -> Shape {
        T::shape()
    }
}

impl FromNode for String {
    fn from_node(node: &Node, desk: &mut Desk) -> Option<Self> {
        read_scalar(node, desk, "text").map(|text| text.trim_end().to_owned())
    }
    fn shape() -> Shape {
        Shape::Text { most: LONGEST }
    }
}

impl FromNode for bool {
    fn from_node(node: &Node, desk: &mut Desk) -> Option<Self> {
        match read_scalar(node, desk, "true or false")? {
            "true" | "yes" | "True" | "Yes" => Some(true),
            "false" | "no" | "False" | "No" => Some(false),
            other => {
                desk.refuse(
                    node.place,
                    format!("“{other}” is neither yes nor no."),
                    "Write true or false.",
                );
                None
            }
        }
    }
    fn shape() -> Shape {
        Shape::YesNo
    }
}

impl FromNode for u32 {
    fn from_node(node: &Node, desk: &mut Desk) -> Option<Self> {
        let text = read_scalar(node, desk, "a whole number, such as 5")?.trim();
        match text.parse::<u32>() {
            Ok(count) if count <= 1000 => Some(count),
            _ => {
                let says = format!("“{text}” is not a whole number from 0 to 1000.");
                desk.refuse(node.place, says, "Write figures only, such as 5.");
                None
            }
        }
    }
    fn shape() -> Shape {
        Shape::Count { least: 0, most: 1000 }
    }
}

macro_rules! quantities_from_nodes {
    ($($quantity:ty),*) => {$(
        impl FromNode for $quantity {
            fn from_node(node: &Node, desk: &mut Desk) -> Option<Self> {
                read_quantity(node, desk)
            }
            fn shape() -> Shape {
                Shape::Quantity(<$quantity as Quantity>::form())
            }
        }
    )*};
}
quantities_from_nodes!(
    Ages,
    Angle,
    ClockTime,
    Date,
    Decimal,
    Duration,
    Length,
    Mass,
    Range<Length>,
    Range<Mass>,
    Speed,
    Volume
);

fn read_quantity<Q: Quantity>(node: &Node, desk: &mut Desk) -> Option<Q> {
    let text = read_scalar(node, desk, Q::ASKED)?;
    match Q::read_quantity(text) {
        Ok(quantity) => Some(quantity),
        Err(fault) => {
            desk.refuse(node.place, format!("{}.", fault.says), fault.way_out);
            None
        }
    }
}

/// The text of a single value; anything else is refused in the words of `asked`.
pub(crate) fn read_scalar<'n>(node: &'n Node, desk: &mut Desk, asked: &str) -> Option<&'n str> {
    match &node.value {
        Value::Scalar(text) => Some(text),
        Value::Empty => {
            desk.refuse(
                node.place,
                "Nothing is written here.",
                format!("Write {asked}, or take the key out."),
            );
            None
        }
        _ => {
            desk.refuse_kind(node, asked);
            None
        }
    }
}

/// The keys of a group; anything else is refused.
pub(crate) fn read_fields<'n>(node: &'n Node, desk: &mut Desk, asked: &str) -> Option<&'n [Field]> {
    if let Value::Fields(fields) = &node.value {
        return Some(fields);
    }
    desk.refuse_kind(node, asked);
    None
}

/// Notes every key that nothing asks for, with the nearest right word.
pub(crate) fn refuse_unknown_keys(fields: &[Field], known: &[&str], whole: &str, desk: &mut Desk) {
    for field in fields.iter().filter(|field| !known.contains(&field.key.as_str())) {
        let says = format!("“{}” is not a key of {whole}.", field.key);
        let way_out = match nearest(&field.key, known) {
            _ if field.key.starts_with(|c: char| c.is_ascii_digit()) => {
                "A comma begins a new key here: write decimals with a point, such as 1.5 m.".into()
            }
            // {note: Lay it flat, and straight}
            _ if field.key.contains(' ') && matches!(field.node.value, Value::Empty) => {
                "A comma ends an entry between { and }: put a text that has one in quotation marks."
                    .into()
            }
            Some(word) => format!("Did you mean “{word}”?"),
            None => format!("The keys here are: {}.", known.join(", ")),
        };
        desk.findings.push(Finding::problem("key-unknown", field.key_place, says, way_out));
    }
}

/// Whether a key is there after all, under a name that is a slip of it.
pub(crate) fn is_misspelt(key: &str, fields: &[Field], known: &[&str]) -> bool {
    fields
        .iter()
        .filter(|field| !known.contains(&field.key.as_str()))
        .any(|field| nearest(&field.key, known) == Some(key))
}

/// Notes that a key that is needed is not there.
pub(crate) fn miss_key(node: &Node, key: &str, whole: &str, desk: &mut Desk) {
    let place = Place { end: node.place.start, ..node.place };
    let says = format!("“{key}” is missing from {whole}.");
    let way_out = format!("Add a line “{key}: …” to this group.");
    desk.findings.push(Finding::problem("key-missing", place, says, way_out));
}

/// The nearest of the right words, if one is near enough to be a slip of it.
pub fn nearest<'w>(word: &str, words: &[&'w str]) -> Option<&'w str> {
    let plain = |text: &str| text.to_lowercase().replace([' ', '-', '_'], "");
    let word = plain(word);
    words
        .iter()
        .map(|right| (strsim::jaro_winkler(&word, &plain(right)), *right))
        .filter(|(likeness, _)| *likeness >= 0.82)
        .max_by(|a, b| a.0.total_cmp(&b.0))
        .map(|(_, right)| right)
}
