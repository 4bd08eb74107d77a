//! The page of one session.

use serde::Serialize;

use super::Site;
use super::facts::{Facts, facts_of};
use super::figures::{Drawn, proportions_of, show_figure};
use super::frame::{Frame, direction_of, frame_of_session, licence_of, root_of};
use super::front::is_draft;
use super::home_marks::{HomeMarks, show_home_marks};
use super::html::{Html, Scribe, data_block};
use super::learning_data::learning_data;
use super::part::{MeasureView, PartView, show_measure, show_part};
use super::picture::{PictureView, show_pictures};
use super::plans::{SlotView, show_floors, show_slots, show_time_line};
use super::things::{Thing, show_need};
use crate::edition::{Mark, Sheets, outline_session};
use crate::pack::{AdultTime, Film, Pack, Session};
use crate::place::Placed;
use crate::plan::Plans;
use crate::prose::{is_web_address, plain_line};
use crate::quantity::Duration;
use crate::render::equipment_phrases::home_list;
use crate::render::no_printer::{copy_lines, copy_minutes, copy_path, messages_path};
use crate::render::phrases::surface_names;
use crate::render::plan_phrases::points_sentence;
use crate::render::quantities::Said;
use crate::render::{RenderFault, Sheet, page_path};
use crate::words::Words;

#[derive(Serialize, Clone, Debug)]
pub(super) struct SessionPage {
    frame: Frame,
    title: String,
    /// The language of the texts and its direction, where it is not that of the page.
    original: Option<Original>,
    is_old_translation: bool,
    summary: Html,
    facts: Facts,
    is_draft: bool,
    /// It is kept to be read, and offered no more.
    is_retired: bool,
    line: Html,
    slots: Vec<SlotView>,
    success: Vec<Html>,
    /// `grass, carpet or a mat`
    surfaces: String,
    things: Vec<Thing>,
    /// `4 pairs of rolled socks as 4 markers`
    together: Vec<String>,
    adult: Option<AdultView>,
    cautions: Vec<Html>,
    film: Option<FilmView>,
    pictures: Vec<PictureView>,
    parts: Vec<PartView>,
    records: Vec<Record>,
    home: HomeMarks,
    review: Vec<QuestionView>,
    adaptations: Vec<Adaptation>,
    papers: Vec<Paper>,
    /// The edition marks, each once, with the names of the sheets that carry it.
    editions: Vec<EditionView>,
    no_printer: NoPrinter,
    /// The session as JSON-LD.
    data: Html,
}

/// The session in a few lines to copy by hand, and the files for homes with no printer.
#[derive(Serialize, Clone, Debug)]
struct NoPrinter {
    lines: Vec<String>,
    minutes: u32,
    copy: String,
    texts: String,
}

/// A session that is shown in another language than its page.
#[derive(Serialize, Clone, Debug)]
struct Original {
    language: String,
    direction: &'static str,
    name: String,
}

#[derive(Serialize, Clone, Debug)]
struct AdultView {
    nearby: Option<String>,
    helping: Option<String>,
    why: Option<Html>,
}

#[derive(Serialize, Clone, Debug)]
struct FilmView {
    href: String,
    shows: String,
}

/// A table to write marks in.
#[derive(Serialize, Clone, Debug)]
struct Record {
    title: String,
    measure: MeasureView,
    /// `[1, 2, 3]`
    attempts: Vec<u32>,
}

#[derive(Serialize, Clone, Debug)]
pub(super) struct QuestionView {
    kind: Option<&'static str>,
    ask: Html,
    answer: Option<Html>,
}

/// What to change for another `space`, `task`, `equipment` or `people`.
#[derive(Serialize, Clone, Debug)]
struct Adaptation {
    of: &'static str,
    how: Html,
}

/// The current mark of some sheets.
#[derive(Serialize, Clone, Debug)]
struct EditionView {
    /// `Cards, Large-print cards`
    names: String,
    mark: String,
}

/// A printed sheet beside the pages.
#[derive(Serialize, Clone, Debug)]
struct Paper {
    name: String,
    href: String,
    about: String,
}

pub(super) fn render_session(
    site: &Site<'_>,
    session: &Session,
    plans: &Plans,
) -> Result<Vec<u8>, RenderFault> {
    let page = show_session(site, session, plans);
    site.templates.fill("session.html", &page)
}

pub(super) fn show_session(site: &Site<'_>, session: &Session, plans: &Plans) -> SessionPage {
    let pack = site.publication.pack;
    let scribe = Scribe::new(pack, &root_of(session)).above(&site.up());
    SessionPage {
        frame: frame_of_session(site, "session", session),
        title: plain_line(&session.title),
        original: (session.language != pack.language.value).then(|| Original {
            language: session.language.clone(),
            direction: direction_of(&session.language),
            name: site.name_of_language(&session.language),
        }),
        is_old_translation: session.is_old_translation,
        summary: scribe.line(&session.summary),
        facts: facts_of(session, &plans.time, &site.words),
        is_draft: is_draft(session),
        is_retired: session.is_retired(),
        line: show_time_line(site, session, plans),
        slots: show_slots(site, session, plans),
        success: scribe.lines(&session.success),
        surfaces: surface_names(session, &site.words),
        things: session
            .needs
            .iter()
            .map(|need| show_need(&site.words, &scribe, session, need))
            .collect(),
        together: home_list(session, &plans.equipment, &site.words),
        adult: session.adult.as_deref().map(|adult| show_adult(&site.words, &scribe, adult)),
        cautions: show_cautions(site, &scribe, session),
        film: session.film.as_ref().and_then(show_film),
        pictures: show_pictures(pack, &scribe, &session.pictures),
        parts: show_parts(site, &scribe, session, plans),
        records: show_records(&scribe, session),
        home: show_home_marks(site, session, plans),
        review: show_review(&scribe, session),
        adaptations: session
            .adaptations
            .each()
            .into_iter()
            .map(|(of, how)| Adaptation { of, how: scribe.prose(how) })
            .collect(),
        papers: papers_of(session, pack, &site.words),
        editions: show_editions(session, plans, site),
        no_printer: show_no_printer(site, session, plans),
        data: show_data(site, session),
    }
}

pub(super) fn show_parts(
    site: &Site<'_>,
    scribe: &Scribe<'_>,
    session: &Session,
    plans: &Plans,
) -> Vec<PartView> {
    let spanned = session.parts.iter().zip(&plans.time.spans).enumerate();
    let mut parts: Vec<PartView> =
        spanned.map(|(at, (part, span))| show_part(site, scribe, at + 1, part, span)).collect();
    for (part, floor) in parts.iter_mut().zip(show_floors(site, session, plans)) {
        part.floor = floor;
    }
    let (proportions, mut drawn) = (proportions_of(session), Drawn::default());
    for ((number, view), part) in (1..).zip(&mut parts).zip(&session.parts) {
        view.figure = show_figure(site, scribe, (number, part), proportions, &mut drawn);
    }
    for (part, marks) in parts.iter_mut().zip(&plans.marks) {
        part.points = marks.as_ref().and_then(|marks| points_sentence(marks, &site.words));
    }
    parts
}

/// The session's own cautions first, then the usual ones of the pack.
fn show_cautions(site: &Site<'_>, scribe: &Scribe<'_>, session: &Session) -> Vec<Html> {
    let pack = site.publication.pack;
    let own = session.safety.iter().map(|caution| scribe.prose(caution));
    own.chain(pack.cautions.iter().map(|caution| scribe.prose(caution))).collect()
}

fn show_adult(words: &Words, scribe: &Scribe<'_>, adult: &AdultTime) -> AdultView {
    let time = |time: &Option<Placed<Duration>>| time.as_ref().map(|time| time.say(words));
    AdultView {
        nearby: time(&adult.nearby),
        helping: time(&adult.helping),
        why: scribe.line_if_any(adult.why.as_ref()),
    }
}

/// A film is a link to elsewhere that a family may follow; only web addresses are.
fn show_film(film: &Film) -> Option<FilmView> {
    let is_web = is_web_address(&film.link);
    is_web.then(|| FilmView { href: film.link.to_string(), shows: plain_line(&film.shows) })
}

fn show_records(scribe: &Scribe<'_>, session: &Session) -> Vec<Record> {
    session
        .measured()
        .map(|(part, measure)| {
            let attempts = measure.attempts.as_ref().map_or(1, |attempts| attempts.value.min(20));
            Record {
                title: plain_line(&part.title),
                measure: show_measure(scribe, measure),
                attempts: (1..=attempts).collect(),
            }
        })
        .collect()
}

pub(super) fn show_review(scribe: &Scribe<'_>, session: &Session) -> Vec<QuestionView> {
    let show = |question: &crate::pack::Question| QuestionView {
        kind: question.kind.as_ref().map(|kind| kind.word()),
        ask: scribe.prose(&question.ask),
        answer: question.answer.as_ref().map(|answer| scribe.prose(answer)),
    };
    session.review.iter().map(show).collect()
}

/// The sheets beside the page; a retired session has none.
fn papers_of(session: &Session, pack: &Pack, words: &Words) -> Vec<Paper> {
    if session.is_retired() {
        return Vec::new();
    }
    let paper = |sheet: Sheet| Paper {
        name: words.say(&sheet.word_key()),
        href: sheet.path(&session.id),
        about: sheet.about(&pack.printing, words),
    };
    Sheet::chosen(&pack.printing).into_iter().map(paper).collect()
}

fn show_editions(session: &Session, plans: &Plans, site: &Site<'_>) -> Vec<EditionView> {
    let pack = site.publication.pack;
    let outline = outline_session(session, plans, pack, &site.words);
    let chosen = Sheet::chosen(&pack.printing);
    let view = |(sheets, mark): &(Sheets, Mark)| {
        let carries = chosen.iter().filter(|sheet| sheet.of_edition() == *sheets);
        let names: Vec<String> = carries.map(|sheet| site.words.say(&sheet.word_key())).collect();
        (!names.is_empty()).then(|| EditionView { names: names.join(", "), mark: mark.to_string() })
    };
    outline.marks.iter().filter_map(view).collect()
}

fn show_data(site: &Site<'_>, session: &Session) -> Html {
    let address = site.address_of(&page_path(&session.id));
    let licence = session.licence.as_ref().map(|name| licence_of(name));
    let licence = licence.as_ref().and_then(|licence| licence.href.as_deref());
    data_block(learning_data(site.publication, session, address.as_deref(), licence))
}

fn show_no_printer(site: &Site<'_>, session: &Session, plans: &Plans) -> NoPrinter {
    let lines = copy_lines(session, plans, site.publication.pack, &site.words);
    NoPrinter {
        minutes: copy_minutes(&lines),
        lines,
        copy: copy_path(&session.id),
        texts: messages_path(&session.id),
    }
}
