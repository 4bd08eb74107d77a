//! Stage two, resolve: documents → [`Pack`]. Shared equipment, cautions, licence and credit are
//! filled into each session, parts get their order, pictures their path inside the pack.

mod equipment;
mod parts;
mod pictures;
mod translations;
mod units;

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;
use std::sync::Arc;

use rayon::prelude::*;

use crate::figure::library::Library;
use crate::pack::{
    Adaptations, AdultTime, Allowance, Borrowed, Curriculum, Film, Pack, PrintWishes, Printing,
    Question, Session, SessionId, Space, Standing, Statement, Thing, ThingsCalled, Translation,
    YearGroup,
};
use crate::place::{FileId, Files, Place, Placed};
use crate::prose::plain_line;
use crate::quantity::{Decimal, Length};
use crate::read::compendium::USUAL_MODERATE_FROM;
use crate::read::pack_files::{CurriculumDoc, PackDoc};
use crate::read::print_choices::PrintDoc;
use crate::read::session_file::{AdaptationsDoc, SessionDoc, SpaceDoc, StandingDoc};
use crate::read::words::{Paper, Whereabouts};
use crate::read::{BorrowedDoc, Documents, Written};

pub use pictures::{path_from, path_from_file};

/// The height of a room in a pack that sets none: what England’s nationally described space standard
/// (2015) asks of most of a home’s floor.
const USUAL_ROOM_HEIGHT: Length = Length::from_millimetres(2300);

/// Makers of printers reckon 5 % for a page of a letter (common practice). A card full to the edge with
/// bold key points takes up to 9; more than 10 is a page with something dark on it.
const USUAL_INK_BUDGET: Decimal = Decimal::from_tenths(100);

/// The language of a pack that names none.
const USUAL_LANGUAGE: &str = "en-GB";

/// Fills in everything shared. Never fails: what doesn't resolve stays visible to the rules.
pub fn resolve_pack(documents: Documents) -> Pack {
    let is_shared_unread = documents.is_shared_unread();
    let things = documents.equipment.map(|written| equipment::resolve_things(written.doc));
    let (things, things_twice) = things.unwrap_or_default();
    let shared = documents.pack.as_ref().map(|written| &written.doc);
    let poses = Library::with_own(documents.poses.as_ref().map(|written| &written.doc));
    let translated =
        (documents.pack_translations, documents.unit_translations, documents.translations);
    let mut translations = translations::resolve_translations(
        translated,
        (&documents.files, shared),
        (&things, &poses),
    );
    let borrowed = documents.borrowed;
    let mut sessions: Vec<Arc<Session>> = documents
        .sessions
        .into_par_iter()
        .map(|written| {
            let borrowed = borrowed.get(&written.file).cloned();
            let things = (&things, &poses);
            Arc::new(resolve_borrowed(written, borrowed, &documents.files, shared, things))
        })
        .collect();
    sessions.extend(documents.resolved);
    sessions.sort_by(|a, b| (&a.id, a.file).cmp(&(&b.id, b.file)));
    for translation in translations.values_mut() {
        translation.sessions.iter_mut().for_each(|session| keep_lender(session, &sessions));
    }
    let file = documents.pack.as_ref().map(|written| written.file);
    let top = Place::top_of(file.unwrap_or(FileId(0)));
    let shared = documents.pack.map(|written| written.doc);
    let language = language_of(shared.as_ref(), top);
    Pack {
        title: title_of(shared.as_ref(), &documents.name),
        school: shared.as_ref().and_then(|doc| doc.school.as_ref()).map(ToString::to_string),
        languages: languages_of(shared.as_ref(), &translations),
        translations,
        translation_slips: documents.translation_slips,
        paper: shared.as_ref().and_then(|doc| doc.paper.as_ref()).map_or(Paper::A4, |p| p.value),
        printing: resolve_printing(shared.as_ref().and_then(|doc| doc.print.as_ref())),
        welcome: shared.as_ref().and_then(|doc| doc.welcome.clone()),
        contact: shared.as_ref().and_then(|doc| doc.contact.clone()),
        address: shared.as_ref().and_then(|doc| doc.address.clone()),
        moderate_from: moderate_from(shared.as_ref()),
        ink_budget: shared
            .as_ref()
            .and_then(|doc| doc.ink_budget.as_ref())
            .map_or(USUAL_INK_BUDGET, |budget| budget.value),
        room_height: shared
            .as_ref()
            .and_then(|doc| doc.room_height.as_ref())
            .map_or(USUAL_ROOM_HEIGHT, |height| height.value),
        allow: allowances_of(shared.as_ref()),
        is_whole: documents.is_whole,
        is_shared_unread,
        cautions: shared.map(|doc| doc.cautions).unwrap_or_default(),
        things,
        things_twice,
        untranslated: None,
        called: ThingsCalled::default(),
        poses,
        curriculum: documents.curriculum.map(|written| resolve_curriculum(written.doc)),
        sessions,
        units: units::resolve_units(documents.units, &documents.files, &language),
        written_in: language.value.clone(),
        language,
        pictures: documents.pictures,
        look: documents.look,
        paths: documents.paths,
        file,
        files: documents.files,
        today: documents.today,
        has_changes: false,
    }
}

/// The usual set of sheets, with what the pack wishes over it.
fn resolve_printing(doc: Option<&PrintDoc>) -> Printing {
    let Some(doc) = doc else { return Printing::default() };
    Printing::default().with(PrintWishes {
        cards: doc.cards.as_ref().map(|cards| cards.value),
        sides: doc.sides.as_ref().map(|sides| sides.value),
        large_print: doc.large_print.as_ref().map(|wish| wish.value),
        spacing: doc.spacing.as_ref().map(|spacing| spacing.value),
        booklet: doc.booklet.as_ref().map(|wish| wish.value),
        poster: doc.poster.as_ref().map(|wish| wish.value),
        copies: doc.copies.as_ref().map(|copies| copies.value.0),
        records: doc.record.iter().map(|kind| kind.value).collect(),
    })
}

fn allowances_of(shared: Option<&PackDoc>) -> Vec<Allowance> {
    shared.into_iter().flat_map(|doc| doc.allow.iter().cloned()).map(Allowance::from).collect()
}

/// Where moderate begins for this pack.
fn moderate_from(shared: Option<&PackDoc>) -> Decimal {
    shared
        .and_then(|doc| doc.moderate_from.as_ref())
        .map_or(USUAL_MODERATE_FROM, |written| written.value)
}

fn title_of(shared: Option<&PackDoc>, name: &str) -> String {
    shared.map_or_else(|| name.to_owned(), |doc| doc.title.to_string())
}

fn language_of(shared: Option<&PackDoc>, top: Place) -> Placed<String> {
    match shared.and_then(|doc| doc.language.as_ref()) {
        Some(language) => Placed::new(language.to_string(), language.place),
        None => Placed::new(USUAL_LANGUAGE.to_owned(), top),
    }
}

/// The languages that pack.yaml asks for and those of the translations, but for the pack’s own.
fn languages_of(
    shared: Option<&PackDoc>,
    translations: &BTreeMap<String, Translation>,
) -> Vec<String> {
    let own = shared.and_then(|doc| doc.language.as_ref());
    let own = own.map_or_else(|| USUAL_LANGUAGE.to_owned(), ToString::to_string);
    let asked = shared.into_iter().flat_map(|doc| &doc.languages).map(ToString::to_string);
    let mut languages: Vec<String> = asked.chain(translations.keys().cloned()).collect();
    languages.retain(|language| *language != own);
    languages.sort();
    languages.dedup();
    languages
}

fn resolve_curriculum(doc: CurriculumDoc) -> Curriculum {
    let (mut statements, mut twice) = (BTreeMap::new(), Vec::new());
    for written in doc.statements {
        let ages = written.ages.map(|ages| ages.value);
        match statements.entry(written.code.to_string()) {
            Entry::Vacant(free) => {
                free.insert(Statement { says: written.says.to_string(), ages });
            }
            Entry::Occupied(_) => twice.push(written.code),
        }
    }
    Curriculum {
        title: doc.title.to_string(),
        source: doc.source.map(|source| source.to_string()),
        licence: doc.licence.map(|licence| licence.to_string()),
        year_groups: doc
            .year_groups
            .into_iter()
            .map(|group| YearGroup { name: group.name.to_string(), ages: group.ages.value })
            .collect(),
        statements,
        twice,
    }
}

fn resolve_session(
    written: Written<SessionDoc>,
    files: &Files,
    shared: Option<&PackDoc>,
    (things, poses): (&BTreeMap<String, Arc<Thing>>, &Library),
) -> Session {
    let Written { file, mut doc } = written;
    let path = files.get(file).path.clone();
    let parts = parts::resolve_parts((&path, files), &mut doc, moderate_from(shared), poses);
    let needs = equipment::resolve_needs(doc.equipment, &parts, things);
    Session {
        id: SessionId::of_path(&path),
        file,
        language: language_of(shared, Place::top_of(file)).value,
        is_old_translation: false,
        title: doc.title,
        summary: doc.summary,
        ages: doc.ages,
        slot: doc.minutes.map(|slot| slot.0),
        activity: doc.activity,
        licence: doc.licence.or_else(|| shared.and_then(|pack| pack.licence.clone())),
        credit: doc.credit.or_else(|| shared.and_then(|pack| pack.credit.clone())),
        curriculum: doc.curriculum,
        builds_on: doc.builds_on,
        objectives: doc.objectives,
        success: doc.success,
        needs,
        space: doc.space.map(|space| space.map(|doc| resolve_space(&doc))),
        safety: doc.safety.into_iter().map(|caution| caution.map(|own| own.0)).collect(),
        borrowed: None,
        adult: doc.adult.map(|adult| {
            adult.map(|a| AdultTime { nearby: a.nearby, helping: a.helping, why: a.why })
        }),
        film: doc.film.map(|film| Film { link: film.link, shows: film.shows }),
        pictures: pictures::resolve_pictures(&path, doc.pictures, files),
        parts,
        review: doc
            .review
            .into_iter()
            .map(|q| Question { ask: q.ask, answer: q.answer, kind: q.kind })
            .collect(),
        adaptations: doc.adaptations.map(resolve_adaptations).unwrap_or_default(),
        standing: doc.standing.map(|standing| standing.map(resolve_standing)),
        allow: doc.allow.into_iter().map(Allowance::from).collect(),
        path,
    }
}

/// A session that may come from a neighbour: the things that only the lender has are filled in from there.
fn resolve_borrowed(
    written: Written<SessionDoc>,
    borrowed: Option<BorrowedDoc>,
    files: &Files,
    shared: Option<&PackDoc>,
    (things, poses): (&BTreeMap<String, Arc<Thing>>, &Library),
) -> Session {
    let Some(borrowed) = borrowed else {
        return resolve_session(written, files, shared, (things, poses));
    };
    let mut all = things.clone();
    let lent = borrowed.equipment.map(|doc| equipment::resolve_things(doc).0).unwrap_or_default();
    for (name, thing) in lent {
        all.entry(name).or_insert(thing);
    }
    // The pack’s own licence and credit are not the lender’s.
    let (licence, credit) = (written.doc.licence.clone(), written.doc.credit.clone());
    let session = resolve_session(written, files, shared, (&all, poses));
    let changed_by = shared.and_then(|doc| doc.school.as_ref()).map(ToString::to_string);
    let borrowed = Borrowed {
        lender: borrowed.lender,
        stands: borrowed.stands,
        pack: borrowed.pack,
        changed: borrowed.changed,
        changed_by,
        place: borrowed.place,
    };
    let mut session = Session { licence, credit, borrowed: Some(borrowed), ..session };
    tell_rights(&mut session);
    session
}

/// A translation of a borrowed session is the lender’s as its original is.
fn keep_lender(translated: &mut Session, sessions: &[Arc<Session>]) {
    let original = sessions.iter().find(|session| session.id == translated.id);
    if let Some(original) = original.filter(|session| session.borrowed.is_some()) {
        translated.borrowed = original.borrowed.clone();
        translated.licence = original.licence.clone();
        translated.credit = original.credit.clone();
        tell_rights(translated);
    }
}

/// A neighbour’s pictures say whose they are wherever they are shown.
fn tell_rights(session: &mut Session) {
    let said = session.credit.iter().chain(&session.licence).map(|line| plain_line(line));
    let rights = said.collect::<Vec<_>>().join(", ");
    let parts = session.parts.iter_mut().flat_map(|part| &mut part.pictures);
    for picture in session.pictures.iter_mut().chain(parts).filter(|picture| picture.is_lent) {
        picture.rights = (!rights.is_empty()).then(|| rights.clone());
    }
}

/// The longer side is the length, whichever way round it was written.
fn resolve_space(doc: &SpaceDoc) -> Space {
    let (length, width) = if doc.length.value >= doc.width.value {
        (doc.length, doc.width)
    } else {
        (doc.width, doc.length)
    };
    let mut whereabouts: Vec<Whereabouts> = doc.r#where.iter().map(|place| place.value).collect();
    if whereabouts.is_empty() {
        whereabouts = Whereabouts::ALL.to_vec();
    }
    whereabouts.sort_unstable();
    whereabouts.dedup();
    let surfaces = doc.surface.iter().map(|surface| surface.value).collect();
    Space { length, width, height: doc.height, notch: None, whereabouts, surfaces }
}

fn resolve_adaptations(doc: AdaptationsDoc) -> Adaptations {
    Adaptations { space: doc.space, task: doc.task, equipment: doc.equipment, people: doc.people }
}

fn resolve_standing(doc: StandingDoc) -> Standing {
    Standing {
        state: doc.state,
        by: doc.by,
        on: doc.on,
        look_again: doc.look_again,
        changed: doc.changed,
    }
}
