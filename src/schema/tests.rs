use std::collections::BTreeSet;

use serde_json::Value;

use super::write::{definition_name, examples_of};
use super::{FileKind, KINDS, write_schema};
use crate::read::desk::FromNode;
use crate::read::record::record;
use crate::read::shape::{Group, Shape};
use crate::read::text::Line;

record! {
    /// A group of its own, to see that nothing but its definition puts a key into a schema.
    pub struct TrialDoc = "a trial" {
        /// The name of the trial.
        name: Line = "first",
        /// How often.
        times: Option<u32>,
    }
}

/// Every group of a kind of file, each once.
fn groups_of(kind: &FileKind) -> Vec<&'static Group> {
    let mut found: Vec<&'static Group> = vec![kind.group];
    let mut at = 0;
    while let Some(group) = found.get(at) {
        for key in group.keys {
            if let Some(inner) = (key.shape)().group()
                && !found.iter().any(|known| known.name == inner.name)
            {
                found.push(inner);
            }
        }
        at += 1;
    }
    found
}

#[test]
fn a_key_of_a_record_is_in_the_schema() {
    let schema = super::write::document(&TrialDoc::GROUP);
    assert_eq!(schema["properties"]["name"]["description"], "The name of the trial.");
    assert_eq!(schema["properties"]["name"]["examples"][0], "first");
    assert_eq!(schema["properties"]["times"]["maximum"], 1000);
    assert_eq!(schema["required"], serde_json::json!(["name"]));
    let read = crate::read::yaml::read_tree("name: first\ntimes: 2\n", crate::place::FileId(0));
    let mut desk = crate::read::desk::Desk::default();
    let read = TrialDoc::from_node(&read.expect("a tree"), &mut desk).expect("a trial");
    assert_eq!((read.name.0.as_str(), read.times), ("first", Some(2)));
}

#[test]
fn every_key_of_every_record_is_in_its_schema() {
    for kind in KINDS.iter().filter(|kind| !kind.is_translation) {
        let schema = write_schema(kind);
        for group in groups_of(kind) {
            let written = if group.name == kind.group.name {
                &schema["properties"]
            } else {
                &schema["$defs"][definition_name(group)]["properties"]
            };
            let written: BTreeSet<&str> =
                written.as_object().expect("properties").keys().map(String::as_str).collect();
            let keys: BTreeSet<&str> = group.keys.iter().map(|key| key.name).collect();
            assert_eq!(written, keys, "{}: {}", kind.name, group.name);
        }
    }
}

#[test]
fn every_key_is_described_and_every_text_has_an_example() {
    let mut lacking = Vec::new();
    for group in KINDS.iter().flat_map(groups_of) {
        for key in group.keys {
            let shape = (key.shape)();
            let is_described = key.described().ends_with(['.', '…', '?']);
            let has_example = shape.group().is_some() || !examples_of(key, &shape).is_empty();
            if !is_described || !has_example {
                lacking.push(format!("{}: {}", group.name, key.name));
            }
        }
    }
    assert!(lacking.is_empty(), "no description (with a full stop) or example: {lacking:#?}");
}

#[test]
fn no_two_kinds_share_a_name() {
    let names: BTreeSet<&str> = KINDS.iter().map(|kind| kind.name).collect();
    assert_eq!(names.len(), KINDS.len());
}

#[test]
fn no_two_groups_share_a_name() {
    for kind in KINDS {
        let groups = groups_of(kind);
        let names: BTreeSet<String> = groups.iter().map(|group| definition_name(group)).collect();
        assert_eq!(names.len(), groups.len(), "{}", kind.name);
    }
}

/// The examples are held to the readers themselves.
#[test]
fn every_example_of_a_quantity_can_be_read() {
    fn check(shape: &Shape) {
        match shape {
            Shape::Quantity(form) => {
                for example in form.examples {
                    assert!((form.tidy)(example).is_some() || form.bare.is_some(), "{example}");
                }
            }
            Shape::List(inner) | Shape::Maybe(inner) | Shape::Either(inner, _) => check(inner),
            _ => {}
        }
    }
    let groups = KINDS.iter().flat_map(groups_of);
    groups.flat_map(|group| group.keys).for_each(|key| check(&(key.shape)()));
}

#[test]
fn a_translation_holds_texts_alone() {
    let schema = write_schema(super::find_kind("translation").expect("a kind"));
    let properties = schema["properties"].as_object().expect("properties");
    for key in ["title", "warm_up", "things", "translates"] {
        assert!(properties.contains_key(key), "{key}");
    }
    for key in ["minutes", "ages", "activity", "space"] {
        assert!(!properties.contains_key(key), "{key}");
    }
    let part: &Value = &schema["properties"]["warm_up"]["properties"];
    assert!(part["how"].is_object() && part["time"].is_null());
}
