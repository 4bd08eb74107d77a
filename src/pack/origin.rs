//! What each session of a pack comes from, as marks that are quickly had: two sessions of one mark are the same
//! session in the same surroundings, and all that is made or found of them is the same.
//!
//! A session follows from the text of its file, the texts of its translations, its pictures, what its links lead
//! to, and what all sessions share. The other way round nothing is said: a remark that is added is another text.

use std::collections::BTreeMap;
use std::sync::Arc;

use rayon::prelude::*;

use super::{Lead, Pack, Session, SessionId};
use crate::place::{FileId, FileText, Placed};
use crate::prose::links_of;
use crate::read::translation::translation_of;
use crate::render::key::{Key, KeyMaker};

/// Marks of the sessions of one pack.
#[derive(Debug)]
pub struct Origins {
    /// The texts of all files that are no session and no translation of one, and what their links lead to.
    shared: Key,
    sessions: BTreeMap<FileId, Key>,
}

impl Origins {
    pub fn of(pack: &Pack) -> Self {
        let mut files: BTreeMap<SessionId, Vec<&FileText>> = BTreeMap::new();
        for session in &pack.sessions {
            files.insert(session_of(&pack.files.get(session.file).path), Vec::new());
        }
        let mut shared = KeyMaker::default();
        for file in pack.files.iter() {
            match files.get_mut(&session_of(&file.path)) {
                Some(own) => own.push(file),
                None => shared = shared.with(&file.path).with(&*file.text),
            }
        }
        let pictures: BTreeMap<&str, Key> =
            pack.pictures.iter().map(|(path, bytes)| (path.as_str(), Key::of(bytes))).collect();
        // The usual cautions and the like stand in every session.
        shared = with_leads(shared, &pack.texts(), pack, &pictures);
        let names = pack.sessions.iter().fold(KeyMaker::default(), |key, session| {
            key.with(session.id.as_str()).with(session.title.to_string())
        });
        let names = names.finish().to_string();
        let mark = |session: &Arc<Session>| {
            let own = files.get(&session_of(&pack.files.get(session.file).path));
            (session.file, mark_of(session, pack, own, (&pictures, &names)))
        };
        let sessions = pack.sessions.par_iter().map(mark).collect();
        Self { shared: shared.finish(), sessions }
    }

    /// The mark of a session, without what all share.
    pub fn of_session(&self, session: &Session) -> Option<Key> {
        self.sessions.get(&session.file).copied()
    }

    /// The mark of what is written in no session.
    pub const fn shared(&self) -> Key {
        self.shared
    }
}

fn mark_of(
    session: &Session,
    pack: &Pack,
    own: Option<&Vec<&FileText>>,
    (pictures, names): (&BTreeMap<&str, Key>, &String),
) -> Key {
    let mut key = KeyMaker::default().with(&pack.files.get(session.file).path);
    for file in own.into_iter().flatten() {
        key = key.with(&file.path).with(&*file.text);
    }
    for (path, _) in pack.pictures_of(session) {
        let mark = pictures.get(path.as_str()).map(Key::to_string);
        key = key.with(&path).with(mark.unwrap_or_default());
    }
    for named in &session.builds_on {
        // Where there is none, the nearest name is told.
        key = match pack.find_session(named) {
            Some(_) => key.with([6]),
            None => key.with([7]).with(names),
        };
    }
    with_leads(key.with([0]), &session.texts(), pack, pictures).finish()
}

fn with_leads(
    mut key: KeyMaker,
    texts: &[Placed<&str>],
    pack: &Pack,
    pictures: &BTreeMap<&str, Key>,
) -> KeyMaker {
    for text in texts {
        for link in links_of(text.value) {
            key = with_lead(key, pack.lead(text.place.file, &link), pictures);
        }
    }
    key
}

/// Adds what a link leads to, as far as anything is made of that.
fn with_lead(key: KeyMaker, lead: Lead<'_>, pictures: &BTreeMap<&str, Key>) -> KeyMaker {
    match lead {
        Lead::Session(to) => key.with([1, u8::from(to.is_retired())]).with(to.id.as_str()),
        Lead::Picture(path) => {
            let mark = pictures.get(path).map(Key::to_string);
            key.with([2]).with(path).with(mark.unwrap_or_default())
        }
        Lead::Other => key.with([3]),
        Lead::Nowhere => key.with([4]),
        Lead::Unread => key.with([5]),
    }
}

/// The id of the session that a file is, or is a translation of.
fn session_of(path: &str) -> SessionId {
    match translation_of(path) {
        Some((original, _)) => SessionId::of_path(&original),
        None => SessionId::of_path(path),
    }
}

/// Marks of the pictures of a pack and of its own look, each by its path.
pub fn mark_of_files(files: &BTreeMap<String, Arc<[u8]>>) -> Key {
    let all = files.iter();
    all.fold(KeyMaker::default(), |key, (path, bytes)| key.with(path).with(bytes)).finish()
}
