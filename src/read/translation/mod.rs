//! The texts of a session, a unit or a pack in another language, in a file beside it: `brook-leap.fr.yaml` →
//! the session as it would stand if it had been written in that language.
//!
//! The translation has the shape of its original and holds only what people read. It is laid over the
//! original's tree before that is read, so that times, floors and figures are said once.

mod edition;
mod overlay;
mod texts;
mod thing_names;

use std::collections::{BTreeMap, BTreeSet};

pub use edition::edition_mark;
pub(crate) use texts::{holds_texts, is_text};
pub use thing_names::ThingNames;

use super::desk::{Desk, FromNode};
use super::node::{Node, Value};
use super::pack_files::PackDoc;
use super::session_file::SessionDoc;
use super::unit_file::UnitDoc;
use crate::finding::Finding;
use crate::place::FileId;
use edition::note_old;
use overlay::{Overlay, note_missing};
use thing_names::names_of;

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

/// A unit in another language.
#[derive(Clone, Debug)]
pub struct TranslatedUnit {
    pub language: String,
    pub file: FileId,
    /// The path of the original inside the pack.
    pub original: String,
    pub doc: UnitDoc,
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

/// Whether a file of a pack is no translation of another.
pub fn is_original(path: &str, paths: &BTreeSet<String>) -> bool {
    original_of(path, paths).is_none()
}

/// The original of a translation, where it is in the pack.
pub(super) fn original_of(path: &str, paths: &BTreeSet<String>) -> Option<String> {
    let (original, _) = translation_of(path)?;
    paths.contains(&original).then_some(original)
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

/// Lays the texts of a unit’s translation over it: what it and its days without school are called.
pub fn read_unit_translation(
    (path, language): (&str, &str),
    original: &Node,
    translation: &Node,
    findings: &mut Vec<Finding>,
) -> Option<TranslatedUnit> {
    let is_old = note_old(original, translation, findings);
    let doc = read_over(original, translation, findings);
    if let Value::Fields(fields) = &translation.value
        && let Some(things) = fields.iter().find(|field| field.key == "things")
    {
        let says = "A unit’s things are called as in the translations of equipment and sessions.";
        let way_out = "Put the names into the translation of pack.yaml, under “things”.";
        findings.push(Finding::problem("translation-too-much", things.key_place, says, way_out));
    }
    Some(TranslatedUnit {
        language: language.to_owned(),
        file: translation.place.file,
        original: path.to_owned(),
        doc: doc?,
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
