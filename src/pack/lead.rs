//! What a relative link in a text leads to, said once for pages and for rules.

use super::{Pack, Session, SessionId};
use crate::place::FileId;
use crate::read::is_session;
use crate::resolve::path_from_file;

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
    /// Follows a link that stands in a file of the pack. A space may be written `%20`.
    pub fn lead(&self, from: FileId, link: &str) -> Lead<'_> {
        let Some(path) = path_from_file(&self.files, from, &link.replace("%20", " ")) else {
            return Lead::Nowhere;
        };
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
}
