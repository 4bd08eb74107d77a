//! The documents of a pack, side by side; then what is laid over others: borrowed sessions, translations.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use rayon::prelude::*;

use super::before::Footing;
use super::desk::{Desk, FromNode};
use super::neighbours::{borrow, open_neighbours};
use super::node::Node;
use super::outcome::{Outcome, ReadFile, held_bytes, read_one, text_of};
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

/// The files that sessions are resolved with.
const RESOLVED_WITH: [&str; 3] = ["pack.yaml", "equipment.yaml", "poses.yaml"];

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
    let mut wanted: Vec<(FileId, &Entry)> = entries
        .iter()
        .filter(|entry| {
            let is_document = is_yaml(&entry.path) && !is_set_aside(&entry.path);
            entry.kind == EntryKind::Closed || is_document && is_asked(&entry.path)
        })
        .map(|entry| (FileId(0), entry))
        .collect();
    let mut before = before;
    number_files(&mut wanted, before.as_deref_mut(), documents);
    let originals: BTreeSet<String> =
        wanted.iter().filter_map(|(_, entry)| original_of(&entry.path, &documents.paths)).collect();
    let mut trees: BTreeMap<String, Node> = BTreeMap::new();
    let (mut translations, mut borrowing) = (Vec::new(), Vec::new());
    let shelf = read_shelf(source, &wanted);
    let paths = documents.paths.clone();
    let footing = |path: &str| Footing {
        is_translation: original_of(path, &paths).is_some(),
        is_original: originals.contains(path),
        uses_shelf: false,
        shelf: None,
    };
    let shelf_bytes = held_at(source, &wanted, "shared.yaml");
    if let Some(before) = &mut before {
        let shared = RESOLVED_WITH.iter().map(|path| held_at(source, &wanted, path));
        before.rest_on(shared.collect());
    }
    // Files are read side by side; `collect` keeps them in the order of their paths.
    let read: Vec<_> = wanted
        .par_iter()
        .map(|(file, entry)| {
            let footing = Footing { shelf: shelf_bytes.clone(), ..footing(&entry.path) };
            let known = before.as_deref().map(|before| (before, &footing));
            let mut read = read_one(source, *file, entry, (documents, &shelf), known);
            if !originals.contains(&entry.path) {
                // Trees are large, and most are of no further use.
                read.tree = None;
            }
            (*file, entry, read)
        })
        .collect();
    if let Some(before) = before {
        for (file, entry, read) in &read {
            if let Some(bytes) = held_bytes(source, entry) {
                let (uses_shelf, shelf) = (read.uses_shelf, shelf_bytes.clone());
                let footing = Footing { uses_shelf, shelf, ..footing(&entry.path) };
                before.note(*file, bytes, footing, read);
            }
        }
    }
    for (file, entry, ReadFile { text, outcome, findings, tree, .. }) in read {
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

/// Gives every file its number, in the order of their paths.
fn number_files(
    wanted: &mut [(FileId, &Entry)],
    before: Option<&mut ReadBefore>,
    documents: &mut Documents,
) {
    let paths: Vec<&str> = wanted.iter().map(|(_, entry)| entry.path.as_str()).collect();
    let numbers = match before {
        Some(before) => before.number(&paths),
        None => (0..).map(FileId).take(paths.len()).collect(),
    };
    for ((file, entry), number) in wanted.iter_mut().zip(numbers) {
        *file = number;
        documents.files.add_as(number, entry.path.clone(), "");
    }
}

/// The bytes of one of the files, where it is there and its source holds it still.
fn held_at(source: &dyn Source, wanted: &[(FileId, &Entry)], path: &str) -> Option<Arc<[u8]>> {
    let (_, entry) = wanted.iter().find(|(_, entry)| entry.path == path)?;
    held_bytes(source, entry)
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
