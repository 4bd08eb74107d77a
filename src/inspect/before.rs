//! What was found before: a session whose text is still the same is not inspected again, so long as
//! nothing else that it is judged by has changed.

use std::collections::BTreeMap;
use std::sync::Arc;

use crate::finding::Finding;
use crate::pack::{Lead, Pack, Session};
use crate::plan::Plans;
use crate::prose::links_of;
use crate::render::key::{Key, KeyMaker};

/// Plans and findings of sessions, while the shared files, the list of files and the day stay as they are;
/// whoever keeps it forgets it when one of them changes.
#[derive(Debug, Default)]
pub struct FoundBefore {
    pub(super) sessions: BTreeMap<Key, (Arc<Plans>, Vec<Finding>)>,
}

/// A mark of what a session is judged by that may change while the shared files do not: its own text, and
/// what its links lead to.
pub(super) fn key_of(session: &Session, pack: &Pack) -> Key {
    let file = pack.files.get(session.file);
    let mut key = KeyMaker::default().with(session.file.0.to_le_bytes()).with(&file.text);
    for text in session.texts() {
        if !text.contains("](") && !text.contains("]:") {
            continue;
        }
        for link in links_of(text.value) {
            key = match pack.lead(text.place.file, &link) {
                Lead::Session(to) => key.with([1, u8::from(to.is_retired())]).with(to.id.as_str()),
                Lead::Picture(_) => key.with([2]),
                Lead::Other => key.with([3]),
                Lead::Nowhere => key.with([4]),
            };
        }
    }
    key.finish()
}
