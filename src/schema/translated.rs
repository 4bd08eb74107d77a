//! The schema of a translation: the texts of its original, each optional, and what things are called.

use serde_json::{Map, Value, json};

use super::DIALECT;
use super::write::{Groups, describe, keywords};
use crate::read::shape::{Group, Shape};
use crate::read::translation::{holds_texts, is_text};

/// The schema of a file that holds the texts of a group in another language.
pub(super) fn translated_document(group: &'static Group) -> Value {
    let mut whole = texts_of(group, "");
    if let Some(Value::Object(properties)) = whole.get_mut("properties") {
        properties.insert("translates".into(), translates());
        properties.insert("things".into(), things());
    }
    whole.insert("$schema".into(), json!(DIALECT));
    whole.insert("title".into(), json!(format!("{} in another language", group.whole)));
    let about =
        "The texts of the original, in the same places and order; all else is taken from it.";
    whole.insert("description".into(), json!(about));
    whole.insert("$defs".into(), json!({"Thing": thing()}));
    Value::Object(whole)
}

/// The keys of a group that hold texts or groups of texts. `within` is the key that it stands under.
fn texts_of(group: &'static Group, within: &str) -> Map<String, Value> {
    let mut properties = Map::new();
    for key in group.keys {
        let shape = (key.shape)();
        let mut words = match shape.group() {
            _ if is_text(key.name, within) => {
                keywords(&written_out(shape.clone()), &mut Groups::new())
            }
            Some(inner) if holds_texts(key.name) => one_or_list(texts_of(inner, key.name)),
            _ => continue,
        };
        words.insert("description".into(), json!(describe(key, &Shape::YesNo)));
        properties.insert(key.name.into(), Value::Object(words));
    }
    let mut fields = Map::new();
    fields.insert("type".into(), json!("object"));
    fields.insert("properties".into(), Value::Object(properties));
    fields.insert("additionalProperties".into(), json!(false));
    fields
}

/// A translation writes texts out that its original takes from shared.yaml.
fn written_out(shape: Shape) -> Shape {
    match shape {
        Shape::Either(single, _) => *single,
        Shape::List(inner) => Shape::List(Box::new(written_out(*inner))),
        Shape::Maybe(inner) => Shape::Maybe(Box::new(written_out(*inner))),
        other => other,
    }
}

fn one_or_list(entry: Map<String, Value>) -> Map<String, Value> {
    let mut both = entry.clone();
    both.insert("type".into(), json!(["array", "null", "object"]));
    both.insert("items".into(), Value::Object(entry));
    both
}

fn translates() -> Value {
    json!({
        "type": "string",
        "pattern": "^\\s*(?:e[0-9a-f]{8}|[0-9]{4}-[0-9]{2}-[0-9]{2})\\s*$",
        "description": "The edition of the original that this translates: the mark that inspect gives, or a date.",
        "examples": ["e388ed6b4", "2026-09-14"],
    })
}

fn things() -> Value {
    json!({
        "type": ["object", "null"],
        "description": "What the equipment is called, by its name in the original.",
        "additionalProperties": {"$ref": "#/$defs/Thing"},
    })
}

fn thing() -> Value {
    let line = json!({"type": "string", "pattern": "\\S"});
    json!({
        "description": "A name alone, or a group that says more.",
        "type": ["string", "object"],
        "properties": {
            "name": line, "thing": line, "plural": line, "note": line,
            "instead": {"type": "array", "items": {"$ref": "#/$defs/Thing"}},
        },
        "additionalProperties": false,
    })
}
