//! What was found before, kept as far as it still holds. In a session alone: while its text and what it takes from
//! the shared files are the same. Beside the pack: while besides nothing else has changed that a rule may look at.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use crate::finding::Finding;
use crate::pack::{Lead, Pack, Session, Thing};
use crate::place::FileId;
use crate::plan::Plans;
use crate::prose::links_of;
use crate::quantity::Date;
use crate::read::{is_session, is_shared};
use crate::render::key::{Key, KeyMaker};

/// Plans and findings of the sessions of the pack before. It needs no reminding: what no longer holds is not given.
#[derive(Debug, Default)]
pub struct FoundBefore {
    sessions: BTreeMap<FileId, Looked>,
    around: Option<Around>,
}

/// What was found in one session.
#[derive(Clone, Debug)]
pub(super) struct Looked {
    session: Arc<Session>,
    /// The text of its file.
    text: Arc<str>,
    /// Each link of its texts, with the file it stands in and what it led to: that may change while the session
    /// does not.
    links: Vec<(FileId, String, Led)>,
    pub plans: Arc<Plans>,
    pub found: Found,
}

/// The findings of a session: those that rest on it alone, and those beside the pack.
#[derive(Clone, Debug, Default)]
pub(super) struct Found {
    pub alone: Vec<Finding>,
    pub in_pack: Vec<Finding>,
}

/// What is known of a session beforehand.
#[derive(Debug)]
pub(super) enum Known {
    All(Looked),
    /// What was found in it alone; its plans too, where it is the very same session.
    Alone(Vec<Finding>, Option<Arc<Plans>>),
    Nothing,
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

/// Everything around a session that rules look at, of one pack.
#[derive(Debug)]
struct Around {
    /// Of what rules of sessions alone may look at.
    bounds: Key,
    things: BTreeMap<String, Arc<Thing>>,
    beside: Beside,
}

/// Everything else that rules may look at, but for the other sessions.
#[derive(Debug, PartialEq, Eq)]
struct Beside {
    today: Date,
    /// Texts of the shared files and of those of neighbours, by path.
    shared: BTreeMap<String, Arc<str>>,
    /// The paths of all that is no session.
    paths: BTreeSet<String>,
    pictures: BTreeMap<String, Arc<[u8]>>,
    look: BTreeMap<String, Arc<[u8]>>,
}

impl Around {
    fn of(pack: &Pack) -> Self {
        let bounds = KeyMaker::default().with_all_of(&pack.bounds_alone()).finish();
        let shared = pack.files.iter().filter(|file| is_shared(&file.path) || file.lent.is_some());
        let others = pack.paths.iter().filter(|path| !is_session(path, &pack.paths));
        let beside = Beside {
            today: pack.today,
            shared: shared.map(|file| (file.path.clone(), Arc::clone(&file.text))).collect(),
            paths: others.cloned().collect(),
            pictures: pack.pictures.clone(),
            look: pack.look.clone(),
        };
        Self { bounds, things: pack.things.clone(), beside }
    }
}

/// What is around the sessions now, held against what was around them before.
#[derive(Debug)]
pub(super) struct Compared {
    now: Around,
    has_same_bounds: bool,
    has_same_shelf: bool,
    is_same_beside: bool,
    /// The things that are other ones now, or were there only then, or are there only now.
    other_things: BTreeSet<String>,
}

impl Looked {
    pub(super) fn of(session: &Arc<Session>, pack: &Pack, plans: Arc<Plans>, found: Found) -> Self {
        let texts = session.texts();
        let links = texts.iter().flat_map(|text| {
            let links = links_of(text.value).into_iter();
            links.map(|link| (text.place.file, led(pack, text.place.file, &link), link))
        });
        let links = links.map(|(file, led, link)| (file, link, led)).collect();
        let text = Arc::clone(&pack.files.get(session.file).text);
        Self { session: Arc::clone(session), text, links, plans, found }
    }

    /// Whether its links lead where they led, and all it builds on is there: where not, the nearest name is told,
    /// and that may be any session’s.
    fn leads_as_before(&self, pack: &Pack) -> bool {
        self.links.iter().all(|(file, link, before)| led(pack, *file, link) == *before)
            && self.session.builds_on.iter().all(|named| pack.find_session(named).is_some())
    }
}

impl FoundBefore {
    pub(super) fn compare(&self, pack: &Pack) -> Compared {
        let now = Around::of(pack);
        let before = self.around.as_ref();
        let shelf = |around: &Around| around.beside.shared.get("shared.yaml").cloned();
        Compared {
            has_same_bounds: before.is_some_and(|before| before.bounds == now.bounds),
            has_same_shelf: before.is_some_and(|before| shelf(before) == shelf(&now)),
            is_same_beside: before.is_some_and(|before| before.beside == now.beside),
            other_things: before
                .map(|before| other_things(&before.things, &now.things))
                .unwrap_or_default(),
            now,
        }
    }

    /// What was found in a session that still holds.
    pub(super) fn find(&self, session: &Arc<Session>, pack: &Pack, compared: &Compared) -> Known {
        let known = self.sessions.get(&session.file);
        let Some(known) = known.filter(|_| compared.has_same_bounds) else { return Known::Nothing };
        let is_very_same = Arc::ptr_eq(&known.session, session);
        if is_very_same && compared.is_same_beside && known.leads_as_before(pack) {
            return Known::All(known.clone());
        }
        if is_very_same {
            return Known::Alone(known.found.alone.clone(), Some(Arc::clone(&known.plans)));
        }
        if compared.is_alike(known, session, pack) {
            return Known::Alone(known.found.alone.clone(), None);
        }
        Known::Nothing
    }

    pub(super) fn remember(&mut self, looked: Vec<Looked>, compared: Compared) {
        self.sessions = looked.into_iter().map(|looked| (looked.session.file, looked)).collect();
        self.around = Some(compared.now);
    }
}

impl Compared {
    /// Whether a session that was resolved anew says what it said: it is written in the same words, and so is what it
    /// takes from the shared files, though that may stand in another line there.
    fn is_alike(&self, known: &Looked, session: &Session, pack: &Pack) -> bool {
        let before = &known.session;
        let line = |line: &Option<crate::place::Placed<crate::read::Line>>| {
            line.as_ref().map(|line| line.value.0.clone())
        };
        let is_own = |finding: &Finding| finding.place.file == session.file;
        self.has_same_shelf
            && before.path == session.path
            && session.borrowed.is_none()
            && before.borrowed.is_none()
            && known.text == pack.files.get(session.file).text
            && before.language == session.language
            && line(&before.licence) == line(&session.licence)
            && line(&before.credit) == line(&session.credit)
            && !session.needs.iter().any(|need| self.other_things.contains(&need.name.value.0))
            && known.found.alone.iter().all(is_own)
    }
}

/// The names of things that are not the same in both lists; where they stand does not count.
fn other_things(
    before: &BTreeMap<String, Arc<Thing>>,
    now: &BTreeMap<String, Arc<Thing>>,
) -> BTreeSet<String> {
    let is_same = |name: &String| match (before.get(name), now.get(name)) {
        (Some(before), Some(now)) => {
            Arc::ptr_eq(before, now) || format!("{before:?}") == format!("{now:?}")
        }
        _ => false,
    };
    before.keys().chain(now.keys()).filter(|name| !is_same(name)).cloned().collect()
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
