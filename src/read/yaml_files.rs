//! The documents of a pack, side by side; then what is laid over others: borrowed sessions, translations.

use std::collections::{BTreeMap, BTreeSet};

use rayon::prelude::*;

use super::desk::{Desk, FromNode};
use super::neighbours::{borrow, open_neighbours};
use super::node::Node;
use super::outcome::{Outcome, held_bytes, read_one, text_of};
use super::paths::{is_set_aside, is_shared, is_unit, is_yaml, stands_in};
use super::session_file::SessionDoc;
use super::shelf::Shelf;
use super::translation::{
    original_of, read_pack_translation, read_translation, read_unit_translation, translation_of,
};
use super::{Documents, ReadBefore, Selection, Written, yaml};
use crate::finding::Severity;
use crate::place::FileId;
use crate::source::{Entry, EntryKind, Source};

/// Reads the files that are written in YAML and asked for.
pub(super) fn read_yaml_files(
    source: &dyn Source,
    entries: &[Entry],
    (selection, before): (&Selection, Option<&mut ReadBefore>),
    documents: &mut Documents,
) {
    let is_asked = |path: &str| match selection {
        Selection::All => true,
        // A unit is judged by its sessions, which may be anywhere.
        Selection::Only(paths) => {
            is_shared(path) || selection.has_units() || stands_in(path, paths)
        }
    };
    let wanted: Vec<(FileId, &Entry)> = entries
        .iter()
        .filter(|entry| {
            let is_document = is_yaml(&entry.path) && !is_set_aside(&entry.path);
            entry.kind == EntryKind::Closed || is_document && is_asked(&entry.path)
        })
        .map(|entry| (documents.files.add(entry.path.clone(), ""), entry))
        .collect();
    let originals: BTreeSet<String> =
        wanted.iter().filter_map(|(_, entry)| original_of(&entry.path, &documents.paths)).collect();
    let mut trees: BTreeMap<String, Node> = BTreeMap::new();
    let (mut translations, mut borrowing) = (Vec::new(), Vec::new());
    let shelf = read_shelf(source, &wanted);
    // Files are read side by side; `collect` keeps them in the order of their paths.
    let read: Vec<_> = wanted
        .par_iter()
        .map(|(file, entry)| {
            let mut read = read_one(source, *file, entry, (documents, &shelf), before.as_deref());
            if !originals.contains(&entry.path) {
                // Trees are large, and most are of no further use.
                read.3 = None;
            }
            (*file, entry, read)
        })
        .collect();
    if let Some(before) = before {
        for (file, entry, read) in &read {
            if let Some(bytes) = held_bytes(source, entry) {
                before.note(*file, bytes, read);
            }
        }
    }
    for (file, entry, (text, outcome, findings, tree)) in read {
        if let Some(tree) = tree {
            trees.insert(entry.path.clone(), tree);
        }
        documents.files.set_text(file, text);
        documents.findings.extend(findings);
        match outcome {
            Outcome::Pack(doc) => documents.pack = doc.map(|doc| Written { file, doc: *doc }),
            Outcome::Equipment(doc) => documents.equipment = doc.map(|doc| Written { file, doc }),
            Outcome::Curriculum(doc) => documents.curriculum = doc.map(|doc| Written { file, doc }),
            Outcome::Poses(doc) => documents.poses = doc.map(|doc| Written { file, doc }),
            Outcome::Shared(doc) => documents.shared = doc.map(|doc| Written { file, doc }),
            Outcome::Borrowing(tree) => borrowing.push((file, entry.path.clone(), tree)),
            Outcome::Resolved(session) => documents.resolved.push(session),
            Outcome::Session(Some(doc)) => documents.sessions.push(Written { file, doc: *doc }),
            Outcome::Translation(tree) => translations.push((entry.path.clone(), tree)),
            Outcome::Unit(Some(doc)) => documents.units.push(Written { file, doc: *doc }),
            Outcome::Session(None) | Outcome::Unit(None) | Outcome::Nothing => {}
        }
    }
    for (path, tree) in read_borrowed(source, borrowing, documents) {
        trees.insert(path, tree);
    }
    lay_translations(translations, &trees, documents);
}

/// What is said once, to be put in place while sessions are read.
fn read_shelf(source: &dyn Source, wanted: &[(FileId, &Entry)]) -> Shelf {
    let found = wanted.iter().find(|(_, entry)| entry.path == "shared.yaml");
    let Some((file, entry)) = found else { return Shelf::default() };
    text_of(source, *file, entry).map_or_else(|_| Shelf::unread(), |text| Shelf::of(&text, *file))
}

/// Reads the sessions that come from neighbours’ packs, and gives their trees by their paths.
fn read_borrowed(
    source: &dyn Source,
    borrowing: Vec<(FileId, String, Box<Node>)>,
    documents: &mut Documents,
) -> Vec<(String, Node)> {
    let pack = documents.pack.as_ref().map(|written| written.file);
    let tree = pack.and_then(|file| yaml::read_tree(&documents.files.get(file).text, file).ok());
    let (files, findings) = (&mut documents.files, &mut documents.findings);
    if tree.is_none() && documents.paths.contains("pack.yaml") {
        // Which neighbours there are is not known; what is wrong with pack.yaml is said there.
        return Vec::new();
    }
    let neighbours =
        tree.map(|tree| open_neighbours(source, &tree, files, findings)).unwrap_or_default();
    let mut trees = Vec::new();
    for (file, path, own) in borrowing {
        let Some((tree, borrowed)) = borrow(&own, &neighbours, files, findings) else { continue };
        documents.paths.extend(borrowed.pictures.keys().cloned());
        documents.pictures.extend(borrowed.pictures.clone());
        let mut desk = Desk::default();
        if let Some(doc) = SessionDoc::from_node(&tree, &mut desk) {
            documents.sessions.push(Written { file, doc });
            documents.borrowed.insert(file, borrowed);
        }
        findings.extend(desk.findings);
        trees.push((path, tree));
    }
    trees
}

/// Lays translations over their originals.
fn lay_translations(
    translations: Vec<(String, Box<Node>)>,
    trees: &BTreeMap<String, Node>,
    documents: &mut Documents,
) {
    for (path, tree) in translations {
        let Some((original, language)) = translation_of(&path) else { continue };
        let Some(of) = trees.get(&original) else { continue };
        let findings = &mut Vec::new();
        if original == "pack.yaml" {
            let pack = read_pack_translation(&language, of, &tree, findings);
            documents.pack_translations.extend(pack);
        } else if is_unit(&original) {
            let unit = read_unit_translation((&original, &language), of, &tree, findings);
            documents.unit_translations.extend(unit);
        } else {
            let session = read_translation((&original, &language), of, &tree, findings);
            documents.translations.extend(session);
        }
        let (problems, slips): (Vec<_>, Vec<_>) = std::mem::take(findings)
            .into_iter()
            .partition(|finding| finding.severity == Severity::Problem);
        documents.findings.extend(problems);
        documents.translation_slips.extend(slips);
    }
}
