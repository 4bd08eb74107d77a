//! Files as they were read before: one whose bytes are still the same is not read again, and the session in it is
//! the very one that was resolved then.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::outcome::{Outcome, ReadFile};
use crate::pack::{Pack, Session};
use crate::place::FileId;

/// So many texts of one file are remembered: as it is now, and as it was when it was last sound.
const VERSIONS: usize = 2;

/// What files came to, while the shared files and the list of a pack’s files stay as they are; whoever keeps it
/// forgets it when one of them changes, for a file is told by its place in the list.
#[derive(Debug, Default)]
pub struct ReadBefore {
    files: BTreeMap<FileId, Vec<Known>>,
}

/// What the bytes of a file came to.
#[derive(Debug)]
struct Known {
    bytes: Arc<[u8]>,
    read: ReadFile,
    /// A session is remembered when it has been resolved.
    is_whole: bool,
}

impl ReadBefore {
    pub(super) fn find(&self, file: FileId, bytes: &Arc<[u8]>) -> Option<ReadFile> {
        let known = self.files.get(&file)?.iter();
        let mut same =
            known.filter(|known| Arc::ptr_eq(&known.bytes, bytes) || known.bytes == *bytes);
        same.find(|known| known.is_whole).map(|known| known.read.clone())
    }

    /// Remembers what a file came to.
    pub(super) fn note(&mut self, file: FileId, bytes: Arc<[u8]>, read: &ReadFile) {
        let versions = self.files.entry(file).or_default();
        let at = versions.iter().position(|known| known.bytes == bytes && known.is_whole);
        let known = at.map_or_else(|| Known::of(bytes, read), |at| versions.remove(at));
        versions.push(known);
        if versions.len() > VERSIONS {
            versions.remove(0);
        }
    }

    /// Remembers the sessions as they were resolved.
    pub fn note_resolved(&mut self, pack: &Pack) {
        for session in &pack.sessions {
            let known = self.files.get_mut(&session.file).and_then(|versions| versions.last_mut());
            if let Some(known) = known.filter(|known| !known.is_whole) {
                known.put(session);
            }
        }
    }
}

impl Known {
    fn of(bytes: Arc<[u8]>, read: &ReadFile) -> Self {
        let (text, outcome, findings, tree) = read;
        let is_whole = !matches!(outcome, Outcome::Session(Some(_)));
        let outcome = if is_whole { outcome.clone() } else { Outcome::Nothing };
        Self { bytes, read: (Arc::clone(text), outcome, findings.clone(), tree.clone()), is_whole }
    }

    fn put(&mut self, session: &Arc<Session>) {
        self.read.1 = Outcome::Resolved(Arc::clone(session));
        self.is_whole = true;
    }
}
