//! What one file of a pack comes to, by its path: a document, or a tree that is laid over another later.

use std::sync::Arc;

use super::before::Footing;
use super::desk::{Desk, FromNode};
use super::figure_file::PosesDoc;
use super::neighbours::is_borrowing;
use super::node::Node;
use super::pack_files::{CurriculumDoc, EquipmentDoc, PackDoc};
use super::paths::{is_unit, misnamed};
use super::session_file::SessionDoc;
use super::shared_file::{SharedDoc, note_twice};
use super::shelf::{Shelf, is_used_in};
use super::translation::original_of;
use super::unit_file::UnitDoc;
use super::{Documents, ReadBefore, yaml};
use crate::finding::Finding;
use crate::pack::Session;
use crate::place::{FileId, Place};
use crate::source::{Entry, EntryKind, Source};

/// What one file came to, before it is put in its place.
#[derive(Clone, Debug)]
pub(super) enum Outcome {
    Pack(Option<Box<PackDoc>>),
    Equipment(Option<EquipmentDoc>),
    Curriculum(Option<CurriculumDoc>),
    Poses(Option<PosesDoc>),
    Shared(Option<SharedDoc>),
    Session(Option<Box<SessionDoc>>),
    /// A session that was read and resolved before.
    Resolved(Arc<Session>),
    Unit(Option<Box<UnitDoc>>),
    /// It is laid over a neighbour’s session when those are open.
    Borrowing(Box<Node>),
    /// It is laid over its original when that has been read.
    Translation(Box<Node>),
    Nothing,
}

/// One file, read.
#[derive(Clone, Debug)]
pub(super) struct ReadFile {
    pub text: Arc<str>,
    pub outcome: Outcome,
    pub findings: Vec<Finding>,
    pub tree: Option<Node>,
    /// It uses what is said once in shared.yaml.
    pub uses_shelf: bool,
}

impl ReadFile {
    /// One that came to nothing.
    fn nothing(text: Arc<str>, findings: Vec<Finding>) -> Self {
        Self { text, outcome: Outcome::Nothing, findings, tree: None, uses_shelf: false }
    }
}

/// The bytes of a file that can be read and that its source holds still.
pub(super) fn held_bytes(source: &dyn Source, entry: &Entry) -> Option<Arc<[u8]>> {
    let in_bounds = matches!(entry.kind, EntryKind::File { bytes } if bytes <= yaml::LARGEST_FILE);
    in_bounds.then(|| source.held(&entry.path))?
}

/// Reads a file; one that was read before with the same bytes is not read again.
pub(super) fn read_one(
    source: &dyn Source,
    file: FileId,
    entry: &Entry,
    (documents, shelf): (&Documents, &Shelf),
    before: Option<(&ReadBefore, &Footing)>,
) -> ReadFile {
    let known = before
        .and_then(|(before, footing)| before.find(file, &held_bytes(source, entry)?, footing));
    if let Some(known) = known {
        return known;
    }
    let text: Arc<str> = match text_of(source, file, entry) {
        Ok(text) => text.into(),
        Err(unread) => {
            return ReadFile::nothing(unread.shown.into(), vec![*unread.finding]);
        }
    };
    let mut tree = match yaml::read_tree(&text, file) {
        Ok(tree) => tree,
        Err(fault) => return ReadFile::nothing(text, vec![*fault]),
    };
    if let Some(right) = misnamed(&entry.path) {
        let says = format!("This looks like the shared file {right}, but is read as a session.");
        let way_out =
            format!("Name it {right} and put it at the top of the pack, beside pack.yaml.");
        let fault = Finding::problem("file-misnamed", Place::top_of(file), says, way_out);
        return ReadFile::nothing(text, vec![fault]);
    }
    if original_of(&entry.path, &documents.paths).is_some() {
        let outcome = Outcome::Translation(Box::new(tree));
        return ReadFile { outcome, ..ReadFile::nothing(text, Vec::new()) };
    }
    let uses_shelf = is_used_in(&tree);
    let mut desk = Desk::default();
    let outcome = match entry.path.as_str() {
        "pack.yaml" => Outcome::Pack(PackDoc::from_node(&tree, &mut desk).map(Box::new)),
        "equipment.yaml" => Outcome::Equipment(EquipmentDoc::from_node(&tree, &mut desk)),
        "curriculum.yaml" => Outcome::Curriculum(CurriculumDoc::from_node(&tree, &mut desk)),
        "poses.yaml" => Outcome::Poses(PosesDoc::from_node(&tree, &mut desk)),
        "shared.yaml" => {
            let doc = SharedDoc::from_node(&tree, &mut desk);
            if let Some(doc) = &doc {
                note_twice(doc, &mut desk.findings);
            }
            Outcome::Shared(doc)
        }
        path if is_unit(path) => Outcome::Unit(UnitDoc::from_node(&tree, &mut desk).map(Box::new)),
        _ => {
            if !shelf.fill(&mut tree, &mut desk.findings) {
                return ReadFile { uses_shelf, ..ReadFile::nothing(text, desk.findings) };
            }
            if is_borrowing(&tree) {
                let outcome = Outcome::Borrowing(Box::new(tree));
                let findings = desk.findings;
                return ReadFile { text, outcome, findings, tree: None, uses_shelf };
            }
            Outcome::Session(SessionDoc::from_node(&tree, &mut desk).map(Box::new))
        }
    };
    ReadFile { text, outcome, findings: desk.findings, tree: Some(tree), uses_shelf }
}

/// The text of a file, or why there is none.
pub(super) fn text_of(
    source: &dyn Source,
    file: FileId,
    entry: &Entry,
) -> Result<String, yaml::Unread> {
    let fault = |code, says: &str, way_out: &str| {
        let finding = Finding::problem(code, Place::top_of(file), says, way_out);
        yaml::Unread { finding: Box::new(finding), shown: String::new() }
    };
    match entry.kind {
        EntryKind::Folder => Err(fault(
            "file-unreadable",
            "This is a folder, but its name ends like a session file’s.",
            "Take “.yaml” off the folder’s name.",
        )),
        EntryKind::Closed => Err(fault(
            "file-unreadable",
            "This computer may not look into this folder, so its sessions are missing.",
            "Ask whoever looks after it to let you read it, or move it out of the pack.",
        )),
        EntryKind::NoFile => Err(fault(
            "file-unreadable",
            "This is a pipe or a device, not a file.",
            "Take it out of the pack.",
        )),
        EntryKind::LeavesPack => Err(fault(
            "link-leaves-pack",
            "This is a link to something outside the pack, and is not followed.",
            "Put a copy of the file itself into the pack.",
        )),
        EntryKind::File { bytes } if bytes > yaml::LARGEST_FILE => Err(fault(
            "file-too-much",
            &format!(
                "This file is {} MB; a session is a few pages of text.",
                bytes.div_ceil(1_000_000)
            ),
            "Check that it is a session file. Pictures and films stay in files of their own.",
        )),
        EntryKind::File { .. } => {
            let bytes = source.bytes(&entry.path).map_err(|why| {
                fault(
                    "file-unreadable",
                    &format!("This file can’t be read: {}.", lower_first(&why)),
                    "Check who may open it, and that it is not open in another program.",
                )
            })?;
            yaml::read_text(bytes, file)
        }
    }
}

fn lower_first(sentence: &str) -> String {
    let mut letters = sentence.chars();
    letters.next().map_or_else(String::new, |first| first.to_lowercase().chain(letters).collect())
}
