//! What was made of each session and is no file of its own: its part of the edition’s record, and what was found
//! in it. Kept in a hidden file beside the record (`.published.homeground-notes`), under the key of all that it
//! was made from, and sealed as the record is.

use std::collections::BTreeMap;
use std::ops::Range;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

use super::record::{path_beside, read_file, write_file};
use crate::render::key::Key;

const HEADING: &str = "homeground notes 1";

/// The notes of last time, and those that were asked for or made this time.
#[derive(Debug)]
pub(super) struct Notes {
    at: PathBuf,
    bytes: Vec<u8>,
    known: BTreeMap<Key, Range<usize>>,
    now: Mutex<BTreeMap<Key, Vec<u8>>>,
}

impl Notes {
    /// Reads those beside a target folder.
    pub(super) fn look_up(target: &Path, program: Option<Key>) -> Self {
        let at = path_beside(target, "notes");
        let bytes = read_file(&at).unwrap_or_default();
        let known = program.and_then(|program| read_notes(&bytes, program)).unwrap_or_default();
        Self { at, bytes, known, now: Mutex::default() }
    }

    pub(super) fn find(&self, key: Key) -> Option<Vec<u8>> {
        let note = self.bytes.get(self.known.get(&key)?.clone())?.to_vec();
        self.keep(key, &note);
        Some(note)
    }

    pub(super) fn keep(&self, key: Key, note: &[u8]) {
        let mut now = self.now.lock().unwrap_or_else(PoisonError::into_inner);
        now.insert(key, note.to_vec());
    }

    /// Writes the notes of this time, where they are others than those of last time.
    pub(super) fn leave(&self, program: Key) {
        let now = self.now.lock().unwrap_or_else(PoisonError::into_inner);
        if !now.keys().eq(self.known.keys()) {
            write_file(&self.at, &write_notes(program, &now));
        }
    }
}

fn write_notes(program: Key, notes: &BTreeMap<Key, Vec<u8>>) -> Vec<u8> {
    let mut whole = format!("{HEADING}\n{program}\n").into_bytes();
    for (key, note) in notes {
        whole.extend_from_slice(format!("{key} {}\n", note.len()).as_bytes());
        whole.extend_from_slice(note);
        whole.push(b'\n');
    }
    let seal = Key::of(&whole);
    whole.extend_from_slice(format!("{seal}\n").as_bytes());
    whole
}

/// `None` at the first slip.
fn read_notes(bytes: &[u8], program: Key) -> Option<BTreeMap<Key, Range<usize>>> {
    let end = bytes.len().checked_sub(65)?;
    let seal = line_at(bytes, end)?;
    (Key::read(seal)? == Key::of(&bytes[..end])).then_some(())?;
    let (heading, owner) = (line_at(bytes, 0)?, line_at(bytes, HEADING.len() + 1)?);
    (heading == HEADING && Key::read(owner)? == program).then_some(())?;
    let (mut notes, mut at) = (BTreeMap::new(), HEADING.len() + owner.len() + 2);
    while at < end {
        let line = line_at(bytes, at)?;
        let (key, length) = line.split_once(' ')?;
        let start = at + line.len() + 1;
        let note = start..start.checked_add(length.parse().ok()?)?;
        at = note.end.checked_add(1)?;
        notes.insert(Key::read(key)?, note);
    }
    (at == end).then_some(notes)
}

/// The line that begins at a byte, without its end; keys and figures alone.
fn line_at(bytes: &[u8], at: usize) -> Option<&str> {
    let rest = bytes.get(at..)?;
    let length = rest.iter().take(120).position(|byte| *byte == b'\n')?;
    std::str::from_utf8(&rest[..length]).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn notes_are_read_as_they_were_written_or_not_at_all() {
        let program = Key::of(b"program");
        let notes =
            BTreeMap::from([(Key::of(b"one"), b"a\nb\0".to_vec()), (Key::of(b"two"), Vec::new())]);
        let whole = write_notes(program, &notes);
        let read = read_notes(&whole, program).unwrap();
        let found: BTreeMap<Key, Vec<u8>> =
            read.into_iter().map(|(key, range)| (key, whole[range].to_vec())).collect();
        assert_eq!(found, notes);
        assert!(read_notes(&whole, Key::of(b"another")).is_none());
        for at in 0..whole.len() {
            let mut damaged = whole.clone();
            damaged[at] ^= 1;
            assert!(read_notes(&damaged, program).is_none(), "damaged at {at}");
            assert!(read_notes(&whole[..at], program).is_none(), "cut at {at}");
        }
    }
}
