//! Which edition of its original a translation translates, and whether that is still the newest.

use super::texts::is_text;
use super::{field, text_of};
use crate::finding::{Finding, Severity};
use crate::place::Place;
use crate::quantity::{Date, Quantity};
use crate::read::node::{Field, Node, Value};

/// Whether the original is newer than what the translation says it translates: an edition mark, or a date
/// that the original’s standing must not be later than.
pub(super) fn note_old(original: &Node, translation: &Node, findings: &mut Vec<Finding>) -> bool {
    let mark = edition_mark(original);
    let date = |node: Option<&Node>| Date::read_quantity(node.and_then(text_of)?.trim()).ok();
    let said = field(translation, "translates");
    let seen = field(original, "standing").and_then(|standing| field(standing, "on"));
    let is_old = match date(said) {
        Some(said) => date(seen).is_some_and(|seen| seen > said),
        None => said.and_then(text_of).is_none_or(|text| text.trim() != mark),
    };
    if is_old {
        let says = match said {
            Some(_) => "The original has changed since this was translated.",
            None => "It is not said which edition of the original this translates.",
        };
        let place = said.map_or(Place::top_of(translation.place.file), |node| node.place);
        findings.push(Finding {
            code: "translation-old",
            severity: Severity::Warning,
            place,
            says: says.into(),
            way_out: format!(
                "Go through the texts again, then write “translates: {mark}”. This mark changes with the original’s texts."
            ),
        });
    }
    is_old
}

/// A short mark of the texts of a session, by the hash FNV-1a (Fowler, Noll and Vo; 32 bits): another
/// text gives another mark. It begins with a letter, so that YAML never takes it for a number.
pub fn edition_mark(original: &Node) -> String {
    let mut hash = 0x811c_9dc5_u32;
    hash_texts(original, "", "", &mut hash);
    format!("e{hash:08x}")
}

fn hash_texts(node: &Node, key: &str, group: &str, hash: &mut u32) {
    match &node.value {
        Value::Fields(fields) => {
            // By name: keys that only change places leave the texts as they were.
            let mut fields: Vec<&Field> = fields.iter().collect();
            fields.sort_by(|a, b| a.key.cmp(&b.key));
            for field in fields {
                hash_texts(&field.node, &field.key, key, hash);
            }
        }
        Value::List(entries) => {
            for entry in entries {
                hash_texts(entry, key, group, hash);
            }
        }
        Value::Scalar(text) if is_text(key, group) => {
            for byte in text.bytes().chain([0]) {
                *hash = (*hash ^ u32::from(byte)).wrapping_mul(0x0100_0193);
            }
        }
        Value::Scalar(_) | Value::Empty => {}
    }
}
