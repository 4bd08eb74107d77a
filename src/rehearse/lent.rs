//! The files of neighbours’ packs that a pack draws on: few, and of folders that are not the pack’s own. In: the
//! files that were read; out: whether one of them is another now, and the folders to watch.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use crate::place::Files;
use crate::render::key::Key;

/// Their marks, by their paths seen from the pack.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Lent {
    files: BTreeMap<String, Option<Key>>,
}

impl Lent {
    /// The files that were read and are not the pack’s own.
    pub(super) fn of(root: &Path, files: &Files, is_own: impl Fn(&str) -> bool) -> Self {
        let lent = files.iter().filter(|file| !is_own(&file.path));
        Self { files: lent.map(|file| (file.path.clone(), mark_of(root, &file.path))).collect() }
    }

    /// Those with other bytes now.
    pub(super) fn changed(&self, root: &Path) -> BTreeSet<String> {
        let changed = self.files.iter().filter(|(path, mark)| mark_of(root, path) != **mark);
        changed.map(|(path, _)| path.clone()).collect()
    }

    /// The folders that they lie in.
    pub(super) fn folders(&self, root: &Path) -> BTreeSet<PathBuf> {
        let folder = |path: &String| Some(root.join(path).parent()?.to_owned());
        self.files.keys().filter_map(folder).collect()
    }
}

fn mark_of(root: &Path, path: &str) -> Option<Key> {
    std::fs::read(root.join(path)).ok().map(|bytes| Key::of(&bytes))
}
