//! The record of what was published last, as a text that is sealed with its own SHA-256.
//!
//! A heading, the program, a line for each file (SHA-256, length, stamp, path), a line for each key with the files
//! made under it and the ink of their pages. `None` is read from anything else.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::fs;
use std::path::{Component, Path, PathBuf};

use super::stamp::Stamp;
use crate::render::key::Key;

const HEADING: &str = "homeground made 2";

/// A larger record is none of ours.
pub(super) const LARGEST: u64 = 256 * 1024 * 1024;

/// What is recorded of one file that was made under a key: its SHA-256 and the ink of its pages.
pub(super) type Recorded = (Key, Vec<f32>);

/// A published file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PublishedFile {
    pub length: u64,
    pub key: Key,
    /// Its stamp when these were its bytes.
    pub(super) stamp: Option<Stamp>,
}

/// Every published file by its path.
pub type Published = BTreeMap<String, PublishedFile>;

#[derive(Debug, Default, PartialEq)]
pub(super) struct Record {
    pub files: Published,
    pub made: BTreeMap<Key, Vec<Recorded>>,
}

/// `.published.homeground-made` beside `published`.
pub(super) fn path_beside(target: &Path, ending: &str) -> PathBuf {
    let name = target.file_name().map_or_else(String::new, |name| name.to_string_lossy().into());
    target.with_file_name(format!(".{name}.homeground-{ending}"))
}

/// The bytes of a file of ours that is not too large.
pub(super) fn read_file(path: &Path) -> Option<Vec<u8>> {
    let about = fs::symlink_metadata(path).ok()?;
    (about.is_file() && about.len() <= LARGEST).then(|| fs::read(path).ok())?
}

/// Writes a file beside and puts it in its place. Where that can't be, the next time takes longer.
pub(super) fn write_file(path: &Path, bytes: &[u8]) {
    let beside = path.with_extension("homeground-new");
    if fs::write(&beside, bytes).and_then(|()| fs::rename(&beside, path)).is_err() {
        let _ = fs::remove_file(&beside);
    }
}

pub(super) fn write_record(program: Key, record: &Record) -> String {
    let mut text = format!("{HEADING}\n{program}\n");
    for (path, PublishedFile { length, key, stamp }) in &record.files {
        let stamp = stamp.map_or_else(|| "-".to_owned(), |stamp| stamp.to_string());
        let _ = writeln!(text, "file {key} {length} {stamp} {path}");
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

/// `None` at the first slip.
pub(super) fn read_record(text: &str, program: Key) -> Option<Record> {
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

fn read_file_line(line: &str) -> Option<(String, PublishedFile)> {
    let mut words = line.splitn(4, ' ');
    let (key, length) = (Key::read(words.next()?)?, words.next()?.parse().ok()?);
    let (stamp, path) = (Stamp::read(words.next()?), words.next()?);
    let is_inside = Path::new(path).components().all(|part| matches!(part, Component::Normal(_)));
    let file = PublishedFile { length, key, stamp };
    (is_inside && !path.is_empty()).then(|| (path.to_owned(), file))
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
        let stamp = Stamp::read("1:2:3:-4:5");
        assert!(stamp.is_some());
        Record {
            files: [
                ("a b/ü.html".to_owned(), PublishedFile { length: 3, key: one, stamp }),
                ("x.pdf".to_owned(), PublishedFile { length: 7, key: two, stamp: None }),
            ]
            .into(),
            made: [(Key::of(b"k"), vec![(one, vec![]), (two, vec![0.25, 0.1])])].into(),
        }
    }

    #[test]
    fn a_record_is_read_as_it_was_written() {
        let program = Key::of(b"program");
        let text = write_record(program, &record());
        assert_eq!(read_record(&text, program), Some(record()));
        assert_eq!(read_record(&text, Key::of(b"another")), None);
    }

    #[test]
    fn a_damaged_record_is_none() {
        let program = Key::of(b"program");
        let text = write_record(program, &record());
        let seal = |body: &str| format!("{body}{}\n", Key::of(body.as_bytes()));
        let body = &text[..=text.trim_end().rfind('\n').unwrap()];
        assert_eq!(seal(body), text);
        for at in (0..text.len() - 1).filter(|at| text.is_char_boundary(*at)) {
            assert_eq!(read_record(&text[..at], program), None, "cut at {at}");
        }
        let outside = ["../x.pdf", "/x.pdf", "a/../../x.pdf", ""];
        for path in outside {
            let moved = seal(&body.replace(" x.pdf", &format!(" {path}")));
            assert_eq!(read_record(&moved, program), None, "{path}");
        }
    }
}
