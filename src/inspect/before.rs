//! What was found before: a session that is still the same is not inspected again, so long as nothing else that it
//! is judged by has changed.

use std::collections::BTreeMap;
use std::sync::Arc;

use crate::finding::Finding;
use crate::pack::{Lead, Pack, Session};
use crate::place::FileId;
use crate::plan::Plans;
use crate::prose::links_of;

/// Plans and findings of sessions, while the shared files, the list of files and the day stay as they are;
/// whoever keeps it forgets it when one of them changes.
#[derive(Debug, Default)]
pub struct FoundBefore {
    sessions: BTreeMap<FileId, Looked>,
}

/// What was found in one session.
#[derive(Clone, Debug)]
pub(super) struct Looked {
    session: Arc<Session>,
    /// Each link of its texts, with the file it stands in and what it led to: that may change while the session
    /// does not.
    links: Vec<(FileId, String, Led)>,
    pub plans: Arc<Plans>,
    pub found: Vec<Finding>,
}

/// What a link leads to, as far as a rule asks.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Led {
    Session { id: String, is_retired: bool },
    Picture,
    Unread,
    Other,
    Nowhere,
}

impl Looked {
    pub(super) fn of(
        session: &Arc<Session>,
        pack: &Pack,
        plans: Arc<Plans>,
        found: Vec<Finding>,
    ) -> Self {
        let texts = session.texts();
        let links = texts.iter().flat_map(|text| {
            let links = links_of(text.value).into_iter();
            links.map(|link| (text.place.file, led(pack, text.place.file, &link), link))
        });
        let links = links.map(|(file, led, link)| (file, link, led)).collect();
        Self { session: Arc::clone(session), links, plans, found }
    }
}

impl FoundBefore {
    /// What was found in a session, if it is the very one that was inspected and its links lead where they led.
    pub(super) fn find(&self, session: &Arc<Session>, pack: &Pack) -> Option<Looked> {
        let known = self.sessions.get(&session.file)?;
        let is_same = Arc::ptr_eq(&known.session, session)
            && known.links.iter().all(|(file, link, before)| led(pack, *file, link) == *before);
        is_same.then(|| known.clone())
    }

    pub(super) fn remember(&mut self, looked: Vec<Looked>) {
        self.sessions = looked.into_iter().map(|looked| (looked.session.file, looked)).collect();
    }
}

fn led(pack: &Pack, file: FileId, link: &str) -> Led {
    match pack.lead(file, link) {
        Lead::Session(to) => Led::Session { id: to.id.to_string(), is_retired: to.is_retired() },
        Lead::Picture(_) => Led::Picture,
        Lead::Unread => Led::Unread,
        Lead::Other => Led::Other,
        Lead::Nowhere => Led::Nowhere,
    }
}
