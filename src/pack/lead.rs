//! What a relative link in a text leads to, said once for pages and for rules.

use std::sync::Arc;

use super::{Pack, Session, SessionId};
use crate::place::{FileId, Lent};
use crate::read::is_session;
use crate::resolve::{path_from, path_from_file};

/// What a link leads to.
#[derive(Clone, Copy, Debug)]
pub enum Lead<'p> {
    Session(&'p Session),
    /// A picture, by its path inside the pack.
    Picture(&'p str),
    /// A session that could not be read; what is wrong is said in its own file.
    Unread,
    /// A file or folder of the pack that is not published.
    Other,
    /// Nothing in the pack.
    Nowhere,
}

impl Pack {
    /// Follows a link that stands in a file of the pack. A space may be written `%20`. In what a neighbour wrote, a
    /// link to another of its sessions leads to that one here, if it is borrowed too.
    pub fn lead(&self, from: FileId, link: &str) -> Lead<'_> {
        let link = link.replace("%20", " ");
        let Some(path) = path_from_file(&self.files, from, &link) else {
            return Lead::Nowhere;
        };
        if let Some(lent) = &self.files.get(from).lent
            && let Some(session) = self.borrowed_from(lent, &link)
        {
            return Lead::Session(session);
        }
        if let Some((path, _)) = self.pictures.get_key_value(&path) {
            return Lead::Picture(path);
        }
        // Sessions are in the order of their ids; two files (a.yaml, a.yml) may share one.
        let id = SessionId::of_path(&path);
        let at = self.sessions.partition_point(|session| session.id < id);
        let alike = self.sessions[at..].iter().take_while(|session| session.id == id);
        if let Some(session) = alike.into_iter().find(|session| session.path == path) {
            return Lead::Session(session);
        }
        match self.paths.contains(&path) {
            true if is_session(&path, &self.paths) => Lead::Unread,
            true => Lead::Other,
            false => Lead::Nowhere,
        }
    }

    /// The session of this pack that is borrowed from where a link in a neighbour’s file leads.
    fn borrowed_from(&self, from: &Lent, link: &str) -> Option<&Session> {
        let path = path_from(&from.path, link)?;
        let is_it = |session: &&Arc<Session>| {
            let stands = session.borrowed.as_ref().map(|borrowed| &borrowed.stands);
            stands.is_some_and(|stands| stands.under == from.under && stands.path == path)
        };
        self.sessions.iter().find(is_it).map(|session| &**session)
    }
}
