//! A pack → the parts of a parcel: its pages, its questions, its chapters, and the words about the whole.

use super::phrases::is_right_to_left;
use super::site::{Book, render_book};
use super::unit::{unit_calendar, unit_gather, unit_page, unit_poster, unit_remember};
use super::{Publication, RenderFault, Sheet, latest_date, page_path};
use crate::pack::{Pack, Question, Session, Unit, plain_paragraphs};
use crate::parcel::{
    AskedQuestion, BookAbout, CartridgeAbout, CartridgeFolder, Packed, write_book, write_cartridge,
};
use crate::prose::{plain_line, prose_to_html};
use crate::quantity::Date;
use crate::read::words::QuestionKind;
use crate::render::Bundle;
use crate::words::Words;

/// Packs the pages of a pack, or of one unit of it, as published, for a learning platform.
///
/// # Errors
/// Where the labels of the pack's own look can't be read.
pub fn render_cartridge(
    pack: &Pack,
    unit: Option<&Unit>,
    bundle: &Bundle,
    date: Option<Date>,
) -> Result<Packed, RenderFault> {
    let publication = Publication::of(pack)?;
    let words = &publication.words;
    let (title, description) = said_of(pack, unit, words);
    let about = CartridgeAbout {
        title,
        language: pack.language.to_string(),
        about: description,
        licence: licences_of(pack),
    };
    let units: Vec<CartridgeFolder> =
        pack.units.iter().map(|unit| unit_folder(unit, bundle, words)).collect();
    let order = sessions_in_order(&publication, unit);
    let sessions: Vec<CartridgeFolder> =
        order.into_iter().map(|at| session_folder(&pack.sessions[at], pack, words)).collect();
    let date = date.or_else(|| latest_date(pack));
    Ok(write_cartridge(bundle, &about, (&units, &sessions), date))
}

/// The name of a parcel and a sentence about it: the unit’s own, where it is of one unit.
fn said_of(pack: &Pack, unit: Option<&Unit>, words: &Words) -> (String, String) {
    let about = unit.and_then(|unit| unit.summary.as_ref()).map(|summary| plain_line(summary));
    let title = unit.map_or_else(|| plain_line(&pack.title), |unit| plain_line(&unit.title));
    (title, about.unwrap_or_else(|| words.say("front-about")))
}

/// The places of the offered sessions in the order they are read in: that of the unit’s days, or of the pack.
pub(super) fn sessions_in_order(publication: &Publication<'_>, unit: Option<&Unit>) -> Vec<usize> {
    let pack = publication.pack;
    let is_offered = |at: &usize| !pack.sessions[*at].is_retired();
    let plan = unit.and_then(|unit| {
        publication.units().iter().zip(&pack.units).find(|(_, other)| other.id == unit.id)
    });
    let mut order: Vec<usize> = Vec::new();
    let days = plan.iter().flat_map(|(plan, _)| plan.days.iter().map(|day| day.session));
    for at in days.chain(0..pack.sessions.len()).filter(is_offered) {
        if !order.contains(&at) {
            order.push(at);
        }
    }
    order
}

/// The page of a unit, its calendar and its sheets.
fn unit_folder(unit: &Unit, bundle: &Bundle, words: &Words) -> CartridgeFolder {
    let title = plain_line(&unit.title);
    let files = [
        (unit_page(unit), title.clone()),
        (unit_calendar(unit), words.say("unit-calendar")),
        (unit_poster(unit), words.say("unit-poster")),
        (unit_remember(unit), words.say("unit-remember-sheet")),
        (unit_gather(unit), words.say("unit-gather-sheet")),
    ];
    let files = files.into_iter().filter(|(path, _)| bundle.contains_key(path)).collect();
    CartridgeFolder { title, files, review: String::new(), questions: Vec::new() }
}

fn session_folder(session: &Session, pack: &Pack, words: &Words) -> CartridgeFolder {
    let title = plain_line(&session.title);
    let sheet = |sheet: Sheet| (sheet.path(&session.id), words.say(&sheet.word_key()));
    let page = (page_path(&session.id), title.clone());
    let sheets = Sheet::chosen(&pack.printing).into_iter().map(sheet);
    CartridgeFolder {
        files: std::iter::once(page).chain(sheets).collect(),
        title,
        review: words.say("review"),
        questions: session.review.iter().map(|question| asked(question, words)).collect(),
    }
}

fn asked(question: &Question, words: &Words) -> AskedQuestion {
    // Links of a pack lead to its pages, which a platform may keep elsewhere: they are plain words here.
    let html = |text: &str| prose_to_html(text, &|_| None);
    AskedQuestion {
        label: question.kind.as_ref().map(|kind| words.say(&format!("kind-{}", kind.word()))),
        ask: html(&question.ask),
        answer: question.answer.as_ref().map(|answer| html(answer)),
        plain_answer: question.answer.as_ref().map(|answer| plain_paragraphs(answer).join(" ")),
        is_recall: question.kind.as_ref().is_some_and(|kind| kind.value == QuestionKind::Recall),
    }
}

/// Packs the offered sessions of a pack, or those of one unit, as a book.
///
/// # Errors
/// Where a template of the pack's own look can't be used.
pub fn render_epub(
    pack: &Pack,
    unit: Option<&Unit>,
    date: Option<Date>,
) -> Result<Packed, RenderFault> {
    let publication = Publication::of(pack)?;
    let words = &publication.words;
    let order = sessions_in_order(&publication, unit);
    let Book { files, spine } = render_book(&publication, unit, &order)?;
    let (title, description) = said_of(pack, unit, words);
    let about = BookAbout {
        title,
        language: pack.language.to_string(),
        maker: pack.school.as_deref().map(plain_line),
        licence: licences_of(pack),
        description,
        access: words.say("book-access"),
        is_rtl: is_right_to_left(&pack.language),
    };
    Ok(write_book(&about, &files, &spine, date.or_else(|| latest_date(pack))))
}

/// Every licence that a session names, once.
fn licences_of(pack: &Pack) -> Option<String> {
    let named = pack.sessions.iter().filter_map(|session| session.licence.as_ref());
    let mut licences: Vec<String> = named.map(|licence| plain_line(licence)).collect();
    licences.sort();
    licences.dedup();
    (!licences.is_empty()).then(|| licences.join(", "))
}
