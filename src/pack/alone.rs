//! A pack as one session sees it: what all sessions share, and nothing of the others.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use super::{Pack, Session};
use crate::place::Files;
use crate::quantity::{Date, Quantity};

/// The day that stands where none may be asked for.
const NO_DAY: &str = "2000-01-01";

impl Pack {
    /// What all sessions share. What is made from it and one session changes only with these: it holds no
    /// sessions, no pictures, no texts of
    /// files, no look, no day, and nothing that is only for `inspect`.
    #[must_use]
    pub fn shared_alone(&self) -> Self {
        let mut shared = self.clone();
        shared.sessions = Vec::new();
        shared.translations = BTreeMap::new();
        shared.translation_slips = Vec::new();
        shared.pictures = BTreeMap::new();
        shared.look = BTreeMap::new();
        shared.paths = BTreeSet::new();
        shared.files = Files::default();
        shared.allow = Vec::new();
        shared.today = Date::read_quantity(NO_DAY).unwrap_or(self.today);
        shared
    }

    /// The pictures that a session and its parts show, by path.
    pub fn pictures_of(&self, session: &Session) -> BTreeMap<String, Arc<[u8]>> {
        let parts = session.parts.iter().flat_map(|part| &part.pictures);
        session
            .pictures
            .iter()
            .chain(parts)
            .filter_map(|picture| self.pictures.get_key_value(picture.path.as_ref()?))
            .map(|(path, bytes)| (path.clone(), Arc::clone(bytes)))
            .collect()
    }
}
