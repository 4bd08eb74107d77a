//! What was published last, to be taken over where it would be made again just so.
//!
//! A hidden record beside the published folder (`.published.homeground-made` beside `published`) names each
//! file with its length and SHA-256, and under each [`Key`] what was made from it. It goes to no family and is
//! never trusted: a file is taken over only while its bytes have the recorded SHA-256, a path only while it
//! stays inside the folder, and a record that is damaged, or of another build of the program, counts as none.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;
use std::fs;
use std::path::{Component, Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};

use rayon::prelude::*;

use super::Workshop;
use crate::render::Bundle;
use crate::render::key::Key;
use crate::render::shelf::{Made, Shelf};

const HEADING: &str = "homeground made 1";

/// A larger record is none of ours.
const LARGEST: u64 = 64 * 1024 * 1024;

/// What is recorded of one file that was made under a key: its SHA-256 and the ink of its pages.
type Recorded = (Key, Vec<f32>);

/// The files published last, and what was made this time.
#[derive(Debug)]
pub struct LastTime {
    folder: PathBuf,
    record: PathBuf,
    /// The SHA-256 of the program; without it nothing is taken over.
    program: Option<Key>,
    files: BTreeMap<String, (u64, Key)>,
    paths: BTreeMap<Key, String>,
    made: BTreeMap<Key, Vec<Recorded>>,
    /// What was made or found this time.
    now: Mutex<BTreeMap<Key, Vec<Recorded>>>,
    /// The files whose bytes were looked at and are as recorded.
    sound: Mutex<BTreeSet<String>>,
}

impl LastTime {
    /// Reads the record beside a target folder.
    pub fn look_up(target: &Path) -> Self {
        let target =
            super::real(&std::path::absolute(target).unwrap_or_else(|_| target.to_owned()));
        let program = std::env::current_exe().and_then(fs::read).ok().map(|bytes| Key::of(&bytes));
        let record = record_beside(&target);
        let read = program.and_then(|program| read_record(&record, program)).unwrap_or_default();
        let paths = read.files.iter().map(|(path, (_, key))| (*key, path.clone())).collect();
        Self {
            folder: target,
            record,
            program,
            files: read.files,
            paths,
            made: read.made,
            now: Mutex::default(),
            sound: Mutex::default(),
        }
    }

    /// Puts a whole bundle into a workshop: what is as it was last time is taken over, the rest written.
    ///
    /// # Errors
    /// Where the disk refuses.
    pub fn put_all(
        &self,
        bundle: &Bundle,
        workshop: &Workshop,
    ) -> Result<Published, super::PublishFault> {
        let sound = held(&self.sound);
        let files: Vec<(&String, &Vec<u8>)> = bundle.iter().collect();
        let put = |(path, bytes): (&String, &Vec<u8>)| {
            let key = Key::of(bytes);
            let is_as_it_was = sound.contains(path)
                && self.files.get(path).is_some_and(|(_, recorded)| *recorded == key);
            if is_as_it_was {
                workshop.take_over(path, &self.folder.join(path), bytes)?;
            } else {
                workshop.put(path, bytes)?;
            }
            Ok((path.clone(), (bytes.len() as u64, key)))
        };
        files.into_par_iter().map(put).collect()
    }

    /// Leaves a record of what has been published. Where it can't be written, the next time takes longer.
    pub fn leave_record(&self, files: Published) {
        let Some(program) = self.program else { return };
        let made = held(&self.now).clone();
        let text = write_record(program, &Record { files, made });
        let beside = self.record.with_extension("homeground-new");
        if fs::write(&beside, text).and_then(|()| fs::rename(&beside, &self.record)).is_err() {
            let _ = fs::remove_file(&beside);
        }
    }

    /// The bytes of a file as recorded.
    fn bytes_of(&self, key: &Key) -> Option<Vec<u8>> {
        let path = self.paths.get(key)?;
        let at = self.folder.join(path);
        let (length, _) = self.files.get(path)?;
        let about = fs::symlink_metadata(&at).ok()?;
        let bytes = (about.is_file() && about.len() == *length).then(|| fs::read(&at).ok())??;
        if Key::of(&bytes) != *key {
            return None;
        }
        held(&self.sound).insert(path.clone());
        Some(bytes)
    }
}

impl Shelf for LastTime {
    fn find(&self, key: Key) -> Option<Vec<Made>> {
        let recorded = self.made.get(&key)?;
        let found = recorded
            .iter()
            .map(|(file, ink)| Some(Made { bytes: self.bytes_of(file)?, ink: ink.clone() }));
        let found: Option<Vec<Made>> = found.collect();
        if found.is_some() {
            held(&self.now).insert(key, recorded.clone());
        }
        found
    }

    fn keep(&self, key: Key, made: &[Made]) {
        let recorded = made.iter().map(|made| (Key::of(&made.bytes), made.ink.clone())).collect();
        held(&self.now).insert(key, recorded);
    }
}

fn held<T>(shared: &Mutex<T>) -> MutexGuard<'_, T> {
    shared.lock().unwrap_or_else(PoisonError::into_inner)
}

/// Each published file with its length and SHA-256.
pub type Published = BTreeMap<String, (u64, Key)>;

#[derive(Debug, Default, PartialEq)]
struct Record {
    files: Published,
    made: BTreeMap<Key, Vec<Recorded>>,
}

fn record_beside(target: &Path) -> PathBuf {
    let name = target.file_name().map_or_else(String::new, |name| name.to_string_lossy().into());
    target.with_file_name(format!(".{name}.homeground-made"))
}

/// A heading, the program, a line for each file and each key, and the SHA-256 of all that.
fn write_record(program: Key, record: &Record) -> String {
    let mut text = format!("{HEADING}\n{program}\n");
    for (path, (length, key)) in &record.files {
        let _ = writeln!(text, "file {key} {length} {path}");
    }
    for (key, files) in &record.made {
        let _ = write!(text, "made {key}");
        for (file, ink) in files {
            let ink: Vec<String> =
                ink.iter().map(|share| format!("{:x}", share.to_bits())).collect();
            let _ = write!(text, " {file}:{}", ink.join(","));
        }
        text.push('\n');
    }
    let key = Key::of(text.as_bytes());
    let _ = writeln!(text, "{key}");
    text
}

fn read_record(path: &Path, program: Key) -> Option<Record> {
    let about = fs::symlink_metadata(path).ok()?;
    let is_ours = about.is_file() && about.len() <= LARGEST;
    let text = is_ours.then(|| fs::read_to_string(path).ok())??;
    read_record_text(&text, program)
}

/// `None` at the first slip.
fn read_record_text(text: &str, program: Key) -> Option<Record> {
    let body = text.get(..text.trim_end_matches('\n').rfind('\n')? + 1)?;
    (Key::read(text[body.len()..].trim_end())? == Key::of(body.as_bytes())).then_some(())?;
    let mut lines = body.lines();
    (lines.next()? == HEADING && Key::read(lines.next()?)? == program).then_some(())?;
    let mut record = Record::default();
    for line in lines {
        let (kind, rest) = line.split_once(' ')?;
        match kind {
            "file" => record.files.extend([read_file_line(rest)?]),
            "made" => record.made.extend([read_made_line(rest)?]),
            _ => return None,
        }
    }
    Some(record)
}

fn read_file_line(line: &str) -> Option<(String, (u64, Key))> {
    let mut words = line.splitn(3, ' ');
    let (key, length, path) =
        (Key::read(words.next()?)?, words.next()?.parse().ok()?, words.next()?);
    let is_inside = Path::new(path).components().all(|part| matches!(part, Component::Normal(_)));
    (is_inside && !path.is_empty()).then(|| (path.to_owned(), (length, key)))
}

fn read_made_line(line: &str) -> Option<(Key, Vec<Recorded>)> {
    let mut words = line.split(' ');
    let key = Key::read(words.next()?)?;
    let read_file = |word: &str| {
        let (file, ink) = word.split_once(':')?;
        let shares = ink.split(',').filter(|share| !share.is_empty());
        let ink = shares.map(|share| u32::from_str_radix(share, 16).ok().map(f32::from_bits));
        Some((Key::read(file)?, ink.collect::<Option<Vec<f32>>>()?))
    };
    Some((key, words.map(read_file).collect::<Option<_>>()?))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn record() -> Record {
        let (one, two) = (Key::of(b"one"), Key::of(b"two"));
        Record {
            files: [("a b/ü.html".to_owned(), (3, one)), ("x.pdf".to_owned(), (7, two))].into(),
            made: [(Key::of(b"k"), vec![(one, vec![]), (two, vec![0.25, 0.1])])].into(),
        }
    }

    #[test]
    fn a_record_is_read_as_it_was_written() {
        let program = Key::of(b"program");
        let text = write_record(program, &record());
        assert_eq!(read_record_text(&text, program), Some(record()));
        assert_eq!(read_record_text(&text, Key::of(b"another")), None);
    }

    #[test]
    fn a_damaged_record_is_none() {
        let program = Key::of(b"program");
        let text = write_record(program, &record());
        let seal = |body: &str| format!("{body}{}\n", Key::of(body.as_bytes()));
        let body = &text[..=text.trim_end().rfind('\n').unwrap()];
        assert_eq!(seal(body), text);
        for at in (0..text.len() - 1).filter(|at| text.is_char_boundary(*at)) {
            assert_eq!(read_record_text(&text[..at], program), None, "cut at {at}");
        }
        let outside = ["../x.pdf", "/x.pdf", "a/../../x.pdf", ""];
        for path in outside {
            let moved = seal(&body.replace(" x.pdf", &format!(" {path}")));
            assert_eq!(read_record_text(&moved, program), None, "{path}");
        }
    }
}
