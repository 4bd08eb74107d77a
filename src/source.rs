//! The one door to the outside: a pack's files and today's date come in through a [`Source`].
//!
//! Everything behind it is pure, so a run can be repeated byte for byte, and tests can feed a pack
//! from memory.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use crate::quantity::Date;

/// What stands at a path of the pack.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EntryKind {
    /// A file of so many bytes.
    File { bytes: u64 },
    /// A folder.
    Folder,
    /// A link to something outside the pack, which is never followed.
    LeavesPack,
    /// A folder that this computer may not look into.
    Closed,
    /// A pipe, a device or the like: opening it could wait for ever.
    NoFile,
}

/// One entry of a pack, with its path inside the pack written with `/`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry {
    pub path: String,
    pub kind: EntryKind,
}

/// Where a pack's files and the date come from.
pub trait Source: Sync {
    /// What the pack is called where it has no title of its own.
    fn name(&self) -> String;

    /// All entries in the order of their paths.
    ///
    /// # Errors
    /// A sentence for the teacher, where the folder itself can't be looked into.
    fn entries(&self) -> Result<Vec<Entry>, String>;

    /// The bytes of one file.
    ///
    /// # Errors
    /// A sentence for the teacher.
    fn bytes(&self, path: &str) -> Result<Vec<u8>, String>;

    /// Today's date, held still for one run.
    fn today(&self) -> Date;
}

/// When a file was last written, and how long it is: a file whose stamp is the same is most likely the same.
pub type Stamp = (Option<std::time::SystemTime>, u64);

/// A pack in a folder on disk.
#[derive(Debug)]
pub struct Folder {
    root: PathBuf,
    today: Date,
}

impl Folder {
    pub fn new(root: impl Into<PathBuf>) -> Self {
        Self { root: root.into(), today: Date::of_this_computer() }
    }

    /// The same folder on another day, so that a run can be repeated.
    #[must_use]
    pub fn on(mut self, today: Date) -> Self {
        self.today = today;
        self
    }

    fn entry(&self, found: &walkdir::DirEntry) -> Option<Entry> {
        let relative = found.path().strip_prefix(&self.root).ok()?;
        let path = slashed(relative);
        let kind = if found.path_is_symlink() {
            self.kind_of_link(found.path())
        } else if found.file_type().is_dir() {
            EntryKind::Folder
        } else if found.file_type().is_file() {
            EntryKind::File { bytes: found.metadata().map_or(0, |about| about.len()) }
        } else {
            EntryKind::NoFile
        };
        Some(Entry { path, kind })
    }

    /// What can't be looked into is still told of: sessions may lie in it.
    fn closed(&self, path: &Path) -> Option<Entry> {
        let path = slashed(path.strip_prefix(&self.root).ok()?);
        Some(Entry { path, kind: EntryKind::Closed })
    }

    /// A link counts as the file it leads to while that stays inside the pack.
    fn kind_of_link(&self, link: &Path) -> EntryKind {
        let inside = |target: &PathBuf| {
            self.root.canonicalize().is_ok_and(|root| target.starts_with(root)) && target.is_file()
        };
        match link.canonicalize().ok().filter(inside) {
            Some(target) => EntryKind::File { bytes: target.metadata().map_or(0, |a| a.len()) },
            None => EntryKind::LeavesPack,
        }
    }
}

/// A relative path written with `/` on every system.
fn slashed(path: &Path) -> String {
    let parts: Vec<_> = path.iter().map(|part| part.to_string_lossy()).collect();
    parts.join("/")
}

/// Names that hold nothing of the pack: hidden, set aside with `_`, or a look of its own.
fn is_passed_over(entry: &walkdir::DirEntry) -> bool {
    let name = entry.file_name().to_string_lossy();
    entry.depth() > 0 && (name.starts_with('.') || name.starts_with('_'))
}

impl Folder {
    /// The stamp of a file; `None` where it is not there.
    pub fn stamp(&self, path: &str) -> Option<Stamp> {
        let about = std::fs::metadata(self.root.join(path)).ok()?;
        Some((about.modified().ok(), about.len()))
    }
}

impl Source for Folder {
    fn name(&self) -> String {
        let whole = self.root.canonicalize().unwrap_or_else(|_| self.root.clone());
        whole.file_name().map_or_else(|| "Sessions".into(), |name| name.to_string_lossy().into())
    }

    fn entries(&self) -> Result<Vec<Entry>, String> {
        if !self.root.is_dir() {
            return Err(format!(
                "There is no folder {} here. Go to where your pack is, or name its folder after the command.",
                self.root.display()
            ));
        }
        let walk = walkdir::WalkDir::new(&self.root).min_depth(1).sort_by_file_name();
        let entries = walk.into_iter().filter_entry(|entry| !is_passed_over(entry));
        let mut found: Vec<Entry> = entries
            .filter_map(|entry| match entry {
                Ok(entry) => self.entry(&entry),
                Err(fault) => self.closed(fault.path()?),
            })
            .collect();
        found.sort_by(|a, b| a.path.cmp(&b.path));
        Ok(found)
    }

    fn bytes(&self, path: &str) -> Result<Vec<u8>, String> {
        std::fs::read(self.root.join(path)).map_err(|fault| match fault.kind() {
            std::io::ErrorKind::PermissionDenied => "This computer may not open it".into(),
            std::io::ErrorKind::NotFound => "It is no longer there".into(),
            _ => "It could not be read from the disk".into(),
        })
    }

    fn today(&self) -> Date {
        self.today
    }
}

/// A pack held in memory, for tests and for examples in the rule reference.
#[derive(Debug)]
pub struct Memory {
    pub files: BTreeMap<String, Vec<u8>>,
    pub today: Date,
}

impl Source for Memory {
    fn name(&self) -> String {
        "Sessions".into()
    }

    fn entries(&self) -> Result<Vec<Entry>, String> {
        let entry = |(path, bytes): (&String, &Vec<u8>)| Entry {
            path: path.clone(),
            kind: EntryKind::File { bytes: bytes.len() as u64 },
        };
        Ok(self.files.iter().map(entry).collect())
    }

    fn bytes(&self, path: &str) -> Result<Vec<u8>, String> {
        self.files.get(path).cloned().ok_or_else(|| "It is no longer there".into())
    }

    fn today(&self) -> Date {
        self.today
    }
}
