//! Stage one, read: a pack's files → [`Documents`] as they were written, every value with its place.
//!
//! Nothing is decided here but what each file *says*. Slips are collected, not thrown: the documents
//! of the files that can be read travel on beside the findings of those that can't.

mod before;
mod neighbours;
mod other_files;
mod outcome;
mod part_time;
mod paths;
mod plain_tree;
mod shelf;
mod slips;
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
mod yaml_files;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

pub use before::ReadBefore;
pub use desk::nearest;
pub use neighbours::BorrowedDoc;
pub use part_time::PartTime;
pub(crate) use paths::{is_session, is_shared};
pub use text::{Line, Prose};

use crate::finding::Finding;
use crate::pack::Session;
use crate::place::{FileId, Files};
use crate::quantity::Date;
use crate::source::Source;
use figure_file::PosesDoc;
use other_files::{read_look, read_pictures};
use pack_files::{CurriculumDoc, EquipmentDoc, PackDoc};
use paths::{is_unit, stands_in};
use session_file::SessionDoc;
use shared_file::SharedDoc;
use translation::{TranslatedDoc, TranslatedPack, TranslatedUnit};
use unit_file::UnitDoc;
use yaml_files::read_yaml_files;

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
    /// Those that were read before, and resolved with the same shared files.
    pub resolved: Vec<Arc<Session>>,
    /// In the order of their paths.
    pub units: Vec<Written<UnitDoc>>,
    /// Sessions in other languages, in the order of their paths.
    pub translations: Vec<TranslatedDoc>,
    /// Units in other languages, in the order of their paths.
    pub unit_translations: Vec<TranslatedUnit>,
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

impl Documents {
    /// Whether a file that all sessions share is there and can’t be read: what a session seems to lack may stand in it.
    pub fn is_shared_unread(&self) -> bool {
        let read = [
            ("pack.yaml", self.pack.is_some()),
            ("equipment.yaml", self.equipment.is_some()),
            ("curriculum.yaml", self.curriculum.is_some()),
            ("poses.yaml", self.poses.is_some()),
            ("shared.yaml", self.shared.is_some()),
        ];
        read.iter().any(|(path, is_read)| !is_read && self.paths.contains(*path))
    }
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
        resolved: Vec::new(),
        units: Vec::new(),
        translations: Vec::new(),
        unit_translations: Vec::new(),
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
