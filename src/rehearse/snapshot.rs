//! A pack’s files, held still while they are read: a file that was read keeps its bytes until its stamp
//! changes. In: a folder; out: a [`Source`] and what changed since the one before.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::sync::{Arc, Mutex, PoisonError};
use std::time::{Duration, SystemTime};

use crate::quantity::Date;
use crate::source::{Entry, EntryKind, Folder, Source, Stamp};

/// A file saved twice within this time may keep its stamp, so young ones are compared by their bytes.
const YOUNG: Duration = Duration::from_secs(2);

type Kept = BTreeMap<String, (Option<Stamp>, Arc<[u8]>)>;

/// The files of a pack at one moment.
#[derive(Debug)]
pub struct Snapshot {
    folder: Folder,
    entries: Vec<Entry>,
    kept: Mutex<Kept>,
}

/// What differs from the snapshot before.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Changes {
    /// Files with other bytes, by path.
    pub changed: BTreeSet<String>,
    pub added: BTreeSet<String>,
    pub removed: BTreeSet<String>,
    /// It is another day.
    pub day: bool,
}

impl Changes {
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}

impl Snapshot {
    /// Looks at a pack for the first time.
    ///
    /// # Errors
    /// A sentence for the teacher, where it can't be looked into.
    pub fn take(root: &Path) -> Result<Self, String> {
        let folder = Folder::new(root);
        let entries = folder.entries()?;
        Ok(Self { folder, entries, kept: Mutex::default() })
    }

    /// Looks again.
    ///
    /// # Errors
    /// A sentence for the teacher, where the pack can't be looked into any more.
    pub fn take_again(&self, root: &Path) -> Result<(Self, Changes), String> {
        let next = Self::take(root)?;
        let (old, new) = (names(&self.entries), names(&next.entries));
        let mut changes = Changes {
            added: new.difference(&old).map(|name| name.0.clone()).collect(),
            removed: old.difference(&new).map(|name| name.0.clone()).collect(),
            day: next.today() != self.today(),
            changed: BTreeSet::new(),
        };
        let before = self.kept();
        for (path, (stamp, bytes)) in before.iter().filter(|(path, _)| next.has(path)) {
            if next.folder.stamp(path) == *stamp && !is_young(*stamp) {
                next.kept().insert(path.clone(), (*stamp, Arc::clone(bytes)));
            } else if next.bytes_kept(path).ok().as_ref() != Some(bytes) {
                changes.changed.insert(path.clone());
            }
        }
        Ok((next, changes))
    }

    /// Whether a path is of this pack, and not a neighbour’s.
    pub fn has(&self, path: &str) -> bool {
        self.entries.binary_search_by(|entry| entry.path.as_str().cmp(path)).is_ok()
    }

    fn kept(&self) -> std::sync::MutexGuard<'_, Kept> {
        self.kept.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// The bytes of a file, read once.
    ///
    /// # Errors
    /// A sentence for the teacher.
    pub fn bytes_kept(&self, path: &str) -> Result<Arc<[u8]>, String> {
        if let Some((_, bytes)) = self.kept().get(path) {
            return Ok(Arc::clone(bytes));
        }
        // The stamp is taken first: a file that is saved meanwhile is read again next time.
        let stamp = self.folder.stamp(path);
        let bytes: Arc<[u8]> = self.folder.bytes(path)?.into();
        self.kept().insert(path.to_owned(), (stamp, Arc::clone(&bytes)));
        Ok(bytes)
    }
}

fn is_young(stamp: Option<Stamp>) -> bool {
    let written = stamp.and_then(|(written, _)| written);
    written.is_none_or(|at| SystemTime::now().duration_since(at).is_ok_and(|age| age < YOUNG))
}

/// Paths, with whether each is a file, a folder or neither.
fn names(entries: &[Entry]) -> BTreeSet<(String, u8)> {
    let kind = |kind: EntryKind| match kind {
        EntryKind::File { .. } => 0,
        EntryKind::Folder => 1,
        EntryKind::LeavesPack => 2,
        EntryKind::Closed => 3,
        EntryKind::NoFile => 4,
    };
    entries.iter().map(|entry| (entry.path.clone(), kind(entry.kind))).collect()
}

impl Source for Snapshot {
    fn name(&self) -> String {
        self.folder.name()
    }

    fn entries(&self) -> Result<Vec<Entry>, String> {
        Ok(self.entries.clone())
    }

    fn bytes(&self, path: &str) -> Result<Vec<u8>, String> {
        self.bytes_kept(path).map(|bytes| bytes.to_vec())
    }

    fn held(&self, path: &str) -> Option<Arc<[u8]>> {
        self.bytes_kept(path).ok()
    }

    fn today(&self) -> Date {
        self.folder.today()
    }

    fn neighbour(&self, folder: &str) -> Result<Box<dyn Source>, String> {
        self.folder.neighbour(folder)
    }
}

/// A snapshot with some files as they were when they were last sound.
#[derive(Debug)]
pub struct LastSound<'s> {
    pub now: &'s Snapshot,
    pub sound: BTreeMap<String, Arc<[u8]>>,
}

impl Source for LastSound<'_> {
    fn name(&self) -> String {
        self.now.name()
    }

    fn entries(&self) -> Result<Vec<Entry>, String> {
        let mut entries = self.now.entries.clone();
        for entry in &mut entries {
            if let Some(bytes) = self.sound.get(&entry.path) {
                entry.kind = EntryKind::File { bytes: bytes.len() as u64 };
            }
        }
        Ok(entries)
    }

    fn bytes(&self, path: &str) -> Result<Vec<u8>, String> {
        self.sound.get(path).map_or_else(|| self.now.bytes(path), |bytes| Ok(bytes.to_vec()))
    }

    fn held(&self, path: &str) -> Option<Arc<[u8]>> {
        self.sound.get(path).map_or_else(|| self.now.held(path), |bytes| Some(Arc::clone(bytes)))
    }

    fn today(&self) -> Date {
        self.now.today()
    }

    fn neighbour(&self, folder: &str) -> Result<Box<dyn Source>, String> {
        self.now.neighbour(folder)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_changes_is_told() {
        let room = tempfile::tempdir().unwrap();
        let put = |path: &str, text: &str| std::fs::write(room.path().join(path), text).unwrap();
        put("a.yaml", "one");
        put("b.yaml", "two");
        let first = Snapshot::take(room.path()).unwrap();
        assert_eq!(first.bytes("a.yaml").unwrap(), b"one");
        assert_eq!(first.bytes("b.yaml").unwrap(), b"two");
        let (second, changes) = first.take_again(room.path()).unwrap();
        assert!(changes.is_empty());
        // As long as before, and most likely with the same time.
        put("a.yaml", "eno");
        put("c.yaml", "new");
        std::fs::remove_file(room.path().join("b.yaml")).unwrap();
        let (third, changes) = second.take_again(room.path()).unwrap();
        assert_eq!(changes.changed, BTreeSet::from(["a.yaml".to_owned()]));
        assert_eq!(changes.added, BTreeSet::from(["c.yaml".to_owned()]));
        assert_eq!(changes.removed, BTreeSet::from(["b.yaml".to_owned()]));
        // What was read is held still.
        assert_eq!(second.bytes("a.yaml").unwrap(), b"one");
        assert_eq!(third.bytes("a.yaml").unwrap(), b"eno");
    }
}
