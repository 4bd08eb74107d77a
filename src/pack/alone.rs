//! A pack as one session sees it: what all sessions share, and nothing of the others.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use super::{Pack, Printing, Session, ThingsCalled};
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
        // Every field is named, so that a new one has to be thought of; and thousands of sessions are not copied
        // only to be thrown away.
        Self {
            title: self.title.clone(),
            school: self.school.clone(),
            language: self.language.clone(),
            written_in: self.written_in.clone(),
            languages: self.languages.clone(),
            translations: BTreeMap::new(),
            translation_slips: Vec::new(),
            paper: self.paper,
            printing: self.printing.clone(),
            welcome: self.welcome.clone(),
            cautions: self.cautions.clone(),
            contact: self.contact.clone(),
            address: self.address.clone(),
            moderate_from: self.moderate_from,
            ink_budget: self.ink_budget,
            room_height: self.room_height,
            things: self.things.clone(),
            things_twice: self.things_twice.clone(),
            curriculum: self.curriculum.clone(),
            untranslated: self.untranslated.clone(),
            called: self.called.clone(),
            poses: self.poses.clone(),
            sessions: Vec::new(),
            units: self.units.clone(),
            pictures: BTreeMap::new(),
            look: BTreeMap::new(),
            paths: BTreeSet::new(),
            files: Files::default(),
            file: self.file,
            today: Date::read_quantity(NO_DAY).unwrap_or(self.today),
            has_changes: self.has_changes,
            allow: Vec::new(),
            is_whole: self.is_whole,
            is_shared_unread: self.is_shared_unread,
        }
    }

    /// What a rule of one session may look at: the language, bounds such as the height of a room, and the poses; no
    /// lists, no cautions, no texts of files.
    #[must_use]
    pub fn bounds_alone(&self) -> Self {
        Self {
            title: String::new(),
            school: None,
            languages: Vec::new(),
            printing: Printing::default(),
            welcome: None,
            cautions: Vec::new(),
            contact: None,
            address: None,
            things: BTreeMap::new(),
            things_twice: Vec::new(),
            curriculum: None,
            called: ThingsCalled::default(),
            units: Vec::new(),
            file: None,
            ..self.shared_alone()
        }
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
