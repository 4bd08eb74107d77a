//! The page of one session.

use serde::Serialize;

use super::Site;
use super::facts::{Facts, facts_of};
use super::frame::{Frame, frame_of_session, root_of};
use super::front::is_draft;
use super::html::{Html, Scribe};
use super::part::{MeasureView, PartView, show_measure, show_part};
use super::picture::{PictureView, show_pictures};
use super::plans::{SlotView, show_floors, show_slots, show_time_line};
use super::things::{Thing, show_need};
use crate::pack::{AdultTime, Film, Pack, Session};
use crate::place::Placed;
use crate::plan::Plans;
use crate::prose::{is_web_address, plain_line};
use crate::quantity::Duration;
use crate::render::equipment_phrases::home_list;
use crate::render::phrases::{hold_together, surface_names};
use crate::render::plan_phrases::points_sentence;
use crate::render::{RenderFault, Sheet};
use crate::words::Words;

#[derive(Serialize, Clone, Debug)]
struct SessionPage {
    frame: Frame,
    title: String,
    summary: Html,
    facts: Facts,
    is_draft: bool,
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
    review: Vec<QuestionView>,
    adaptations: Vec<Adaptation>,
    papers: Vec<Paper>,
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

fn show_session(site: &Site<'_>, session: &Session, plans: &Plans) -> SessionPage {
    let pack = site.publication.pack;
    let scribe = Scribe::new(pack, &root_of(session));
    SessionPage {
        frame: frame_of_session(pack, session),
        title: plain_line(&session.title),
        summary: scribe.line(&session.summary),
        facts: facts_of(session, &plans.time),
        is_draft: is_draft(session),
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
        adult: session.adult.as_deref().map(|adult| show_adult(&scribe, adult)),
        cautions: show_cautions(site, &scribe, session),
        film: session.film.as_ref().and_then(show_film),
        pictures: show_pictures(pack, &scribe, &session.pictures),
        parts: show_parts(site, &scribe, session, plans),
        records: show_records(&scribe, session),
        review: show_review(&scribe, session),
        adaptations: session
            .adaptations
            .each()
            .into_iter()
            .map(|(of, how)| Adaptation { of, how: scribe.prose(how) })
            .collect(),
        papers: papers_of(session, pack, &site.words),
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

fn show_adult(scribe: &Scribe<'_>, adult: &AdultTime) -> AdultView {
    let time = |time: &Option<Placed<Duration>>| {
        time.as_ref().map(|time| hold_together(&time.to_string()))
    };
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

fn papers_of(session: &Session, pack: &Pack, words: &Words) -> Vec<Paper> {
    let paper = |sheet: Sheet| Paper {
        name: words.say(&sheet.word_key()),
        href: sheet.path(&session.id),
        about: sheet.about(&pack.printing, words),
    };
    Sheet::chosen(&pack.printing).into_iter().map(paper).collect()
}
