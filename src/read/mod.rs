//! Stage one, read: a pack's files → [`Documents`] as they were written, every value with its place.
//!
//! Nothing is decided here but what each file *says*. Slips are collected, not thrown: the documents
//! of the files that can be read travel on beside the findings of those that can't.

mod before;
mod neighbours;
mod part_time;
mod paths;
mod plain_tree;
mod shelf;
pub(crate) mod text;

pub(crate) mod desk;
pub(crate) mod node;
pub(crate) mod record;
pub mod shape;

pub(crate) mod yaml;

pub mod allowance_file;
pub mod compendium;
pub mod figure_file;
pub mod pack_files;
pub mod part_file;
pub mod print_choices;
pub mod session_file;
pub mod shared_file;
pub mod translation;
pub mod unit_file;
pub mod words;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use rayon::prelude::*;

pub use before::ReadBefore;
pub use desk::nearest;
pub use neighbours::BorrowedDoc;
pub use part_time::PartTime;
pub use text::{Line, Prose};

use crate::finding::{Finding, Severity};
use crate::place::{FileId, Files, Place};
use crate::quantity::Date;
use crate::source::{Entry, EntryKind, Source};
use desk::{Desk, FromNode};
use figure_file::PosesDoc;
use neighbours::{borrow, is_borrowing, open_neighbours};
use node::Node;
use pack_files::{CurriculumDoc, EquipmentDoc, PackDoc};
use paths::{is_set_aside, is_shared, is_unit, is_yaml, misnamed, stands_in};
use session_file::SessionDoc;
use shared_file::{SharedDoc, note_twice};
use shelf::Shelf;
use translation::{
    TranslatedDoc, TranslatedPack, read_pack_translation, read_translation, translation_of,
};
use unit_file::UnitDoc;

/// A document and the file it stands in.
#[derive(Clone, Debug)]
pub struct Written<T> {
    pub file: FileId,
    pub doc: T,
}

/// Everything a pack's files say.
#[derive(Debug)]
pub struct Documents {
    /// What the pack is called where pack.yaml gives no title.
    pub name: String,
    pub today: Date,
    pub files: Files,
    pub pack: Option<Written<PackDoc>>,
    pub equipment: Option<Written<EquipmentDoc>>,
    pub curriculum: Option<Written<CurriculumDoc>>,
    /// The pack’s own poses.
    pub poses: Option<Written<PosesDoc>>,
    /// What is said once and used by name.
    pub shared: Option<Written<SharedDoc>>,
    /// The sessions that came from a neighbour’s pack.
    pub borrowed: BTreeMap<FileId, BorrowedDoc>,
    /// In the order of their paths.
    pub sessions: Vec<Written<SessionDoc>>,
    /// In the order of their paths.
    pub units: Vec<Written<UnitDoc>>,
    /// Sessions in other languages, in the order of their paths.
    pub translations: Vec<TranslatedDoc>,
    /// What pack.yaml says, in other languages.
    pub pack_translations: Vec<TranslatedPack>,
    /// What a rule tells of them.
    pub translation_slips: Vec<Finding>,
    /// The bytes of every PNG and JPEG in the pack, by path.
    pub pictures: BTreeMap<String, Arc<[u8]>>,
    /// The files of the pack's own look, by path below its `look` folder.
    pub look: BTreeMap<String, Arc<[u8]>>,
    /// Every file of the pack, so that links can be followed.
    pub paths: BTreeSet<String>,
    pub findings: Vec<Finding>,
    /// All sessions were asked for, not only some.
    pub is_whole: bool,
}

/// Which session files of a pack are asked for.
#[derive(Clone, Debug, Default)]
pub enum Selection {
    #[default]
    All,
    /// Only those at these paths inside the pack, or in these folders.
    Only(BTreeSet<String>),
}

impl Selection {
    /// Whether a file is among those that were named, not only read with them.
    pub fn names(&self, path: &str) -> bool {
        match self {
            Self::All => true,
            Self::Only(paths) => stands_in(path, paths),
        }
    }

    /// Whether a unit is asked for: all sessions are then read, since it is judged by them.
    fn has_units(&self) -> bool {
        let is_of_units = |path: &String| path == "units" || is_unit(path);
        matches!(self, Self::Only(paths) if paths.iter().any(is_of_units))
    }

    /// Whether what was found in the file at a path is to be told.
    pub fn asks_for(&self, path: &str) -> bool {
        match self {
            Self::Only(paths) if self.has_units() => is_shared(path) || stands_in(path, paths),
            _ => true,
        }
    }
}

/// Fonts of the large scripts are the largest files of a look.
const LARGEST_LOOK: u64 = 16 * 1024 * 1024;

/// A larger picture is for a camera, not for a phone on poor data.
const LARGEST_PICTURE: u64 = 2 * 1024 * 1024;

/// Reads every file of a pack.
///
/// # Errors
/// A sentence for the teacher, where the pack can't be looked into at all.
pub fn read_pack(source: &dyn Source, selection: &Selection) -> Result<Documents, String> {
    read_pack_again(source, selection, None)
}

/// The same; a file that was read before with the same text is not read again.
///
/// # Errors
/// A sentence for the teacher, where the pack can't be looked into at all.
pub fn read_pack_again(
    source: &dyn Source,
    selection: &Selection,
    before: Option<&mut ReadBefore>,
) -> Result<Documents, String> {
    let entries = source.entries()?;
    let mut documents = Documents {
        name: source.name(),
        today: source.today(),
        files: Files::default(),
        pack: None,
        equipment: None,
        curriculum: None,
        poses: None,
        shared: None,
        borrowed: BTreeMap::new(),
        sessions: Vec::new(),
        units: Vec::new(),
        translations: Vec::new(),
        pack_translations: Vec::new(),
        translation_slips: Vec::new(),
        pictures: BTreeMap::new(),
        look: BTreeMap::new(),
        paths: entries.iter().map(|entry| entry.path.clone()).collect(),
        findings: Vec::new(),
        is_whole: matches!(selection, Selection::All),
    };
    read_yaml_files(source, &entries, (selection, before), &mut documents);
    read_pictures(source, &entries, &mut documents);
    read_look(source, &entries, &mut documents);
    Ok(documents)
}

/// What one file came to, before it is put in its place.
#[derive(Clone, Debug)]
enum Outcome {
    Pack(Option<Box<PackDoc>>),
    Equipment(Option<EquipmentDoc>),
    Curriculum(Option<CurriculumDoc>),
    Poses(Option<PosesDoc>),
    Shared(Option<SharedDoc>),
    Session(Option<Box<SessionDoc>>),
    Unit(Option<Box<UnitDoc>>),
    /// It is laid over a neighbour’s session when those are open.
    Borrowing(Box<Node>),
    /// It is laid over its original when that has been read.
    Translation(Box<Node>),
    Nothing,
}

fn read_yaml_files(
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
        .map(|entry| (documents.files.add(entry.path.clone(), String::new()), entry))
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
        for (file, _, read) in &read {
            before.note(*file, read);
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
    let text = found.and_then(|(file, entry)| text_of(source, *file, entry).ok());
    found.zip(text).map_or_else(Shelf::default, |((file, _), text)| Shelf::of(&text, *file))
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
    let neighbours =
        tree.map(|tree| open_neighbours(source, &tree, files, findings)).unwrap_or_default();
    let mut trees = Vec::new();
    for (file, path, own) in borrowing {
        let Some((tree, borrowed)) = borrow(&own, &neighbours, files, findings) else { continue };
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

/// The original of a translation, where it is in the pack.
fn original_of(path: &str, paths: &BTreeSet<String>) -> Option<String> {
    let (original, _) = translation_of(path).filter(|_| !is_unit(path))?;
    paths.contains(&original).then_some(original)
}

/// The text of a file, what it came to, what was found, and its tree.
type ReadFile = (String, Outcome, Vec<Finding>, Option<Node>);

fn read_one(
    source: &dyn Source,
    file: FileId,
    entry: &Entry,
    (documents, shelf): (&Documents, &Shelf),
    before: Option<&ReadBefore>,
) -> ReadFile {
    let text = match text_of(source, file, entry) {
        Ok(text) => text,
        Err(unread) => return (unread.shown, Outcome::Nothing, vec![*unread.finding], None),
    };
    if let Some(known) = before.and_then(|before| before.find(file, &text)) {
        return known;
    }
    let mut tree = match yaml::read_tree(&text, file) {
        Ok(tree) => tree,
        Err(fault) => return (text, Outcome::Nothing, vec![*fault], None),
    };
    if let Some(right) = misnamed(&entry.path) {
        let says = format!("This looks like the shared file {right}, but is read as a session.");
        let way_out =
            format!("Name it {right} and put it at the top of the pack, beside pack.yaml.");
        let fault = Finding::problem("file-misnamed", Place::top_of(file), says, way_out);
        return (text, Outcome::Nothing, vec![fault], None);
    }
    if original_of(&entry.path, &documents.paths).is_some() {
        return (text, Outcome::Translation(Box::new(tree)), Vec::new(), None);
    }
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
                return (text, Outcome::Nothing, desk.findings, None);
            }
            if is_borrowing(&tree) {
                return (text, Outcome::Borrowing(Box::new(tree)), desk.findings, None);
            }
            Outcome::Session(SessionDoc::from_node(&tree, &mut desk).map(Box::new))
        }
    };
    (text, outcome, desk.findings, Some(tree))
}

fn text_of(source: &dyn Source, file: FileId, entry: &Entry) -> Result<String, yaml::Unread> {
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

fn read_pictures(source: &dyn Source, entries: &[Entry], documents: &mut Documents) {
    let is_picture = |path: &str| {
        let path = path.to_lowercase();
        [".png", ".jpg", ".jpeg"].iter().any(|ending| path.ends_with(ending))
    };
    let in_bounds = |entry: &&Entry| matches!(entry.kind, EntryKind::File { bytes } if bytes <= LARGEST_PICTURE);
    for entry in entries.iter().filter(|entry| is_picture(&entry.path)).filter(in_bounds) {
        if let Ok(bytes) = source.bytes(&entry.path) {
            documents.pictures.insert(entry.path.clone(), bytes.into());
        }
    }
}

fn read_look(source: &dyn Source, entries: &[Entry], documents: &mut Documents) {
    for entry in entries {
        let Some(path) = entry.path.strip_prefix("look/") else { continue };
        let is_small = matches!(entry.kind, EntryKind::File { bytes } if bytes <= LARGEST_LOOK);
        if is_small && let Ok(bytes) = source.bytes(&entry.path) {
            documents.look.insert(path.to_owned(), bytes.into());
        }
    }
}
