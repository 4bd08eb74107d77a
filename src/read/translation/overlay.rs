//! A translation laid over the tree of its original: texts take the place of texts, all else stays.

use std::collections::BTreeMap;

use super::texts::{holds_texts, is_text};
use super::{field, text_of};
use crate::finding::{Finding, Severity};
use crate::place::{FileId, Place};
use crate::read::node::{Field, Node, Value};

pub(super) struct Overlay<'f> {
    pub(super) findings: &'f mut Vec<Finding>,
    /// What of the original has no counterpart.
    pub(super) missing: Vec<String>,
}

impl Overlay<'_> {
    /// The original with the translation’s texts in place of its own. `key` and `group` are those that it
    /// stands under.
    pub(super) fn merge(
        &mut self,
        original: &Node,
        new: Option<&Node>,
        key: &str,
        group: &str,
    ) -> Node {
        match (&original.value, new.map(|node| &node.value)) {
            (Value::Fields(fields), _) => self.merge_fields(original, fields, new, key),
            (Value::List(entries), _) => {
                let merged = self.merge_list(entries, new, key, group);
                Node { place: original.place, value: Value::List(merged) }
            }
            (Value::Scalar(_), Some(Value::Scalar(text))) if is_text(key, group) => {
                let place = new.map_or(original.place, |node| node.place);
                Node { place, value: Value::Scalar(text.clone()) }
            }
            _ => {
                let is_missing = is_text(key, group)
                    && text_of(original).is_some_and(|text| text.chars().any(char::is_alphabetic))
                    && key != "unit";
                if is_missing {
                    self.missing.push(if group.is_empty() {
                        key.to_owned()
                    } else {
                        format!("{group}: {key}")
                    });
                }
                original.clone()
            }
        }
    }

    fn merge_fields(
        &mut self,
        original: &Node,
        fields: &[Field],
        new: Option<&Node>,
        group: &str,
    ) -> Node {
        if let Some(Node { value: Value::Fields(written), .. }) = new {
            self.note_strangers(fields, written, group);
        }
        let merged = fields.iter().map(|old| {
            if !is_text(&old.key, group) && !holds_texts(&old.key) {
                return old.clone();
            }
            let counterpart = new.and_then(|node| field(node, &old.key));
            Field { node: self.merge(&old.node, counterpart, &old.key, group), ..old.clone() }
        });
        let mut merged: Vec<Field> = merged.collect();
        follow_titles(fields, &mut merged);
        Node { place: original.place, value: Value::Fields(merged) }
    }

    fn merge_list(
        &mut self,
        entries: &[Node],
        new: Option<&Node>,
        key: &str,
        group: &str,
    ) -> Vec<Node> {
        let written = match new.map(|node| &node.value) {
            Some(Value::List(written)) => written.as_slice(),
            _ => &[],
        };
        for extra in written.iter().skip(entries.len()) {
            self.too_much(extra.place, "The original has no such entry in this list.");
        }
        let pairs = entries.iter().enumerate();
        pairs.map(|(at, entry)| self.merge(entry, written.get(at), key, group)).collect()
    }

    /// Keys that the original lacks, or that are no text.
    fn note_strangers(&mut self, fields: &[Field], written: &[Field], group: &str) {
        for new in written {
            let is_known = is_text(&new.key, group) || holds_texts(&new.key);
            let is_own = group.is_empty() && matches!(new.key.as_str(), "things" | "translates");
            if is_own {
                continue;
            }
            if !is_known {
                self.too_much(
                    new.key_place,
                    "This is no text: a translation takes it from its original.",
                );
            } else if !fields.iter().any(|old| old.key == new.key) {
                self.too_much(new.key_place, "The original has no such text.");
            }
        }
    }

    fn too_much(&mut self, place: Place, says: &str) {
        let way_out = "Take it out, or add it to the original first.";
        self.findings.push(Finding::problem("translation-too-much", place, says, way_out));
    }
}

/// Equipment names its parts by their titles: those are called by the new titles too.
fn follow_titles(old: &[Field], merged: &mut [Field]) {
    let titles: BTreeMap<String, String> = old
        .iter()
        .zip(merged.iter())
        .flat_map(|(old, new)| titles_of(&old.node).into_iter().zip(titles_of(&new.node)))
        .collect();
    let Some(equipment) = merged.iter_mut().find(|field| field.key == "equipment") else { return };
    let Value::List(needs) = &mut equipment.node.value else { return };
    for need in needs {
        let Value::Fields(fields) = &mut need.value else { continue };
        let Some(parts) = fields.iter_mut().find(|field| field.key == "for") else { continue };
        if let Value::List(parts) = &mut parts.node.value {
            for part in parts {
                call_anew(part, &titles);
            }
        } else {
            call_anew(&mut parts.node, &titles);
        }
    }
}

fn call_anew(part: &mut Node, titles: &BTreeMap<String, String>) {
    if let Value::Scalar(text) = &mut part.value
        && let Some(title) = titles.get(text.trim())
    {
        title.clone_into(text);
    }
}

/// The titles of the parts below a key.
fn titles_of(node: &Node) -> Vec<String> {
    let parts = match &node.value {
        Value::List(parts) => parts.as_slice(),
        Value::Fields(_) => std::slice::from_ref(node),
        _ => &[],
    };
    let title = |part| field(part, "title").and_then(text_of).map(|text| text.trim().to_owned());
    parts.iter().filter_map(title).collect()
}

/// Says which texts have no counterpart.
pub(super) fn note_missing(file: FileId, missing: &[String], findings: &mut Vec<Finding>) {
    if missing.is_empty() {
        return;
    }
    let shown: Vec<&str> = missing.iter().take(5).map(String::as_str).collect();
    let more = if missing.len() > 5 { " …" } else { "" };
    findings.push(Finding {
        code: "translation-missing",
        severity: Severity::Warning,
        place: Place::top_of(file),
        says: format!("{} texts are not translated: {}{more}.", missing.len(), shown.join(", ")),
        way_out: "Add them in the same place and order as in the original. Until then they stay in its language.".into(),
    });
}
