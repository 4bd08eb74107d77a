//! Sessions as chapters of a book: XHTML for an EPUB 3, filled from the same views as the pages. Each unit has a
//! chapter too, with its weeks and days; a book of one unit has its sessions in the order of their days.

use std::sync::Arc;

use serde::Serialize;

use super::Site;
use super::assets::gather_assets;
use super::frame::{Frame, frame_of_page};
use super::html::{Html, Scribe};
use super::picture::encoded_path;
use super::session::{QuestionView, SessionPage, show_review, show_session};
use super::units::{UnitPage, show_unit};
use crate::pack::{Session, Unit};
use crate::parcel::is_xml;
use crate::plan::Plans;
use crate::plan::unit::{BackAgain, UnitPlan};
use crate::prose::plain_line;
use crate::render::unit::unit_page;
use crate::render::{Bundle, Publication, RenderFault, page_path};

/// The text of a book and the order it is read in.
#[derive(Debug)]
pub struct Book {
    /// By path below the book's folder.
    pub files: Bundle,
    /// The paths of the chapters, from the title page to the answers.
    pub spine: Vec<String>,
}

/// A chapter with what only the book needs.
#[derive(Serialize)]
struct ChapterPage {
    #[serde(flatten)]
    page: SessionPage,
    anchor: String,
}

#[derive(Serialize, Clone, Debug)]
struct ChapterView {
    href: String,
    title: String,
    anchor: String,
    parts: Vec<String>,
    review: Vec<QuestionView>,
}

/// The chapter of a unit in the contents.
#[derive(Serialize, Clone, Debug)]
struct UnitChapter {
    href: String,
    title: String,
}

#[derive(Serialize, Clone, Debug)]
struct BookPage {
    frame: Frame,
    title: String,
    /// The pack that a book of one unit is from.
    pack: Option<String>,
    welcome: Option<Html>,
    units: Vec<UnitChapter>,
    chapters: Vec<ChapterView>,
    has_answers: bool,
}

/// Renders the units and sessions of a pack as chapters, with title page, contents and answers. `order` names the
/// places of the sessions in the order they are read in; a book of one unit is called as that unit.
///
/// # Errors
/// Where a template of the pack's own look can't be used.
pub fn render_book(
    publication: &Publication<'_>,
    unit: Option<&Unit>,
    order: &[usize],
) -> Result<Book, RenderFault> {
    let site = Site::of(publication)?;
    let pack = publication.pack;
    let all: Vec<(&Session, &Plans)> = site.sessions().collect();
    let read: Vec<(&Session, &Plans)> = order.iter().map(|at| all[*at]).collect();
    let page = show_book(&site, unit, &read);
    let mut files = gather_assets(publication);
    files.retain(|path, _| path.starts_with("pictures/"));
    let sheet = publication.house.file("static/book/book.css").unwrap_or_default();
    files.insert("book.css".into(), sheet.to_vec());
    files.insert("nav.xhtml".into(), site.templates.fill("book/nav.html", &page)?);
    files.insert("about.xhtml".into(), site.templates.fill("book/about.html", &page)?);
    let mut spine = vec!["about.xhtml".to_owned(), "nav.xhtml".to_owned()];
    for (unit, plan) in pack.units.iter().zip(publication.units()) {
        let path = unit_path(unit);
        let view = show_unit_in_book(&site, (unit, plan), order);
        files.insert(path.clone(), site.templates.fill("book/unit.html", &view)?);
        spine.push(path);
    }
    for (number, (session, plans)) in (1..).zip(read) {
        let path = chapter_path(session);
        files.insert(path.clone(), render_chapter(&site, session, plans, number)?);
        spine.push(path);
    }
    if page.has_answers {
        files.insert("answers.xhtml".into(), site.templates.fill("book/answers.html", &page)?);
        spine.push("answers.xhtml".into());
    }
    for (_, page) in files.iter_mut().filter(|(path, _)| path.ends_with(".xhtml")) {
        *page = as_xhtml(page, &pack.sessions);
    }
    Ok(Book { files, spine })
}

fn show_book(site: &Site<'_>, unit: Option<&Unit>, read: &[(&Session, &Plans)]) -> BookPage {
    let pack = site.publication.pack;
    let scribe = Scribe::new(pack, "");
    let chapters: Vec<ChapterView> = (1..)
        .zip(read)
        .map(|(number, (session, _))| ChapterView {
            href: encoded_path(&chapter_path(session)),
            title: plain_line(&session.title),
            anchor: anchor_of(number),
            parts: session.parts.iter().map(|part| plain_line(&part.title)).collect(),
            review: show_review(&scribe, session),
        })
        .collect();
    let whole = plain_line(&pack.title);
    let title = unit.map_or_else(|| whole.clone(), |unit| plain_line(&unit.title));
    let mut questions = read.iter().flat_map(|(session, _)| &session.review);
    let about = |unit: &Unit| UnitChapter {
        href: encoded_path(&unit_path(unit)),
        title: plain_line(&unit.title),
    };
    BookPage {
        frame: frame_of_page(site, "front", &title, &site.words.say("front-about")),
        title,
        pack: unit.map(|_| whole),
        welcome: pack.welcome.as_ref().filter(|_| unit.is_none()).map(|text| scribe.prose(text)),
        units: pack.units.iter().map(about).collect(),
        has_answers: questions.any(|question| question.answer.is_some()),
        chapters,
    }
}

fn render_chapter(
    site: &Site<'_>,
    session: &Session,
    plans: &Plans,
    number: usize,
) -> Result<Vec<u8>, RenderFault> {
    let page = ChapterPage { page: show_session(site, session, plans), anchor: anchor_of(number) };
    site.templates.fill("book/chapter.html", &page)
}

/// The page of a unit, whose questions lead to their answers at the end of the book.
fn show_unit_in_book(
    site: &Site<'_>,
    (unit, plan): (&Unit, &UnitPlan),
    order: &[usize],
) -> UnitPage {
    let answer = |back: BackAgain| {
        let number = order.iter().position(|at| *at == back.session)? + 1;
        Some(format!("{}-{}", anchor_of(number), back.question + 1))
    };
    show_unit(site, unit, plan).with_answers(&answer)
}

fn unit_path(unit: &Unit) -> String {
    unit_page(unit).replace(".html", ".xhtml")
}

fn anchor_of(number: usize) -> String {
    format!("answer-{number}")
}

fn chapter_path(session: &Session) -> String {
    page_path(&session.id).replace(".html", ".xhtml")
}

/// Drawings with their namespace, and links to sessions turned to their chapters.
fn as_xhtml(page: &[u8], sessions: &[Arc<Session>]) -> Vec<u8> {
    let page = String::from_utf8_lossy(page);
    let mut page = page.replace("<svg ", "<svg xmlns=\"http://www.w3.org/2000/svg\" ");
    for session in sessions {
        let link = format!("{}\"", page_path(&session.id));
        page = page.replace(&link, &format!("{}\"", chapter_path(session)));
    }
    page.retain(is_xml);
    page.into_bytes()
}
