//! Files as they were read before: one whose text is still the same is not read again.

use std::collections::BTreeMap;

use super::outcome::ReadFile;
use crate::place::FileId;

/// So many texts of one file are remembered: as it is now, and as it was when it was last sound.
const VERSIONS: usize = 2;

/// What files came to, while the list of a pack’s files stays as it is; whoever keeps it forgets it when
/// the list changes, for a file is told by its place in it.
#[derive(Debug, Default)]
pub struct ReadBefore {
    files: BTreeMap<FileId, Vec<ReadFile>>,
}

impl ReadBefore {
    pub(super) fn find(&self, file: FileId, text: &str) -> Option<ReadFile> {
        self.files.get(&file)?.iter().find(|(known, ..)| known == text).cloned()
    }

    /// Remembers what a file came to.
    pub(super) fn note(&mut self, file: FileId, read: &ReadFile) {
        let versions = self.files.entry(file).or_default();
        let known = versions.iter().position(|(text, ..)| *text == read.0);
        let read = match known {
            Some(at) => versions.remove(at),
            None => read.clone(),
        };
        versions.push(read);
        if versions.len() > VERSIONS {
            versions.remove(0);
        }
    }
}
