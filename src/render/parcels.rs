//! A pack → the parts of a parcel: its pages, its questions, its chapters, and the words about the whole.

use super::phrases::is_right_to_left;
use super::site::{Book, render_book};
use super::{Publication, RenderFault, Sheet, latest_date, page_path};
use crate::pack::{Pack, Question, Session, plain_paragraphs};
use crate::parcel::{
    AskedQuestion, BookAbout, CartridgeAbout, CartridgeSession, Packed, write_book, write_cartridge,
};
use crate::prose::{plain_line, prose_to_html};
use crate::quantity::Date;
use crate::read::words::QuestionKind;
use crate::render::Bundle;
use crate::words::Words;

/// Packs the pages of a pack, as published, for a learning platform.
///
/// # Errors
/// Where the labels of the pack's own look can't be read.
pub fn render_cartridge(
    pack: &Pack,
    bundle: &Bundle,
    date: Option<Date>,
) -> Result<Packed, RenderFault> {
    let words = Publication::of(pack)?.words;
    let about = CartridgeAbout {
        title: plain_line(&pack.title),
        language: pack.language.to_string(),
        about: words.say("front-about"),
        licence: licences_of(pack),
    };
    let offered = pack.sessions.iter().filter(|session| !session.is_retired());
    let sessions: Vec<CartridgeSession> =
        offered.map(|session| session_of(session, pack, &words)).collect();
    Ok(write_cartridge(bundle, &about, &sessions, date.or_else(|| latest_date(pack))))
}

fn session_of(session: &Session, pack: &Pack, words: &Words) -> CartridgeSession {
    let title = plain_line(&session.title);
    let sheet = |sheet: Sheet| (sheet.path(&session.id), words.say(&sheet.word_key()));
    let page = (page_path(&session.id), title.clone());
    let sheets = Sheet::chosen(&pack.printing).into_iter().map(sheet);
    CartridgeSession {
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

/// Packs the offered sessions of a pack as a book.
///
/// # Errors
/// Where a template of the pack's own look can't be used.
pub fn render_epub(pack: &Pack, date: Option<Date>) -> Result<Packed, RenderFault> {
    let publication = Publication::of(pack)?;
    let Book { files, spine } = render_book(&publication)?;
    let words = &publication.words;
    let about = BookAbout {
        title: plain_line(&pack.title),
        language: pack.language.to_string(),
        maker: pack.school.as_deref().map(plain_line),
        licence: licences_of(pack),
        description: words.say("front-about"),
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
