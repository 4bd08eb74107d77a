//! What was published last, to be taken over where it would be made again just so.
//!
//! A hidden record beside the published folder (`.published.homeground-made` beside `published`) names each
//! file with its length and SHA-256, and under each [`Key`] what was made from it. It goes to no family and is
//! never trusted: a file is taken over only while its bytes have the recorded SHA-256, which is known without
//! reading them while its [`Stamp`] is as recorded; a path only while it stays inside the folder; and a record that
//! is damaged, or of another build of the program, counts as none.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};

use rayon::prelude::*;

use super::notes::Notes;
use super::record::{
    Published, PublishedFile, Record, Recorded, path_beside, read_file, read_record, write_file,
    write_record,
};
use super::stamp::{Stamp, TICK};
use super::{PublishFault, Workshop};
use crate::render::Bundle;
use crate::render::key::Key;
use crate::render::shelf::{Left, Made, Shelf};

/// The files published last, and what was made this time.
#[derive(Debug)]
pub struct LastTime {
    folder: PathBuf,
    record: PathBuf,
    /// The SHA-256 of the program; without it nothing is taken over.
    program: Option<Key>,
    files: Published,
    paths: BTreeMap<Key, String>,
    made: BTreeMap<Key, Vec<Recorded>>,
    notes: Notes,
    /// What was made or found this time.
    now: Mutex<BTreeMap<Key, Vec<Recorded>>>,
    /// Where a file is to lie, and the one it is to be.
    left: Mutex<BTreeMap<String, String>>,
    /// The files that were looked at and are as recorded.
    sound: Mutex<BTreeMap<String, Seen>>,
}

/// A file that is as recorded, with the stamp it then had.
#[derive(Clone, Copy, Debug)]
struct Seen {
    stamp: Option<Stamp>,
}

impl LastTime {
    /// Reads the record beside a target folder.
    pub fn look_up(target: &Path) -> Self {
        let target =
            super::real(&std::path::absolute(target).unwrap_or_else(|_| target.to_owned()));
        let program = std::env::current_exe().and_then(fs::read).ok().map(|bytes| Key::of(&bytes));
        let record = path_beside(&target, "made");
        let text = read_file(&record).and_then(|bytes| String::from_utf8(bytes).ok());
        let read = text.zip(program).and_then(|(text, program)| read_record(&text, program));
        let read = read.unwrap_or_default();
        Self {
            paths: read.files.iter().map(|(path, file)| (file.key, path.clone())).collect(),
            notes: Notes::look_up(&target, program),
            folder: target,
            record,
            program,
            files: read.files,
            made: read.made,
            now: Mutex::default(),
            left: Mutex::default(),
            sound: Mutex::default(),
        }
    }

    /// Puts a whole bundle into a workshop, and what is to stay: what is as it was last time is taken over,
    /// the rest written.
    ///
    /// # Errors
    /// Where the disk refuses.
    pub fn put_all(&self, bundle: &Bundle, workshop: &Workshop) -> Result<Published, PublishFault> {
        let put = |(path, bytes): (&String, &Vec<u8>)| {
            let file =
                PublishedFile { length: bytes.len() as u64, key: Key::of(bytes), stamp: None };
            let known = self.files.get(path).filter(|known| known.key == file.key);
            let stamp = match known.and_then(|_| self.look_at(path)) {
                Some(seen) => {
                    workshop.take_over(path, &self.folder.join(path), bytes)?;
                    seen.stamp
                }
                None => workshop.put(path, bytes)?,
            };
            Ok((path.clone(), PublishedFile { stamp, ..file }))
        };
        let files: Vec<(&String, &Vec<u8>)> = bundle.iter().collect();
        let mut published: Published =
            files.into_par_iter().map(put).collect::<Result<_, PublishFault>>()?;
        for (path, from) in held(&self.left).iter() {
            workshop.repeat_from(path, &self.folder.join(from))?;
            let stamp = held(&self.sound).get(from).and_then(|seen| seen.stamp);
            let file = self.files.get(from).map(|file| PublishedFile { stamp, ..*file });
            published.extend(file.map(|file| (path.clone(), file)));
        }
        Ok(published)
    }

    /// Leaves a record of what has been published, when nothing of last time is left. Where it can't be
    /// written, the next time takes longer.
    pub fn leave_record(&self, mut files: Published) {
        let Some(program) = self.program else { return };
        // Names came and went: the stamps are taken when the clock has gone on.
        rayon::join(|| self.notes.leave(program), || std::thread::sleep(TICK));
        files.par_iter_mut().for_each(|(path, file)| {
            let now = fs::symlink_metadata(self.folder.join(path)).ok();
            let now = now.and_then(|about| Stamp::of(&about));
            file.stamp = now
                .zip(file.stamp)
                .and_then(|(now, known)| (now.is_as_written(&known)).then_some(now));
        });
        let made = held(&self.now).clone();
        write_file(&self.record, write_record(program, &Record { files, made }).as_bytes());
    }

    /// Looks whether a file of last time is as recorded, and gives its stamp. It is read only where its stamp
    /// does not tell.
    fn look_at(&self, path: &str) -> Option<Seen> {
        if let Some(seen) = held(&self.sound).get(path) {
            return Some(*seen);
        }
        let (known, at) = (self.files.get(path)?, self.folder.join(path));
        let about = fs::symlink_metadata(&at).ok()?;
        let stamp = Stamp::of(&about);
        let is_known = stamp.is_some() && stamp == known.stamp;
        let is_sound = is_known
            || about.is_file()
                && about.len() == known.length
                && fs::read(&at).is_ok_and(|bytes| Key::of(&bytes) == known.key);
        let seen = is_sound.then_some(Seen { stamp })?;
        held(&self.sound).insert(path.to_owned(), seen);
        Some(seen)
    }

    /// The bytes of a file as recorded.
    fn bytes_of(&self, key: &Key) -> Option<Vec<u8>> {
        let path = self.paths.get(key)?;
        let at = self.folder.join(path);
        let length = self.files.get(path)?.length;
        let about = fs::symlink_metadata(&at).ok()?;
        let bytes = (about.is_file() && about.len() == length).then(|| fs::read(&at).ok())??;
        if Key::of(&bytes) != *key {
            return None;
        }
        held(&self.sound).insert(path.clone(), Seen { stamp: Stamp::of(&about) });
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

    fn leave(&self, key: Key, paths: &[String]) -> Option<Vec<Left>> {
        let recorded = self.made.get(&key).filter(|recorded| recorded.len() == paths.len())?;
        let from: Option<Vec<&String>> =
            recorded.iter().map(|(file, _)| self.paths.get(file)).collect();
        let from = from?;
        from.iter().all(|path| self.look_at(path).is_some()).then_some(())?;
        let pairs = paths.iter().cloned().zip(from.into_iter().cloned());
        held(&self.left).extend(pairs);
        held(&self.now).insert(key, recorded.clone());
        let left = |(key, ink): &Recorded| Left { key: *key, ink: ink.clone() };
        Some(recorded.iter().map(left).collect())
    }

    fn find_note(&self, key: Key) -> Option<Vec<u8>> {
        self.notes.find(key)
    }

    fn keep_note(&self, key: Key, note: &[u8]) {
        self.notes.keep(key, note);
    }
}

fn held<T>(shared: &Mutex<T>) -> MutexGuard<'_, T> {
    shared.lock().unwrap_or_else(PoisonError::into_inner)
}
