//! What equipment is called in another language.

use std::collections::BTreeMap;

use super::{field, text_of};
use crate::place::Placed;
use crate::read::Line;
use crate::read::node::{Node, Value};

/// What a thing is called in another language.
#[derive(Clone, Debug, Default)]
pub struct ThingNames {
    pub name: Option<Placed<Line>>,
    pub plural: Option<String>,
    pub note: Option<Placed<Line>>,
    /// Its household substitutes, in the order of the original’s.
    pub instead: Vec<ThingNames>,
}

/// What things are called, by their names in the original.
pub(super) fn names_of(node: &Node) -> BTreeMap<String, ThingNames> {
    let Value::Fields(fields) = &node.value else { return BTreeMap::new() };
    fields.iter().map(|field| (field.key.trim().to_owned(), thing_names(&field.node))).collect()
}

/// Either a name alone, or a group with `name` (or `thing`), `plural`, `note` and `instead`.
fn thing_names(node: &Node) -> ThingNames {
    let line = |node: &Node| {
        text_of(node).map(|text| Placed::new(Line(text.trim().to_owned()), node.place))
    };
    if let Some(name) = line(node) {
        return ThingNames { name: Some(name), ..ThingNames::default() };
    }
    let instead = match field(node, "instead").map(|node| &node.value) {
        Some(Value::List(entries)) => entries.iter().map(thing_names).collect(),
        _ => Vec::new(),
    };
    ThingNames {
        name: field(node, "name").or_else(|| field(node, "thing")).and_then(line),
        plural: field(node, "plural").and_then(text_of).map(|text| text.trim().to_owned()),
        note: field(node, "note").and_then(line),
        instead,
    }
}
