//! A resolved pack: sessions with the shared equipment, cautions, licence and curriculum filled in.
//!
//! These are the types that every later stage works on. Nothing here knows of YAML; each value
//! still carries the place it was written at.

mod allowance;
mod alone;
mod called;
mod children_texts;
mod equipment;
mod filling;
mod fitness;
mod id;
mod lead;
mod origin;
mod part;
mod part_space;
mod printing;
mod session;
mod unit;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

pub use allowance::Allowance;
pub use called::ThingsCalled;
pub use children_texts::{children_texts, plain_paragraphs};
pub use equipment::{Limits, Need, Refused, Substitute, Thing, counted};
pub use filling::filled_mass;
pub use fitness::{Fault as MisfitFault, Figures, Misfit, misfits};
pub use id::SessionId;
pub use lead::Lead;
pub use origin::{Origins, mark_of_files};
pub use part::{
    Alternative, Fault, Measure, Part, PartKind, PartLengths, Points, PointsFormula, Reference,
    ThrowRules,
};
pub use part_space::{FlightSaid, PartSpace};
pub use printing::{PrintWishes, Printing};
pub use session::{
    Adaptations, AdultTime, Borrowed, Film, Picture, Question, Session, Space, Standing,
};
pub use unit::{BringBack, Cover, GatherStep, NoSchool, Unit, UnitDay, UnitEntry};

use crate::figure::library::Library;
use crate::finding::Finding;
use crate::place::{FileId, Files, Placed};
use crate::quantity::{Ages, Date, Decimal, Length};
use crate::read::translation::{is_original, translation_of};
use crate::read::words::Paper;
use crate::read::{Line, Prose, is_session};

/// A whole pack.
#[derive(Clone, Debug)]
pub struct Pack {
    pub title: String,
    pub school: Option<String>,
    /// BCP 47 tag of the language the sessions are written in.
    pub language: Placed<String>,
    /// The language that its files are written in; `language` is another in an edition of a translation.
    pub written_in: String,
    /// The other languages that it is published in, in the order of their tags.
    pub languages: Vec<String>,
    /// The sessions that are translated, with the pack’s own words.
    pub translations: BTreeMap<String, Translation>,
    /// What was met while translations were laid over their originals.
    pub translation_slips: Vec<Finding>,
    pub paper: Paper,
    /// What is printed of each session, and how.
    pub printing: Printing,
    pub welcome: Option<Placed<Prose>>,
    /// The usual cautions, shown in every session after its own.
    pub cautions: Vec<Placed<Prose>>,
    pub contact: Option<Placed<Line>>,
    pub address: Option<Placed<Line>>,
    /// The metabolic equivalent that moderate effort begins at.
    pub moderate_from: Decimal,
    /// The ink that a printed page may take, in per cent of it.
    pub ink_budget: Decimal,
    /// The height of a usual room.
    pub room_height: Length,
    /// The shared list, by name.
    pub things: BTreeMap<String, Arc<Thing>>,
    /// Names that the shared list has once already, where they stand again.
    pub things_twice: Vec<Placed<Line>>,
    pub curriculum: Option<Curriculum>,
    /// In another language than the original’s: what of its own is not translated, and the language of that.
    pub untranslated: Option<(String, Vec<String>)>,
    /// What things are called in this language, where it is not the pack’s own.
    pub called: ThingsCalled,
    /// The poses of the library with the pack’s own.
    pub poses: Library,
    /// In the order of their ids; shared with earlier states of the pack, so that it is quickly copied.
    pub sessions: Vec<Arc<Session>>,
    /// In the order of their first days.
    pub units: Vec<Unit>,
    /// The bytes of every picture in the pack, by path.
    pub pictures: BTreeMap<String, Arc<[u8]>>,
    /// The files of the pack's own look, by path below its `look` folder.
    pub look: BTreeMap<String, Arc<[u8]>>,
    /// Every path of the pack, for following links.
    pub paths: BTreeSet<String>,
    pub files: Files,
    /// Where a finding about the pack itself points: pack.yaml, or the first file there is.
    pub file: Option<FileId>,
    pub today: Date,
    /// It is published with a page about what changed since an earlier edition.
    pub has_changes: bool,
    /// What the whole pack allows to stay.
    pub allow: Vec<Allowance>,
    /// All its sessions were read, not only some.
    pub is_whole: bool,
    /// A file that all sessions share can’t be read: what they seem to lack may stand in it.
    pub is_shared_unread: bool,
}

impl Pack {
    /// The pack as it is published in another of its languages: what is translated in that language, the
    /// rest as it was written.
    #[must_use]
    pub fn in_language(&self, language: &str) -> Self {
        let mut pack = self.clone();
        pack.language = Placed::new(language.to_owned(), self.language.place);
        let translation = self.translations.get(language);
        pack.untranslated = Some((self.language.value.clone(), self.texts_without(translation)));
        let Some(translation) = translation else { return pack };
        let names = ThingsCalled::learn(self, translation);
        let translation = translation.clone();
        if let Some(title) = translation.title {
            pack.title = title;
        }
        pack.school = translation.school.or(pack.school);
        pack.welcome = translation.welcome.or(pack.welcome);
        pack.contact = translation.contact.or(pack.contact);
        if !translation.cautions.is_empty() {
            pack.cautions = translation.cautions;
        }
        pack.things.extend(translation.things);
        for translated in translation.sessions {
            if let Ok(at) = pack.sessions.binary_search_by(|session| session.id.cmp(&translated.id))
            {
                pack.sessions[at] = Arc::new(translated);
            }
        }
        pack.sessions.iter_mut().for_each(|session| names.call_in(session));
        for translated in translation.units {
            if let Some(unit) = pack.units.iter_mut().find(|unit| unit.id == translated.id) {
                unit.say_as(translated);
            }
        }
        pack.units.iter_mut().for_each(|unit| names.call_in_unit(unit));
        pack.called = names;
        pack
    }

    /// Its own words, without those that a translation has too.
    fn texts_without(&self, translation: Option<&Translation>) -> Vec<String> {
        let is_said = |said: fn(&Translation) -> bool| translation.is_some_and(said);
        let mut texts = Vec::new();
        if !is_said(|translation| translation.title.is_some()) {
            texts.push(self.title.clone());
        }
        if !is_said(|translation| translation.contact.is_some()) {
            texts.extend(self.contact.iter().map(ToString::to_string));
        }
        if !is_said(|translation| !translation.cautions.is_empty()) {
            texts.extend(self.cautions.iter().map(ToString::to_string));
        }
        texts
    }

    /// The place of a session in `sessions`, by its address as a teacher writes it.
    pub fn find_session(&self, named: &str) -> Option<usize> {
        let named = named.trim_end_matches(".yaml").trim_end_matches(".yml");
        self.sessions.binary_search_by(|session| session.id.as_str().cmp(named)).ok()
    }

    /// Whether a session of this address has a file of which no session could be made. What is wrong with it is
    /// said there, and nobody who names it is to blame.
    pub fn is_unread(&self, named: &str) -> bool {
        let named = named.trim_end_matches(".yaml").trim_end_matches(".yml");
        let is_it = |path: &&String| {
            is_session(path, &self.paths) && SessionId::of_path(path).as_str() == named
        };
        self.find_session(named).is_none() && self.paths.iter().any(|path| is_it(&path))
    }

    /// The texts of the files of which no session could be made.
    pub fn unread_texts(&self) -> impl Iterator<Item = &str> {
        let is_read =
            |path: &String| self.find_session(SessionId::of_path(path).as_str()).is_some();
        let own = self.files.iter().filter(|file| file.lent.is_none());
        let unread =
            own.filter(move |file| is_session(&file.path, &self.paths) && !is_read(&file.path));
        unread.map(|file| &*file.text)
    }

    /// The language of what stands in a file: that of its name, where it is a translation (`brook-leap.fr.yaml`).
    pub fn language_at(&self, file: FileId) -> String {
        let path = self.files.find(file).map(|file| file.path.as_str());
        let translation = path.filter(|path| !is_original(path, &self.paths));
        let language = translation.and_then(translation_of).map(|(_, language)| language);
        language.unwrap_or_else(|| self.written_in.clone())
    }

    /// Whether it is written in English, for what looks for English words.
    pub fn is_english(&self) -> bool {
        self.language.split(['-', '_']).next().is_some_and(|tag| tag.eq_ignore_ascii_case("en"))
    }

    /// Every CommonMark text of the shared files, with its place.
    pub fn texts(&self) -> Vec<Placed<&str>> {
        let mut texts: Vec<_> =
            self.welcome.iter().chain(&self.cautions).map(part::placed).collect();
        texts.extend(self.contact.iter().map(part::placed));
        for thing in self.things.values() {
            texts.extend(thing.grip.iter().map(part::placed));
            texts
                .extend(thing.substitutes.iter().filter_map(|s| s.note.as_ref()).map(part::placed));
        }
        texts
    }
}

/// A pack in another language, as far as it is translated.
#[derive(Clone, Debug, Default)]
pub struct Translation {
    pub title: Option<String>,
    pub school: Option<String>,
    pub welcome: Option<Placed<Prose>>,
    pub cautions: Vec<Placed<Prose>>,
    pub contact: Option<Placed<Line>>,
    /// In no order: each stands for the session of the same id.
    pub sessions: Vec<Session>,
    /// In no order, as sessions.
    pub units: Vec<Unit>,
    /// The shared list with its names in this language, under the names of the original.
    pub things: BTreeMap<String, Arc<Thing>>,
}

/// The department's curriculum list.
#[derive(Clone, Debug)]
pub struct Curriculum {
    pub title: String,
    pub source: Option<String>,
    pub licence: Option<String>,
    /// The school’s year groups, in the order they are written.
    pub year_groups: Vec<YearGroup>,
    /// By code.
    pub statements: BTreeMap<String, Statement>,
    /// Codes that the list has once already, where they stand again.
    pub twice: Vec<Placed<Line>>,
}

/// A year group, and the ages of its children over the school year.
#[derive(Clone, Debug)]
pub struct YearGroup {
    pub name: String,
    pub ages: Ages,
}

/// One statement of the curriculum.
#[derive(Clone, Debug)]
pub struct Statement {
    pub says: String,
    pub ages: Option<Ages>,
}
