//! The kinds of file there are, each with the group that its reader reads.

use serde_json::Value;

use super::translated::translated_document;
use super::write::document;
use crate::homes::read_yaml::HomeDoc;
use crate::read::figure_file::PosesDoc;
use crate::read::pack_files::{CurriculumDoc, EquipmentDoc, PackDoc};
use crate::read::session_file::SessionDoc;
use crate::read::shape::Group;
use crate::read::shared_file::SharedDoc;
use crate::read::translation::translation_of;
use crate::read::unit_file::UnitDoc;

/// One kind of file.
#[derive(Debug)]
pub struct FileKind {
    /// As it is asked for: `homeground schema pack`.
    pub name: &'static str,
    /// Which files are of it, as patterns of paths inside a pack.
    pub files: &'static [&'static str],
    pub group: &'static Group,
    /// It holds only the texts of the group, in another language.
    pub is_translation: bool,
}

impl FileKind {
    const fn of(name: &'static str, files: &'static [&'static str], group: &'static Group) -> Self {
        Self { name, files, group, is_translation: false }
    }

    const fn translating(
        name: &'static str,
        files: &'static [&'static str],
        group: &'static Group,
    ) -> Self {
        Self { name, files, group, is_translation: true }
    }

    /// The name of its schema’s file.
    pub fn file_name(&self) -> String {
        format!("{}.schema.json", self.name)
    }

    pub(super) fn write(&self) -> Value {
        if self.is_translation { translated_document(self.group) } else { document(self.group) }
    }
}

/// Every kind of file; a session’s is the one that is meant where none is named.
pub const KINDS: &[FileKind] = &[
    FileKind::of("session", &["*/*.yaml"], &SessionDoc::GROUP),
    FileKind::of("pack", &["pack.yaml"], &PackDoc::GROUP),
    FileKind::of("equipment", &["equipment.yaml"], &EquipmentDoc::GROUP),
    FileKind::of("curriculum", &["curriculum.yaml"], &CurriculumDoc::GROUP),
    FileKind::of("poses", &["poses.yaml"], &PosesDoc::GROUP),
    FileKind::of("shared", &["shared.yaml"], &SharedDoc::GROUP),
    FileKind::of("unit", &["units/*.yaml"], &UnitDoc::GROUP),
    FileKind::of("home", &["home.yaml"], &HomeDoc::GROUP),
    FileKind::translating("translation", &["*/*.fr.yaml"], &SessionDoc::GROUP),
    FileKind::translating("unit-translation", &["units/*.fr.yaml"], &UnitDoc::GROUP),
    FileKind::translating("pack-translation", &["pack.fr.yaml"], &PackDoc::GROUP),
];

/// The kind of a name.
pub fn find_kind(name: &str) -> Option<&'static FileKind> {
    KINDS.iter().find(|kind| kind.name == name)
}

/// The group that a file of a pack holds, by its path; none for a translation, whose order is its original’s.
pub fn group_of(path: &str) -> Option<&'static Group> {
    if translation_of(path).is_some() {
        return None;
    }
    let own = KINDS.iter().find(|kind| kind.files.contains(&path));
    let in_folder = || {
        let folder = path.split_once('/').map_or("", |(folder, _)| folder);
        let pattern = format!("{folder}/*.yaml");
        KINDS.iter().find(|kind| kind.files.contains(&pattern.as_str()))
    };
    own.or_else(in_folder).or_else(|| find_kind("session")).map(|kind| kind.group)
}
