//! A whole pack: the files that mending changes, and the proof that the pack says the same after it.

use std::collections::{BTreeMap, BTreeSet};

use super::{Change, mend_text};
use crate::Inspected;
use crate::finding::Severity;
use crate::inspect::{Check, rules};
use crate::pack::Pack;
use crate::place::Files;
use crate::quantity::Date;
use crate::read::Selection;
use crate::schema::group_of;
use crate::source::{Entry, Source};

/// A byte-order mark stays where it was.
const MARK: &[u8] = b"\xef\xbb\xbf";

/// One file that changes.
#[derive(Clone, Debug)]
pub struct MendedFile {
    /// Inside the pack.
    pub path: String,
    pub bytes: Vec<u8>,
    pub changes: Vec<Change>,
}

/// The files that change, and the pack as it is with them.
#[derive(Debug)]
pub struct MendedPack {
    pub files: Vec<MendedFile>,
    pub inspected: Inspected,
}

/// Mends the files that are asked for. Nothing is written.
///
/// # Errors
/// A sentence for the teacher, where the pack can’t be looked into, or where mending would change what it says.
pub fn mend_pack(source: &dyn Source, selection: &Selection) -> Result<MendedPack, String> {
    let before = crate::inspect(source, selection)?;
    let files = mended_files(source, selection, &before.pack.files)?;
    if files.is_empty() {
        return Ok(MendedPack { files, inspected: before });
    }
    let changed = files.iter().map(|file| (file.path.as_str(), file.bytes.as_slice())).collect();
    let after = crate::inspect(&Overlaid { source, changed }, selection)?;
    if is_read_whole(&before) && said_by(before.pack) != said_by(after.pack.clone()) {
        return Err("Mending would change what the pack says, so nothing was written. \
                    This is a mistake in the program: please report it with the pack."
            .into());
    }
    Ok(MendedPack { files, inspected: after })
}

fn mended_files(
    source: &dyn Source,
    selection: &Selection,
    files: &Files,
) -> Result<Vec<MendedFile>, String> {
    // A neighbour’s files are listed too, and are not ours to change.
    let own: BTreeSet<String> = source.entries()?.into_iter().map(|entry| entry.path).collect();
    let mut found = Vec::new();
    let is_asked = |path: &str| own.contains(path) && selection.names(path);
    for file in files.iter().filter(|file| is_asked(&file.path) && !file.text.is_empty()) {
        let mended = mend_text(&file.text, group_of(&file.path));
        if mended.text == *file.text {
            continue;
        }
        let has_mark = source.bytes(&file.path)?.starts_with(MARK);
        let mark = if has_mark { MARK } else { b"" };
        let bytes = [mark, mended.text.as_bytes()].concat();
        found.push(MendedFile { path: file.path.clone(), bytes, changes: mended.changes });
    }
    Ok(found)
}

/// Where something could not be read before, the pack may say more afterwards; each file was then held to its own
/// tree of values alone.
fn is_read_whole(inspected: &Inspected) -> bool {
    let of_reading =
        |code: &str| rules::find_rule(code).is_none_or(|rule| matches!(rule.check, Check::Reading));
    inspected
        .findings
        .iter()
        .all(|finding| finding.severity != Severity::Problem || !of_reading(finding.code))
}

/// All that a pack says, without where each thing stands: `Debug` leaves places out.
fn said_by(mut pack: Pack) -> String {
    pack.files = Files::default();
    pack.pictures.clear();
    pack.look.clear();
    format!("{pack:?}")
}

/// A source with some of its files as they will be.
struct Overlaid<'s> {
    source: &'s dyn Source,
    changed: BTreeMap<&'s str, &'s [u8]>,
}

impl Source for Overlaid<'_> {
    fn name(&self) -> String {
        self.source.name()
    }
    fn entries(&self) -> Result<Vec<Entry>, String> {
        self.source.entries()
    }
    fn bytes(&self, path: &str) -> Result<Vec<u8>, String> {
        match self.changed.get(path) {
            Some(bytes) => Ok(bytes.to_vec()),
            None => self.source.bytes(path),
        }
    }
    fn today(&self) -> Date {
        self.source.today()
    }
    fn neighbour(&self, folder: &str) -> Result<Box<dyn Source>, String> {
        self.source.neighbour(folder)
    }
}

#[cfg(test)]
mod tests {
    use crate::place::{FileId, Place};

    #[test]
    fn places_are_left_out_of_what_is_compared() {
        let at = |start| Place { file: FileId(0), start, end: start + 1 };
        assert_eq!(format!("{:?}", at(1)), format!("{:?}", at(9)));
    }
}
