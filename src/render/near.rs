//! The near way to what was published before: by what a session comes from ([`Origins`]), not by what it says, so
//! that nothing need be shown, laid out or read again of a session whose file is as it was.
//!
//! The far way stays behind it: where a text is another, a page is still found by its view and a sheet by its
//! session (`site/templates.rs`, `print/desk.rs`), and what is found there can be found the near way next time.
//! Only where everything is asked for is there a near way: for one file alone it would cost more than it saves.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::Publication;
use super::key::{Key, KeyMaker};
use super::shelf::{Left, Made, Shelf};
use crate::pack::{Origins, Session};
use crate::place::FileId;

/// The marks of one edition.
#[derive(Debug)]
pub struct Near {
    shared: KeyMaker,
    sessions: BTreeMap<FileId, Key>,
}

impl Near {
    /// Marks of the sessions of a publication, by all that its pages and sheets share.
    pub(super) fn of(publication: &Publication<'_>) -> Self {
        let pack = publication.pack;
        let origins = Origins::of(pack);
        let shared = KeyMaker::default()
            .with(publication.words.language())
            .with(publication.house.own_key())
            .with(origins.shared().to_string())
            .with_all_of(&(&publication.editions, publication.edition))
            .with_all_of(&pack.shared_alone());
        let mark = |session: &Arc<Session>| Some((session.file, origins.of_session(session)?));
        Self { shared, sessions: pack.sessions.iter().filter_map(mark).collect() }
    }

    fn key(&self, what: &str, session: &Session) -> Option<Key> {
        let own = self.sessions.get(&session.file)?;
        Some(self.shared.clone().with(what).with(own.to_string()).finish())
    }
}

impl<'p> Publication<'p> {
    /// The shelf, and the mark of what is made of a session; nothing where there is no near way.
    pub(super) fn near(&self, what: &str, session: &Session) -> Option<(&'p dyn Shelf, Key)> {
        let shelf = self.order.shelf.filter(|_| self.order.only.is_none())?;
        let near = self.gathered.near.get_or_init(|| Near::of(self));
        Some((shelf, near.key(what, session)?))
    }

    /// Leaves files of a session as they were published, if they would be made again just so; `paths` are
    /// below the folder of this language.
    pub(super) fn leave(
        &self,
        near: Option<(&'p dyn Shelf, Key)>,
        paths: &[String],
    ) -> Option<Vec<Left>> {
        let (shelf, key) = near?;
        let folder = &self.editions[self.edition].folder;
        let paths: Vec<String> = paths.iter().map(|path| format!("{folder}{path}")).collect();
        shelf.leave(key, &paths)
    }
}

/// Keeps what was made of a session for the near way.
pub(super) fn keep_near(near: Option<(&dyn Shelf, Key)>, made: &[Made]) {
    if let Some((shelf, key)) = near {
        shelf.keep(key, made);
    }
}
