//! The one door to the outside: a pack's files and today's date come in through a [`Source`].
//!
//! Everything behind it is pure, so a run can be repeated byte for byte, and tests can feed a pack
//! from memory.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::Arc;

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

    /// The bytes of a file where they are held still in memory: the same bytes, the same place in it.
    fn held(&self, _path: &str) -> Option<Arc<[u8]>> {
        None
    }

    /// Today's date, held still for one run.
    fn today(&self) -> Date;

    /// Another pack that this one draws on, to be read only: in a folder that is set aside inside it, or right
    /// beside it.
    ///
    /// # Errors
    /// A sentence for the teacher, where there is no such folder or it lies elsewhere.
    fn neighbour(&self, folder: &str) -> Result<Box<dyn Source>, String> {
        Err(format!("There is no folder {folder} to draw on."))
    }
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

/// The steps to a neighbour’s folder: up once at most, then down through plain names.
fn steps_to(folder: &str) -> Result<(bool, Vec<&str>), String> {
    let parts: Vec<&str> = folder.trim_end_matches('/').split('/').collect();
    let (is_beside, names) = match parts.as_slice() {
        ["..", names @ ..] => (true, names),
        names => (false, names),
    };
    let is_plain =
        |name: &&str| !name.is_empty() && !name.starts_with('.') && !name.contains(['\\', ':']);
    if names.is_empty() || names.len() > DEEPEST_NEIGHBOUR || !names.iter().all(is_plain) {
        return Err(format!("{folder} leads somewhere that no neighbour’s pack may be."));
    }
    if !is_beside && !names[0].starts_with('_') {
        return Err(format!("{folder} lies among this pack’s own sessions."));
    }
    Ok((is_beside, names.to_vec()))
}

/// So many folders deep a neighbour may lie.
const DEEPEST_NEIGHBOUR: usize = 4;

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

    fn neighbour(&self, folder: &str) -> Result<Box<dyn Source>, String> {
        let (is_beside, names) = steps_to(folder)?;
        let missing = || format!("There is no folder {folder} seen from this pack.");
        let own = self.root.canonicalize().map_err(|_| missing())?;
        let mut root =
            if is_beside { own.parent().ok_or_else(missing)?.into() } else { own.clone() };
        for name in names {
            root.push(name);
            let about = root.symlink_metadata().map_err(|_| missing())?;
            if about.is_symlink() {
                return Err(format!("{folder} goes through a link, and links are not followed."));
            }
            if !about.is_dir() {
                return Err(missing());
            }
        }
        if own.starts_with(&root) {
            return Err(format!("{folder} is this pack itself."));
        }
        Ok(Box::new(Self { root, today: self.today }))
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
        let is_set_aside = |path: &str| path.split('/').any(|name| name.starts_with(['.', '_']));
        Ok(self.files.iter().filter(|(path, _)| !is_set_aside(path)).map(entry).collect())
    }

    fn bytes(&self, path: &str) -> Result<Vec<u8>, String> {
        self.files.get(path).cloned().ok_or_else(|| "It is no longer there".into())
    }

    fn today(&self) -> Date {
        self.today
    }

    fn neighbour(&self, folder: &str) -> Result<Box<dyn Source>, String> {
        steps_to(folder)?;
        let inside = |(path, bytes): (&String, &Vec<u8>)| {
            let path = path.strip_prefix(folder)?.strip_prefix('/')?;
            Some((path.to_owned(), bytes.clone()))
        };
        let files: BTreeMap<String, Vec<u8>> = self.files.iter().filter_map(inside).collect();
        if files.is_empty() {
            return Err(format!("There is no folder {folder} seen from this pack."));
        }
        Ok(Box::new(Self { files, today: self.today }))
    }
}
