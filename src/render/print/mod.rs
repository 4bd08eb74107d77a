//! The printed sheets: cards, home guide, record sheet and review sheet of every session, as PDFs.
//!
//! Words are shaped and broken into lines ([`shaper`]), lines become strips that are never cut
//! ([`strip`]), strips flow into frames ([`flow`]), frames make pages ([`page`]), and the
//! [`writer`] alone knows PDF.

mod card;
mod cards;
mod drawings;
mod faces;
mod floor_card;
mod flow;
mod font_program;
mod gather;
mod home_guide;
mod page;
mod record;
mod review;
mod scale;
mod shaper;
mod sheet_page;
mod sheets;
mod strip;
mod structure;
mod tagged;
mod writer;

use rayon::prelude::*;

use super::{Bundle, GATHER_SHEET, Publication, RenderFault, Sheet};
use faces::Faces;
use page::Page;
use shaper::Shaper;
use sheets::SheetSource;
use writer::{About, Writer};

/// The date of sheets whose session gives none: any fixed day does, so long as it is always the same.
const NO_DATE: &str = "20000101";

/// Renders every sheet of every session, and the sheet for the whole pack.
///
/// # Errors
/// Where a font of the pack's own look can't be used.
pub fn render_sheets(publication: &Publication<'_>) -> Result<Bundle, RenderFault> {
    let faces = Faces::load(&publication.house)?;
    let mut bundle = render_sessions(&faces, publication, &Sheet::ALL);
    if !publication.gather_set.things.is_empty() {
        let bytes = render_gather(&faces, publication);
        bundle.insert(GATHER_SHEET.to_owned(), bytes);
    }
    Ok(bundle)
}

/// Renders the cards of every session and no other sheet.
///
/// # Errors
/// Where a font of the pack's own look can't be used.
pub fn render_cards(publication: &Publication<'_>) -> Result<Bundle, RenderFault> {
    let faces = Faces::load(&publication.house)?;
    Ok(render_sessions(&faces, publication, &[Sheet::Cards]))
}

fn render_sessions(faces: &Faces, publication: &Publication<'_>, sheets: &[Sheet]) -> Bundle {
    let sessions = publication.pack.sessions.iter().zip(&publication.plans);
    let sessions: Vec<_> = sessions.filter(|(session, _)| !session.is_retired()).collect();
    sessions
        .par_iter()
        .map_init(
            || (Shaper::new(faces), Writer::new(faces)),
            |(shaper, writer), (session, plans)| {
                let source = SheetSource {
                    session,
                    plans,
                    pack: publication.pack,
                    words: &publication.words,
                };
                let rendered = render_session(shaper, writer, &source, sheets);
                (publication.on_session)();
                rendered
            },
        )
        .flatten_iter()
        .collect()
}

/// The one sheet that is for the whole pack.
fn render_gather(faces: &Faces, publication: &Publication<'_>) -> Vec<u8> {
    let Publication { pack, gather_set, words, .. } = publication;
    let pages = gather::lay_gather(&mut Shaper::new(faces), pack, gather_set, words);
    let about = About {
        title: format!("{} – {}", pack.title, words.say("sheet-gather")),
        author: pack.school.clone().unwrap_or_else(|| pack.title.clone()),
        language: pack.language.value.clone(),
        date: NO_DATE.to_owned(),
    };
    Writer::new(faces).write(&pages, &about, &pack.pictures)
}

fn render_session(
    shaper: &mut Shaper<'_>,
    writer: &mut Writer<'_>,
    source: &SheetSource<'_>,
    sheets: &[Sheet],
) -> Vec<(String, Vec<u8>)> {
    shaper.begin_session();
    sheets
        .iter()
        .map(|&sheet| {
            let pages = lay_sheet(shaper, source, sheet);
            let bytes = writer.write(&pages, &about(source, sheet), &source.pack.pictures);
            (sheet.path(&source.session.id), bytes)
        })
        .collect()
}

fn lay_sheet(shaper: &mut Shaper<'_>, source: &SheetSource<'_>, sheet: Sheet) -> Vec<Page> {
    match sheet {
        Sheet::Cards => cards::lay_cards(shaper, source),
        Sheet::HomeGuide => home_guide::lay_home_guide(shaper, source),
        Sheet::Record => record::lay_record(shaper, source),
        Sheet::Review => review::lay_review(shaper, source),
    }
}

fn about(source: &SheetSource<'_>, sheet: Sheet) -> About {
    let date = source.session.standing.as_ref().and_then(|standing| standing.on.as_ref());
    About {
        title: format!("{} – {}", source.title(), source.words.say(sheet.word_key())),
        author: source.pack.school.clone().unwrap_or_else(|| source.pack.title.clone()),
        language: source.pack.language.value.clone(),
        date: date.map_or_else(|| NO_DATE.to_owned(), |date| date.to_string().replace('-', "")),
    }
}
