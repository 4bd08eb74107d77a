//! Files as they were read before: one whose bytes are still the same is not read again, and the session in it is
//! the very one that was resolved then, so long as what it takes from the shared files is the same.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::outcome::{Outcome, ReadFile};
use super::session_file::SessionDoc;
use crate::pack::{Pack, Session};
use crate::place::FileId;

/// So many texts of one file are remembered: as it is now, and as it was when it was last sound.
const VERSIONS: usize = 2;
/// So many ways a text was resolved are remembered: with the shared files as they are, and as they were last sound.
const WAYS: usize = 2;
/// The numbers that a pack’s own files have; those of neighbours lie above.
const NUMBERS: u64 = 1 << 31;

/// What files came to. It needs no reminding: what no longer holds is not given.
#[derive(Debug, Default)]
pub struct ReadBefore {
    numbers: BTreeMap<String, FileId>,
    files: BTreeMap<FileId, Vec<Known>>,
    /// The shared files that this run resolves with.
    shared: Shared,
}

/// What a file’s outcome rests on besides its own bytes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Footing {
    /// It is read as the translation of another file.
    pub is_translation: bool,
    /// Its tree is kept, since it has translations.
    pub is_original: bool,
    /// It uses what is said once in shared.yaml.
    pub uses_shelf: bool,
    /// The bytes of that, where it is there.
    pub shelf: Option<Arc<[u8]>>,
}

/// The bytes of the shared files that sessions are resolved with; nothing for one that is not there.
pub(super) type Shared = Vec<Option<Arc<[u8]>>>;

/// What the bytes of a file came to.
#[derive(Debug)]
struct Known {
    bytes: Arc<[u8]>,
    footing: Footing,
    /// Without the document, where it is a session.
    read: ReadFile,
    doc: Option<Box<SessionDoc>>,
    resolved: Vec<(Shared, Arc<Session>)>,
}

impl ReadBefore {
    /// Numbers for the files of a pack, in the order of their paths. A file keeps the number it had; where there is no
    /// room between two for a new one, all are numbered anew and nothing is known of any.
    pub(super) fn number(&mut self, paths: &[&str]) -> Vec<FileId> {
        let numbers = self.fill_gaps(paths).unwrap_or_else(|| {
            self.numbers.clear();
            self.files.clear();
            self.fill_gaps(paths).unwrap_or_else(|| (0..).map(FileId).take(paths.len()).collect())
        });
        let named = paths.iter().map(|path| (*path).to_owned()).zip(numbers.iter().copied());
        let named: BTreeMap<String, FileId> = named.collect();
        let gone = self.numbers.iter().filter(|(path, _)| !named.contains_key(*path));
        for (_, number) in gone {
            self.files.remove(number);
        }
        self.numbers = named;
        numbers
    }

    /// The known numbers, and others spread over the gaps between them.
    fn fill_gaps(&self, paths: &[&str]) -> Option<Vec<FileId>> {
        let known: Vec<Option<FileId>> =
            paths.iter().map(|path| self.numbers.get(*path).copied()).collect();
        let mut numbers: Vec<FileId> = Vec::with_capacity(paths.len());
        while let Some(known_here) = known.get(numbers.len()) {
            if let Some(number) = known_here {
                numbers.push(*number);
                continue;
            }
            let new = known[numbers.len()..].iter().take_while(|known| known.is_none()).count();
            let floor = numbers.last().map_or(0, |last| u64::from(last.0) + 1);
            let above = known.get(numbers.len() + new).copied().flatten();
            let room = above.map_or(NUMBERS, |above| u64::from(above.0)).checked_sub(floor)?;
            let step = room / (u64::try_from(new).ok()? + 1);
            if step == 0 {
                return None;
            }
            let spread = (1..=new).zip(1..).map(|(_, at): (usize, u64)| floor + step * at);
            let spread: Option<Vec<u32>> =
                spread.map(|number| u32::try_from(number).ok()).collect();
            numbers.extend(spread?.into_iter().map(FileId));
        }
        Some(numbers)
    }

    /// Says what sessions are resolved with from here on.
    pub(super) fn rest_on(&mut self, shared: Shared) {
        self.shared = shared;
    }

    /// What a file came to, if it would rest on the same now.
    pub(super) fn find(
        &self,
        file: FileId,
        bytes: &Arc<[u8]>,
        footing: &Footing,
    ) -> Option<ReadFile> {
        let is_it = |known: &&Known| known.bytes == *bytes && known.footing.holds(footing);
        let known = self.files.get(&file)?.iter().find(is_it)?;
        let mut read = known.read.clone();
        let resolved = known.resolved.iter().find(|(shared, _)| *shared == self.shared);
        match (resolved, &known.doc) {
            (Some((_, session)), _) => read.outcome = Outcome::Resolved(Arc::clone(session)),
            (None, Some(doc)) => read.outcome = Outcome::Session(Some(doc.clone())),
            (None, None) => {}
        }
        Some(read)
    }

    /// Remembers what a file came to.
    pub(super) fn note(
        &mut self,
        file: FileId,
        bytes: Arc<[u8]>,
        footing: Footing,
        read: &ReadFile,
    ) {
        let versions = self.files.entry(file).or_default();
        let is_it = |known: &Known| known.bytes == bytes && known.footing.holds(&footing);
        let at = versions.iter().position(is_it);
        let known = at.map(|at| versions.remove(at));
        versions.push(known.unwrap_or_else(|| Known::of(bytes, footing, read)));
        if versions.len() > VERSIONS {
            versions.remove(0);
        }
    }

    /// Remembers the sessions as they were resolved.
    pub fn note_resolved(&mut self, pack: &Pack) {
        for session in pack.sessions.iter().filter(|session| session.borrowed.is_none()) {
            let known = self.files.get_mut(&session.file).and_then(|versions| versions.last_mut());
            if let Some(known) = known.filter(|known| known.doc.is_some()) {
                known.put(&self.shared, session);
            }
        }
    }
}

impl Footing {
    /// Whether what rests on this one rests as well on another.
    fn holds(&self, now: &Self) -> bool {
        self.is_translation == now.is_translation
            && self.is_original == now.is_original
            && (!self.uses_shelf || self.shelf == now.shelf)
    }
}

impl Known {
    fn of(bytes: Arc<[u8]>, footing: Footing, read: &ReadFile) -> Self {
        let (doc, outcome) = match &read.outcome {
            Outcome::Session(Some(doc)) => (Some(doc.clone()), Outcome::Nothing),
            other => (None, other.clone()),
        };
        let (text, findings) = (Arc::clone(&read.text), read.findings.clone());
        let (tree, uses_shelf) = (read.tree.clone(), read.uses_shelf);
        let read = ReadFile { text, outcome, findings, tree, uses_shelf };
        Self { bytes, footing, read, doc, resolved: Vec::new() }
    }

    fn put(&mut self, shared: &Shared, session: &Arc<Session>) {
        if self.resolved.iter().all(|(with, _)| with != shared) {
            self.resolved.push((shared.clone(), Arc::clone(session)));
        }
        if self.resolved.len() > WAYS {
            self.resolved.remove(0);
        }
    }
}
