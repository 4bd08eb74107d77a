//! A YAML file as a tree of values, each with its place, before anyone has asked what they mean.
//!
//! The tree keeps scalars as the teacher wrote them ("No" stays "No", "1.50" stays "1.50"): what a
//! value means is decided by the field that asks for it, never guessed from its look.

use std::fmt;

use serde::de::{Deserialize, Deserializer, MapAccess, SeqAccess, Visitor};
use serde_saphyr::Spanned;

use crate::place::{FileId, Place};

/// One value and its place.
#[derive(Clone, Debug)]
pub struct Node {
    pub place: Place,
    pub value: Value,
}

/// What a file can hold.
#[derive(Clone, Debug)]
pub enum Value {
    /// Nothing was written after the key.
    Empty,
    Scalar(String),
    List(Vec<Node>),
    /// Keys in the order they were written.
    Fields(Vec<Field>),
}

/// A key, its place and its value.
#[derive(Clone, Debug)]
pub struct Field {
    pub key: String,
    pub key_place: Place,
    pub node: Node,
}

impl Value {
    /// "a list", in a sentence for the teacher.
    pub const fn kind(&self) -> &'static str {
        match self {
            Self::Empty => "nothing",
            Self::Scalar(_) => "a single value",
            Self::List(_) => "a list",
            Self::Fields(_) => "a group of keys",
        }
    }
}

/// The tree as the YAML package hands it over: places are byte offsets in one text.
pub(super) struct Raw(Spanned<RawValue>);

enum RawValue {
    Empty,
    /// Text that the package has already unquoted.
    Text(String),
    /// A number or yes/no word: its spelling is taken from the file.
    AsWritten,
    List(Vec<Raw>),
    Fields(Vec<(Spanned<RawKey>, Raw)>),
}

struct RawKey(RawValue);

impl<'de> Deserialize<'de> for Raw {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        Spanned::deserialize(deserializer).map(Raw)
    }
}

impl<'de> Deserialize<'de> for RawValue {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(RawVisitor)
    }
}

impl<'de> Deserialize<'de> for RawKey {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        RawValue::deserialize(deserializer).map(RawKey)
    }
}

struct RawVisitor;

impl<'de> Visitor<'de> for RawVisitor {
    type Value = RawValue;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a value")
    }
    fn visit_bool<E>(self, _: bool) -> Result<RawValue, E> {
        Ok(RawValue::AsWritten)
    }
    fn visit_i64<E>(self, _: i64) -> Result<RawValue, E> {
        Ok(RawValue::AsWritten)
    }
    fn visit_u64<E>(self, _: u64) -> Result<RawValue, E> {
        Ok(RawValue::AsWritten)
    }
    fn visit_i128<E>(self, _: i128) -> Result<RawValue, E> {
        Ok(RawValue::AsWritten)
    }
    fn visit_u128<E>(self, _: u128) -> Result<RawValue, E> {
        Ok(RawValue::AsWritten)
    }
    fn visit_f64<E>(self, _: f64) -> Result<RawValue, E> {
        Ok(RawValue::AsWritten)
    }
    fn visit_str<E>(self, text: &str) -> Result<RawValue, E> {
        Ok(RawValue::Text(text.to_owned()))
    }
    fn visit_string<E>(self, text: String) -> Result<RawValue, E> {
        Ok(RawValue::Text(text))
    }
    fn visit_unit<E>(self) -> Result<RawValue, E> {
        Ok(RawValue::Empty)
    }
    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<RawValue, A::Error> {
        let mut list = Vec::new();
        while let Some(item) = items.next_element()? {
            list.push(item);
        }
        Ok(RawValue::List(list))
    }
    fn visit_map<A: MapAccess<'de>>(self, mut entries: A) -> Result<RawValue, A::Error> {
        let mut fields = Vec::new();
        while let Some(entry) = entries.next_entry()? {
            fields.push(entry);
        }
        Ok(RawValue::Fields(fields))
    }
}

impl Raw {
    /// The tree with places in `file`, whose text was `text`.
    pub(super) fn into_node(self, file: FileId, text: &str) -> Node {
        let place = place_of(&self.0, file, text);
        let value = match self.0.value {
            RawValue::Empty => Value::Empty,
            RawValue::Text(words) => Value::Scalar(words),
            RawValue::AsWritten => Value::Scalar(written(&self.0.defined, text).to_owned()),
            RawValue::List(items) => {
                Value::List(items.into_iter().map(|item| item.into_node(file, text)).collect())
            }
            RawValue::Fields(fields) => Value::Fields(
                fields.into_iter().map(|(key, node)| into_field(key, node, file, text)).collect(),
            ),
        };
        Node { place, value }
    }
}

fn into_field(key: Spanned<RawKey>, node: Raw, file: FileId, text: &str) -> Field {
    let key_place = place_of(&key, file, text);
    let key = match key.value.0 {
        RawValue::Text(words) => words,
        _ => written(&key.defined, text).to_owned(),
    };
    Field { key, key_place, node: node.into_node(file, text) }
}

fn place_of<T>(spanned: &Spanned<T>, file: FileId, text: &str) -> Place {
    let (start, end) = byte_range(&spanned.referenced, text);
    let small = |at: usize| u32::try_from(at).unwrap_or(u32::MAX);
    Place { file, start: small(start), end: small(end) }
}

fn written<'t>(location: &serde_saphyr::Location, text: &'t str) -> &'t str {
    let (start, end) = byte_range(location, text);
    text.get(start..end).unwrap_or_default().trim()
}

fn byte_range(location: &serde_saphyr::Location, text: &str) -> (usize, usize) {
    let span = location.span();
    let start = span.byte_offset().and_then(|at| usize::try_from(at).ok()).unwrap_or(0);
    let length = span.byte_len().and_then(|count| usize::try_from(count).ok()).unwrap_or(0);
    (start.min(text.len()), (start + length).min(text.len()))
}
