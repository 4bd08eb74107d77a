//! Shapes → JSON Schema.
//!
//! No `anyOf` is needed for “one, or a list of them, or nothing”: keywords such as `pattern`, `properties` and
//! `items` speak only of values of their own type, so they stand side by side and each fault is told where it is.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::{Map, Value, json};

use super::DIALECT;
use crate::read::shape::{Group, Key, Shape};

/// The keywords for one value, with the types it may have.
#[derive(Clone, Debug, Default)]
pub(super) struct Bag {
    types: BTreeSet<&'static str>,
    words: Map<String, Value>,
}

/// The groups that a document points at, by name, as they are met.
pub(super) type Groups = BTreeMap<String, &'static Group>;

/// The schema of a file that holds a group.
pub(super) fn document(group: &'static Group) -> Value {
    let mut met = Groups::new();
    let mut whole = fields_of(group, &mut met);
    let mut definitions = Map::new();
    // Writing a group may meet further ones.
    while let Some(name) = met.keys().find(|name| !definitions.contains_key(*name)).cloned() {
        let fields = fields_of(met[&name], &mut met);
        definitions.insert(name, Value::Object(fields));
    }
    whole.insert("$schema".into(), json!(DIALECT));
    whole.insert("title".into(), json!(group.whole));
    whole.insert("description".into(), json!(group.described()));
    whole.insert("type".into(), json!("object"));
    whole.insert("$defs".into(), Value::Object(definitions));
    Value::Object(whole)
}

/// Keys by which a group begins as one that stands elsewhere.
const BEGINS: [&str; 2] = ["use", "borrows"];

/// The keywords of a group. It asks for no type: those who point at it do.
fn fields_of(group: &'static Group, met: &mut Groups) -> Map<String, Value> {
    let mut properties = Map::new();
    for key in group.keys {
        properties.insert(key.name.into(), property(key, met));
    }
    let needed: Vec<&str> =
        group.keys.iter().filter(|key| (key.is_needed)()).map(|key| key.name).collect();
    let mut fields = Map::new();
    fields.insert("properties".into(), Value::Object(properties));
    fields.insert("additionalProperties".into(), json!(false));
    let begins = group.keys.iter().find(|key| BEGINS.contains(&key.name) && !(key.is_needed)());
    match begins {
        _ if needed.is_empty() => {}
        // What is not written here comes from there.
        Some(begins) => {
            fields.insert("if".into(), json!({"not": {"required": [begins.name]}}));
            fields.insert("then".into(), json!({"required": needed}));
        }
        None => {
            fields.insert("required".into(), json!(needed));
        }
    }
    fields
}

fn property(key: &Key, met: &mut Groups) -> Value {
    let shape = (key.shape)();
    let mut words = keywords(&shape, met);
    words.insert("description".into(), json!(describe(key, &shape)));
    let examples = examples_of(key, &shape);
    if !examples.is_empty() {
        words.insert("examples".into(), Value::Array(examples));
    }
    Value::Object(words)
}

/// The comment of the key, and how its quantity is written.
pub(super) fn describe(key: &Key, shape: &Shape) -> String {
    match asked(shape) {
        Some(asked) => format!("{} Write {asked}.", key.described()),
        None => key.described(),
    }
}

fn asked(shape: &Shape) -> Option<&'static str> {
    match shape {
        Shape::Quantity(form) => Some(form.asked),
        Shape::List(inner) | Shape::Maybe(inner) | Shape::Either(inner, _) => asked(inner),
        _ => None,
    }
}

/// Values as they could be written: the key’s own example, else those of its kind.
pub(super) fn examples_of(key: &Key, shape: &Shape) -> Vec<Value> {
    match (shape, key.example) {
        (Shape::List(inner), _) => {
            let entries = examples_of(key, inner);
            if entries.is_empty() { entries } else { vec![Value::Array(entries)] }
        }
        (Shape::Maybe(inner) | Shape::Either(inner, _), _) => examples_of(key, inner),
        (_, Some(example)) => vec![json!(example)],
        (Shape::Quantity(form), None) => form.examples.iter().map(|text| json!(text)).collect(),
        (Shape::Words(words), None) => words.iter().take(2).map(|word| json!(word)).collect(),
        (Shape::Count { least, .. }, None) => vec![json!((*least).max(3))],
        (Shape::YesNo, None) => vec![json!(true)],
        (Shape::Group(_) | Shape::Text { .. }, None) => Vec::new(),
    }
}

/// The keywords of a shape, with its types.
pub(super) fn keywords(shape: &Shape, met: &mut Groups) -> Map<String, Value> {
    let Bag { types, mut words } = bag(shape, met);
    if !types.is_empty() {
        words.insert("type".into(), json!(types));
    }
    words
}

fn bag(shape: &Shape, met: &mut Groups) -> Bag {
    match shape {
        Shape::Group(group) => point_at(group, met),
        Shape::Text { most } => text(*most),
        Shape::Count { least, most } => count(*least, *most),
        Shape::YesNo => choice(yes_no()),
        Shape::Words(words) => choice(spellings(words)),
        Shape::Quantity(form) => quantity(form),
        Shape::Maybe(inner) => or_nothing(bag(inner, met)),
        Shape::List(inner) => or_list(bag(inner, met)),
        Shape::Either(single, group) => {
            let mut both = bag(single, met);
            let keys = point_at(group, met);
            both.types.extend(keys.types);
            both.words.extend(keys.words);
            both
        }
    }
}

fn point_at(group: &'static Group, met: &mut Groups) -> Bag {
    let name = definition_name(group);
    let mut bag = Bag { types: BTreeSet::from(["object"]), ..Bag::default() };
    bag.words.insert("$ref".into(), json!(format!("#/$defs/{name}")));
    met.insert(name, group);
    bag
}

/// `PartSpaceDoc` → `PartSpace`.
pub(super) fn definition_name(group: &Group) -> String {
    group.name.trim_end_matches("Doc").to_owned()
}

/// Figures and yes/no words are text too where text is asked for.
fn text(most: usize) -> Bag {
    let mut bag = Bag { types: BTreeSet::from(["string", "number", "boolean"]), ..Bag::default() };
    bag.words.insert("pattern".into(), json!("\\S"));
    bag.words.insert("maxLength".into(), json!(most));
    bag
}

fn count(least: u32, most: u32) -> Bag {
    let mut bag = Bag { types: BTreeSet::from(["integer", "string"]), ..Bag::default() };
    bag.words.insert("minimum".into(), json!(least));
    bag.words.insert("maximum".into(), json!(most));
    bag.words.insert("pattern".into(), json!("^\\s*\\+?0*(?:1000|[0-9]{1,3})\\s*$"));
    bag
}

fn quantity(form: &crate::quantity::Form) -> Bag {
    let mut bag = Bag { types: BTreeSet::from(["string"]), ..Bag::default() };
    bag.words.insert("pattern".into(), json!(form.pattern));
    if let Some((least, most)) = form.bare {
        bag.types.insert("number");
        bag.words.insert("minimum".into(), json!(least));
        bag.words.insert("maximum".into(), json!(most));
    }
    bag
}

fn choice(words: Vec<Value>) -> Bag {
    let mut bag = Bag::default();
    bag.words.insert("enum".into(), Value::Array(words));
    bag
}

fn yes_no() -> Vec<Value> {
    let written = ["true", "false", "yes", "no", "True", "False", "Yes", "No"];
    [json!(true), json!(false)].into_iter().chain(written.map(|word| json!(word))).collect()
}

/// Each word as text, as a number where it is one, and with the straight mark of a keyboard.
fn spellings(words: &[&str]) -> Vec<Value> {
    let mut all = Vec::new();
    for word in words {
        all.push(json!(word));
        all.extend(word.parse::<u32>().ok().map(|number| json!(number)));
        if word.contains('’') {
            all.push(json!(word.replace('’', "'")));
        }
    }
    all
}

fn or_nothing(mut bag: Bag) -> Bag {
    if let Some(Value::Array(words)) = bag.words.get_mut("enum") {
        words.push(Value::Null);
    } else {
        bag.types.insert("null");
    }
    bag
}

/// One, a list of them, or nothing. A list would not be among the words of a choice, so those become a pattern.
fn or_list(one: Bag) -> Bag {
    let mut entry = one.words.clone();
    if !one.types.is_empty() {
        entry.insert("type".into(), json!(one.types));
    }
    let mut bag = one;
    if let Some(Value::Array(words)) = bag.words.remove("enum") {
        let words: Vec<&str> = words.iter().filter_map(Value::as_str).collect();
        bag.words.insert("pattern".into(), json!(format!("^\\s*(?:{})\\s*$", words.join("|"))));
        bag.types.insert("string");
    }
    bag.types.extend(["array", "null"]);
    bag.words.insert("items".into(), Value::Object(entry));
    bag
}
