//! The files of neighbours’ packs that a pack draws on: few, and of folders that are not the pack’s own. In: the
//! pack that was read; out: whether one of them is another now, and the folders to watch.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use crate::pack::Pack;
use crate::place::FileText;
use crate::prose::links_of;
use crate::render::key::Key;
use crate::resolve::path_from_file;
use crate::source::{Folder, Source};

/// No file of a pack that is read is larger.
const LARGEST: u64 = 16 * 1024 * 1024;

/// What was lent, as it was when it was read; paths are seen from the pack.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Lent {
    /// The marks of files, also of pictures that are named and not there yet.
    files: BTreeMap<String, Option<Key>>,
    /// What there is in each neighbour’s folder: a session that is asked for may come.
    lists: BTreeMap<String, BTreeSet<String>>,
}

impl Lent {
    /// What a pack draws on.
    pub(super) fn of(root: &Path, pack: &Pack) -> Self {
        let lent: Vec<&FileText> = pack.files.iter().filter(|file| file.lent.is_some()).collect();
        let folders = folders_of(&lent);
        let paths = lent.iter().map(|file| file.path.clone());
        let pictures = pictures_of(pack).into_iter().filter_map(|path| {
            let (under, rest) = path.split_once('/')?;
            Some(format!("{}/{rest}", folders.get(under)?))
        });
        Self {
            files: paths.chain(pictures).map(|path| (path.clone(), mark_of(root, &path))).collect(),
            lists: folders.values().map(|folder| (folder.clone(), list_of(root, folder))).collect(),
        }
    }

    /// Those with other bytes now, and folders where something came or went.
    pub(super) fn changed(&self, root: &Path) -> BTreeSet<String> {
        let files = self.files.iter().filter(|(path, mark)| mark_of(root, path) != **mark);
        let lists = self.lists.iter().filter(|(folder, list)| list_of(root, folder) != **list);
        files.map(|(path, _)| path).chain(lists.map(|(folder, _)| folder)).cloned().collect()
    }

    /// The folders that they lie in.
    pub(super) fn folders(&self, root: &Path) -> BTreeSet<PathBuf> {
        self.lists.keys().map(|folder| root.join(folder)).collect()
    }
}

/// The folders of neighbours, by those that their pictures have in the pack.
fn folders_of(lent: &[&FileText]) -> BTreeMap<String, String> {
    let folder = |file: &&FileText| {
        let lent = file.lent.as_ref()?;
        let folder = file.path.strip_suffix(&lent.path)?.trim_end_matches('/');
        Some((lent.under.clone(), folder.to_owned()))
    };
    lent.iter().filter_map(folder).collect()
}

/// The paths of all pictures that borrowed sessions show or lead to, there or not.
fn pictures_of(pack: &Pack) -> BTreeSet<String> {
    let mut paths = BTreeSet::new();
    for session in pack.sessions.iter().filter(|session| session.borrowed.is_some()) {
        let parts = session.parts.iter().flat_map(|part| &part.pictures);
        let shown = session.pictures.iter().chain(parts).filter(|picture| picture.is_lent);
        paths.extend(shown.filter_map(|picture| picture.path.clone()));
        for text in session.texts() {
            let links = links_of(text.value).into_iter();
            paths.extend(
                links.filter_map(|link| path_from_file(&pack.files, text.place.file, &link)),
            );
        }
    }
    paths
}

fn list_of(root: &Path, folder: &str) -> BTreeSet<String> {
    let entries = Folder::new(root.join(folder)).entries().unwrap_or_default();
    entries.into_iter().map(|entry| entry.path).collect()
}

/// The mark of a file; a pipe would be waited for without end, and what is very large is not used.
fn mark_of(root: &Path, path: &str) -> Option<Key> {
    let path = root.join(path);
    let is_usual = |about: std::fs::Metadata| about.is_file() && about.len() <= LARGEST;
    path.metadata().is_ok_and(is_usual).then_some(())?;
    std::fs::read(path).ok().map(|bytes| Key::of(&bytes))
}
