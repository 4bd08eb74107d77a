//! A session's texts in another language, in a file beside it: `brook-leap.fr.yaml` → the session as it
//! would stand if it had been written in that language.
//!
//! The translation has the shape of its original and holds only what people read. It is laid over the
//! original's tree before that is read, so that times, floors and figures are said once.

use std::collections::BTreeMap;

use super::desk::{Desk, FromNode};
use super::node::{Field, Node, Value};
use super::pack_files::PackDoc;
use super::session_file::SessionDoc;
use super::text::Line;
use crate::finding::{Finding, Severity};
use crate::place::{FileId, Place, Placed};
use crate::quantity::{Date, Quantity};

/// A session in another language.
#[derive(Clone, Debug)]
pub struct TranslatedDoc {
    /// The BCP 47 tag in the file’s name.
    pub language: String,
    pub file: FileId,
    /// The path of the original inside the pack.
    pub original: String,
    pub doc: SessionDoc,
    /// What the things are called, by their names in the original.
    pub things: BTreeMap<String, ThingNames>,
    /// The original has changed since.
    pub is_old: bool,
}

/// What a pack says once for all its sessions, in another language.
#[derive(Clone, Debug)]
pub struct TranslatedPack {
    pub language: String,
    pub doc: PackDoc,
    pub things: BTreeMap<String, ThingNames>,
}

/// What a thing is called in another language.
#[derive(Clone, Debug, Default)]
pub struct ThingNames {
    pub name: Option<Placed<Line>>,
    pub plural: Option<String>,
    pub note: Option<Placed<Line>>,
    /// Its household substitutes, in the order of the original’s.
    pub instead: Vec<ThingNames>,
}

/// The original’s path and the language of a translation’s path: `a/b.fr.yaml` → `a/b.yaml`, `fr`.
pub fn translation_of(path: &str) -> Option<(String, String)> {
    let stem = path.strip_suffix(".yaml")?;
    let (original, tag) = stem.rsplit_once('.')?;
    let primary = tag.split('-').next().unwrap_or_default();
    let is_tag = matches!(primary.len(), 2 | 3)
        && primary.bytes().all(|letter| letter.is_ascii_lowercase())
        && tag.bytes().all(|letter| letter.is_ascii_alphanumeric() || letter == b'-');
    let has_name = !original.is_empty() && !original.ends_with('/');
    (is_tag && has_name).then(|| (format!("{original}.yaml"), tag.to_owned()))
}

/// Keys whose values people read.
const TEXTS: [&str; 27] = [
    "title",
    "summary",
    "objectives",
    "success",
    "safety",
    "note",
    "why",
    "how",
    "key_points",
    "see",
    "say",
    "says",
    "easier",
    "harder",
    "landing_zone",
    "stop_and_collect",
    "criteria",
    "ask",
    "answer",
    "shows",
    "alt",
    "caption",
    "unit",
    "welcome",
    "cautions",
    "contact",
    "school",
];

/// Groups that hold such keys.
const GROUPS: [&str; 14] = [
    "warm_up",
    "technique",
    "challenge",
    "stretch",
    "cool_down",
    "faults",
    "throw",
    "measure",
    "review",
    "adaptations",
    "adult",
    "film",
    "pictures",
    "figure",
];

/// Whether the value of a key is text: every key of the adaptations is.
pub(crate) fn is_text(key: &str, group: &str) -> bool {
    group == "adaptations" || TEXTS.contains(&key)
}

/// Whether what stands under a key is a group, or a list of groups, that hold texts.
pub(crate) fn holds_texts(key: &str) -> bool {
    GROUPS.contains(&key)
}

/// Lays a translation over its original and reads the result.
pub fn read_translation(
    (path, language): (&str, &str),
    original: &Node,
    translation: &Node,
    findings: &mut Vec<Finding>,
) -> Option<TranslatedDoc> {
    let file = translation.place.file;
    let is_old = note_old(original, translation, findings);
    let doc = read_over(original, translation, findings);
    Some(TranslatedDoc {
        language: language.to_owned(),
        file,
        original: path.to_owned(),
        doc: doc?,
        things: field(translation, "things").map(names_of).unwrap_or_default(),
        is_old,
    })
}

/// Lays the texts of `pack.fr.yaml` over pack.yaml.
pub fn read_pack_translation(
    language: &str,
    original: &Node,
    translation: &Node,
    findings: &mut Vec<Finding>,
) -> Option<TranslatedPack> {
    note_old(original, translation, findings);
    Some(TranslatedPack {
        language: language.to_owned(),
        doc: read_over(original, translation, findings)?,
        things: field(translation, "things").map(names_of).unwrap_or_default(),
    })
}

/// Reads the original with the texts of the translation.
fn read_over<T: FromNode>(
    original: &Node,
    translation: &Node,
    findings: &mut Vec<Finding>,
) -> Option<T> {
    let file = translation.place.file;
    let mut overlay = Overlay { findings, missing: Vec::new() };
    let merged = overlay.merge(original, Some(translation), "", "");
    let missing = std::mem::take(&mut overlay.missing);
    note_missing(file, &missing, findings);
    let mut desk = Desk::default();
    let doc = T::from_node(&merged, &mut desk);
    // What is wrong with the original is said there.
    findings.extend(desk.findings.into_iter().filter(|finding| finding.place.file == file));
    doc
}

fn field<'n>(node: &'n Node, key: &str) -> Option<&'n Node> {
    let Value::Fields(fields) = &node.value else { return None };
    fields.iter().find(|field| field.key == key).map(|field| &field.node)
}

fn text_of(node: &Node) -> Option<&str> {
    let Value::Scalar(text) = &node.value else { return None };
    Some(text)
}

struct Overlay<'f> {
    findings: &'f mut Vec<Finding>,
    /// What of the original has no counterpart.
    missing: Vec<String>,
}

impl Overlay<'_> {
    /// The original with the translation’s texts in place of its own. `key` and `group` are those that it
    /// stands under.
    fn merge(&mut self, original: &Node, new: Option<&Node>, key: &str, group: &str) -> Node {
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
            let holds_texts = is_text(&old.key, group) || GROUPS.contains(&old.key.as_str());
            if !holds_texts {
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
            let is_known = is_text(&new.key, group) || GROUPS.contains(&new.key.as_str());
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

fn note_missing(file: FileId, missing: &[String], findings: &mut Vec<Finding>) {
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

/// Whether the original is newer than what the translation says it translates: an edition mark, or a date
/// that the original’s standing must not be later than.
fn note_old(original: &Node, translation: &Node, findings: &mut Vec<Finding>) -> bool {
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

/// What things are called, by their names in the original.
fn names_of(node: &Node) -> BTreeMap<String, ThingNames> {
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_language_stands_before_the_ending() {
        let of = |path| translation_of(path);
        assert_eq!(of("games/a.fr.yaml"), Some(("games/a.yaml".into(), "fr".into())));
        assert_eq!(of("a.en-US.yaml"), Some(("a.yaml".into(), "en-US".into())));
        assert_eq!(of("games/a.yaml"), None);
        assert_eq!(of("games/leap.part2.yaml"), None);
        assert_eq!(of("games/.fr.yaml"), None);
    }
}
