//! Stage six, publish: a rendered bundle → a folder. It is built beside the target and swapped in, so
//! that a failure leaves the last good pack as it was.

mod last;
mod notes;
mod record;
mod stamp;

use std::collections::BTreeSet;
use std::fmt;
use std::fs;
use std::path::{Component, Path, PathBuf};
use std::sync::Mutex;

use crate::render::Bundle;
pub use last::LastTime;
pub use record::{Published, PublishedFile};
use stamp::Stamp;

/// The list of what was published, kept in the folder itself: only what it names is ever removed.
pub const LIST: &str = ".homeground";

/// Why a pack could not be put in its place.
#[derive(Debug)]
pub enum PublishFault {
    /// The target is something else than a folder.
    NotAFolder(PathBuf),
    /// The target holds files that were not published; some are named.
    HoldsOthers { target: PathBuf, others: Vec<String>, count: usize },
    /// The target lies inside the pack, or the pack inside it.
    OverlapsPack(PathBuf),
    /// The disk refused both the new pack and the way back.
    Stranded { target: PathBuf, kept: PathBuf },
    /// The disk refused.
    Disk { path: PathBuf, why: std::io::Error },
}

impl fmt::Display for PublishFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotAFolder(target) => {
                write!(f, "{} is not a folder. Choose another name after --to.", target.display())
            }
            Self::HoldsOthers { target, others, count } => write!(
                f,
                "{} holds {count} {} not published from here ({}), and nothing of yours is \
                 removed. Choose an empty or new folder after --to.",
                target.display(),
                if *count == 1 { "file that was" } else { "files that were" },
                others.join(", "),
            ),
            Self::OverlapsPack(target) => write!(
                f,
                "{} and the pack lie inside one another. Choose a folder outside the pack after --to.",
                target.display()
            ),
            Self::Stranded { target, kept } => write!(
                f,
                "{} could not be written. The last good pack is kept whole in {}: move it back.",
                target.display(),
                kept.display()
            ),
            Self::Disk { path, why } => {
                write!(f, "{} could not be written: {}.", path.display(), in_words(why))
            }
        }
    }
}

fn in_words(why: &std::io::Error) -> &'static str {
    match why.kind() {
        std::io::ErrorKind::PermissionDenied => "this computer does not allow it",
        std::io::ErrorKind::StorageFull => "the disk is full",
        std::io::ErrorKind::ReadOnlyFilesystem => "the disk can only be read",
        _ => "the disk refused",
    }
}

/// Looks whether `target` may be published to, before anything is rendered.
///
/// # Errors
/// Where the target holds anything that was not published there, or overlaps the pack.
pub fn check_target(target: &Path, pack: &Path) -> Result<(), PublishFault> {
    let whole = |path: &Path| std::path::absolute(path).unwrap_or_else(|_| path.to_owned());
    let (there, here) = (real(&whole(target)), real(&whole(pack)));
    if there.starts_with(&here) || here.starts_with(&there) {
        return Err(PublishFault::OverlapsPack(target.to_owned()));
    }
    if !there.exists() {
        return Ok(());
    }
    if !there.is_dir() {
        return Err(PublishFault::NotAFolder(target.to_owned()));
    }
    let published = read_list(&there);
    let mut others: Vec<String> =
        entries_in(&there).into_iter().filter(|path| !is_known(path, &published)).collect();
    if others.is_empty() {
        return Ok(());
    }
    let count = others.len();
    others.truncate(3);
    Err(PublishFault::HoldsOthers { target: target.to_owned(), others, count })
}

/// What file browsers leave behind in every folder they show.
const DROPPINGS: [&str; 3] = [".DS_Store", "Thumbs.db", "desktop.ini"];

/// Published before, a folder of something published, or a dropping that is nobody’s.
fn is_known(path: &str, published: &BTreeSet<String>) -> bool {
    let name = path.rsplit('/').next().unwrap_or(path);
    let holds_published = |folder: &str| {
        let inside = format!("{folder}/");
        published.range(inside.clone()..).next().is_some_and(|next| next.starts_with(&inside))
    };
    published.contains(path) || DROPPINGS.contains(&name) || holds_published(path)
}

/// The path with links followed as far as it exists.
fn real(path: &Path) -> PathBuf {
    path.ancestors()
        .find_map(|ancestor| {
            let real = ancestor.canonicalize().ok()?;
            Some(real.join(path.strip_prefix(ancestor).unwrap_or(Path::new(""))))
        })
        .unwrap_or_else(|| path.to_owned())
}

fn read_list(target: &Path) -> BTreeSet<String> {
    let list = fs::read_to_string(target.join(LIST)).unwrap_or_default();
    let mut published: BTreeSet<String> = list.lines().map(str::to_owned).collect();
    published.insert(LIST.to_owned());
    published
}

/// Every file and folder below a folder.
fn entries_in(folder: &Path) -> Vec<String> {
    let walk = walkdir::WalkDir::new(folder).min_depth(1).sort_by_file_name();
    walk.into_iter()
        // What can't be looked into counts as somebody's: it is never removed.
        .filter_map(|found| match found {
            Ok(entry) => Some(entry.into_path()),
            Err(fault) => fault.path().map(Path::to_owned),
        })
        .filter_map(|path| {
            let path = path.strip_prefix(folder).ok()?;
            let parts: Vec<_> = path.iter().map(|part| part.to_string_lossy()).collect();
            Some(parts.join("/"))
        })
        .collect()
}

/// Writes the bundle beside the target and swaps it in.
///
/// # Errors
/// Where the target may not be published to, or the disk refuses; the target is then as it was.
pub fn publish_bundle(bundle: &Bundle, target: &Path, pack: &Path) -> Result<(), PublishFault> {
    let workshop = Workshop::begin(target, pack)?;
    for (path, bytes) in bundle {
        workshop.put(path, bytes)?;
    }
    workshop.finish()
}

/// The same, with what is as it was last time taken over; gives what lies there now.
///
/// # Errors
/// Where the target may not be published to, or the disk refuses; the target is then as it was.
pub fn publish_again(
    bundle: &Bundle,
    target: &Path,
    pack: &Path,
    last: &LastTime,
) -> Result<Published, PublishFault> {
    let workshop = Workshop::begin(target, pack)?;
    let published = last.put_all(bundle, &workshop)?;
    // The record says what file systems say when the old pack is cleared away.
    drop(workshop.swap()?);
    last.leave_record(published.clone());
    Ok(published)
}

/// Removes what was published to a folder, and the folders left empty by it; anything else stays.
///
/// # Errors
/// Where the disk refuses.
pub fn forget_bundle(target: &Path) -> Result<usize, PublishFault> {
    let mut removed = 0;
    for path in read_list(target) {
        let at = target.join(&path);
        // The list is a file like any other: nothing outside the folder is ever removed.
        let is_inside =
            Path::new(&path).components().all(|part| matches!(part, Component::Normal(_)));
        if is_inside && at.is_file() {
            fs::remove_file(&at).map_err(|why| PublishFault::Disk { path: at, why })?;
            removed += 1;
        }
    }
    let folders = walkdir::WalkDir::new(target).contents_first(true).into_iter().flatten();
    for folder in folders.filter(|entry| entry.file_type().is_dir()) {
        // One that still holds something refuses to go, which is right.
        let _ = fs::remove_dir(folder.path());
    }
    Ok(removed)
}

/// A folder beside the target in which a new pack is built file by file, so that a pack of any size
/// needs no more memory than its largest file. If it is dropped unfinished, nothing is left of it.
#[derive(Debug)]
pub struct Workshop {
    target: PathBuf,
    room: tempfile::TempDir,
    fresh: PathBuf,
    /// What was put into it so far.
    listed: Mutex<Listed>,
}

/// Files and the folders that were made for them, by their paths.
#[derive(Debug, Default)]
struct Listed {
    files: BTreeSet<String>,
    folders: BTreeSet<String>,
}

impl Workshop {
    /// Sets one up.
    ///
    /// # Errors
    /// Where the target may not be published to, or the disk refuses.
    pub fn begin(target: &Path, pack: &Path) -> Result<Self, PublishFault> {
        check_target(target, pack)?;
        let target = real(&std::path::absolute(target).unwrap_or_else(|_| target.to_owned()));
        let parent = target.parent().unwrap_or(Path::new(".")).to_owned();
        fs::create_dir_all(&parent).map_err(refused(&parent))?;
        let room = tempfile::Builder::new()
            .prefix(".homeground-")
            .tempdir_in(&parent)
            .map_err(refused(&parent))?;
        let fresh = room.path().join("new");
        Ok(Self { target, room, fresh, listed: Mutex::default() })
    }

    /// Writes a file, and gives its stamp where one can be had.
    ///
    /// # Errors
    /// Where the disk refuses.
    pub fn put(&self, path: &str, bytes: &[u8]) -> Result<Option<Stamp>, PublishFault> {
        let to = self.make_room(path)?;
        fs::write(&to, bytes).map_err(refused(&to))?;
        Ok(fs::symlink_metadata(&to).ok().and_then(|about| Stamp::of(&about)))
    }

    /// Takes a file over from elsewhere on this disk, where it has the bytes that are wished for: the two are
    /// one file under two names where the disk allows it, and else it is written.
    ///
    /// # Errors
    /// Where the disk refuses.
    pub fn take_over(&self, path: &str, from: &Path, bytes: &[u8]) -> Result<(), PublishFault> {
        let to = self.make_room(path)?;
        fs::hard_link(from, &to).or_else(|_| fs::write(&to, bytes)).map_err(refused(&to))
    }

    /// Puts a file that is here already at a second path. Where the disk allows it the two are one file
    /// under two names, which takes no room.
    ///
    /// # Errors
    /// Where the disk refuses.
    pub fn repeat(&self, path: &str, from: &str) -> Result<(), PublishFault> {
        self.repeat_from(path, &self.fresh.join(from))
    }

    /// Puts a file that lies elsewhere on this disk at a path.
    fn repeat_from(&self, path: &str, from: &Path) -> Result<(), PublishFault> {
        let to = self.make_room(path)?;
        fs::hard_link(from, &to).or_else(|_| fs::copy(from, &to).map(drop)).map_err(refused(&to))
    }

    fn make_room(&self, path: &str) -> Result<PathBuf, PublishFault> {
        let to = self.fresh.join(path);
        let folder = path.rsplit_once('/').map_or("", |(folder, _)| folder);
        let mut listed = self.listed.lock().unwrap_or_else(std::sync::PoisonError::into_inner);
        if !listed.folders.contains(folder) {
            fs::create_dir_all(self.fresh.join(folder)).map_err(refused(&to))?;
            listed.folders.insert(folder.to_owned());
        }
        listed.files.insert(path.to_owned());
        Ok(to)
    }

    /// Swaps the new pack in.
    ///
    /// # Errors
    /// Where the disk refuses; the target is then as it was.
    pub fn finish(self) -> Result<(), PublishFault> {
        self.swap().map(drop)
    }

    /// The same; the old pack lies in the folder that is given back, and goes with it.
    fn swap(self) -> Result<tempfile::TempDir, PublishFault> {
        let listed = self.listed.into_inner().unwrap_or_else(std::sync::PoisonError::into_inner);
        let list: String = listed.files.iter().map(|path| format!("{path}\n")).collect();
        let to = self.fresh.join(LIST);
        fs::create_dir_all(&self.fresh)
            .and_then(|()| fs::write(&to, list))
            .map_err(refused(&to))?;
        swap_in(&self.fresh, self.target, self.room)
    }
}

fn swap_in(
    fresh: &Path,
    target: PathBuf,
    room: tempfile::TempDir,
) -> Result<tempfile::TempDir, PublishFault> {
    let last = room.path().join("old");
    let had_last = target.exists();
    if had_last {
        fs::rename(&target, &last).map_err(refused(&target))?;
    }
    let Err(why) = fs::rename(fresh, &target) else { return Ok(room) };
    if had_last && fs::rename(&last, &target).is_err() {
        // Even the way back is barred: the last good pack stays in the workshop, and where is said.
        let kept = room.keep().join("old");
        return Err(PublishFault::Stranded { target, kept });
    }
    Err(refused(&target)(why))
}

fn refused(path: &Path) -> impl FnOnce(std::io::Error) -> PublishFault {
    let path = path.to_owned();
    move |why| PublishFault::Disk { path, why }
}
