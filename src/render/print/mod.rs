//! The printed sheets of every session, as PDFs: cards, home guide, record sheet and review sheet, and
//! what else a pack asks for.
//!
//! Words are shaped and broken into lines ([`shaper`]), lines become strips that are never cut
//! ([`strip`]), strips flow into frames ([`flow`]), frames make pages ([`page`]), and the
//! [`writer`] alone knows PDF.

mod alike;
mod atoms;
mod bidi;
mod booklet;
mod booklet_cover;
mod breaks;
mod british;
mod brush;
mod card;
mod card_around;
mod card_back;
mod card_choice;
mod card_columns;
mod card_figure;
mod card_fit;
mod card_foot;
mod card_head;
mod card_least;
mod card_plan;
mod card_sides;
mod card_type;
mod cards;
mod class_sheets;
mod content;
mod deflate;
mod desk;
mod digits;
mod drawings;
mod even_lines;
mod faces;
mod figure_case;
mod floor_card;
mod flow;
mod font_mould;
mod font_program;
mod gather;
mod glyph_area;
mod ground;
mod guide_head;
mod guide_line;
mod home_guide;
mod impose;
mod ink;
mod large_head;
mod letters;
mod line_breaks;
mod moment_row;
mod one_line;
mod origin;
mod outlines;
mod page;
mod pair;
mod paper_pictures;
mod passage_marks;
mod passages;
mod pdf_file;
mod pdf_object;
mod pdf_text;
mod plate;
mod pose_sheet;
mod poster;
mod poster_group;
mod poster_head;
mod poster_margin;
mod printer;
mod progress;
mod read_out;
mod record;
mod record_class;
mod record_week;
mod remember;
mod review;
mod scale;
mod scan;
mod shaper;
mod sheet_page;
mod sheets;
mod slip;
mod stock;
mod stock_font;
mod stock_picture;
mod strip;
mod structure;
mod tab;
mod table;
mod table_row;
mod tagged;
mod term_poster;
mod text_map;
mod unit_sheets;
mod used;
mod word_gaps;
mod word_shaper;
mod wrap;
mod writer;

pub use progress::render_progress_sheets;

use std::sync::Arc;

use rayon::prelude::*;

use super::house::House;
use super::{Bundle, GATHER_SHEET, InkReport, Publication, RenderFault, Sheet};
use crate::edition::{Sheets, outline_session};
use crate::pack::{Pack, Session, SessionId};
use crate::prose::plain_line;
use crate::read::print_choices::Spacing;
use crate::render::phrases::is_right_to_left;
use crate::words::Words;
pub use class_sheets::{ClassEntry, ClassSection, ClassSheet};
use desk::Desk;
use faces::Faces;
use figure_case::FigureCase;
use page::Page;
use passages::Passages;
use printer::{Printer, Printers};
use scale::Air;
use scan::Codes;
use shaper::Shaper;
use sheets::SheetSource;
use writer::About;

/// The date of sheets whose session gives none: any fixed day does, so long as it is always the same.
const NO_DATE: &str = "20000101";

/// Renders every sheet of every session, and measures the ink of each.
///
/// # Errors
/// Where a font of the pack's own look can't be used.
pub fn render_sheets(publication: &Publication<'_>) -> Result<(Bundle, InkReport), RenderFault> {
    if !publication.wants_below("print/") {
        return Ok((Bundle::new(), InkReport::new()));
    }
    Ok(Press::load(&publication.house)?.render(publication, &|_| true))
}

/// Renders the activity cards alone.
///
/// # Errors
/// Where a font of the pack's own look can't be used.
pub fn render_cards(publication: &Publication<'_>) -> Result<Bundle, RenderFault> {
    let press = Press::load(&publication.house)?;
    let printers = Printers::of(&press.faces, publication.pack);
    let (bundle, _) = render_chosen(&printers, publication, &|_| true, &[Sheet::Cards]);
    Ok(bundle)
}

/// The faces, read once for many packs that share a look.
pub struct Press {
    faces: Faces,
}

impl std::fmt::Debug for Press {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Press").finish_non_exhaustive()
    }
}

impl Press {
    /// Reads the faces.
    ///
    /// # Errors
    /// Where a font of the pack's own look can't be used.
    pub fn load(house: &House<'_>) -> Result<Self, RenderFault> {
        Ok(Self { faces: Faces::load(house)? })
    }

    /// Renders the sheets of those sessions that are wanted, and the one of the whole pack.
    pub fn render(
        &self,
        publication: &Publication<'_>,
        is_wanted: &(dyn Fn(&SessionId) -> bool + Sync),
    ) -> (Bundle, InkReport) {
        let sheets = Sheet::chosen(&publication.pack.printing);
        let printers = Printers::of(&self.faces, publication.pack);
        let (mut bundle, mut ink) = render_chosen(&printers, publication, is_wanted, &sheets);
        if publication.wants(GATHER_SHEET) && !publication.gather_set().things.is_empty() {
            let printed = printers.lend(|printer| render_gather(printer, publication));
            add(&mut bundle, &mut ink, printed);
        }
        if !publication.pack.units.is_empty() && publication.wants_below("print/units/") {
            let render = |printer: &mut _| unit_sheets::render_unit_sheets(printer, publication);
            add(&mut bundle, &mut ink, printers.lend(render));
        }
        (bundle, ink)
    }

    /// Renders sheets for a teacher about a class, and the survey.
    pub fn render_class(&self, pack: &Pack, words: &Words, sheet: &ClassSheet) -> Vec<u8> {
        let mut printer = Printer::new(&self.faces, words.language(), Air::of(Spacing::Usual));
        let pages = class_sheets::lay_class_sheet(&mut printer.shaper, pack, words, sheet);
        let about = About {
            title: sheet.title.clone(),
            author: pack.school.clone().unwrap_or_else(|| pack.title.clone()),
            language: pack.language.value.clone(),
            date: NO_DATE.to_owned(),
            is_folded: false,
            is_rtl: is_right_to_left(words.language()),
        };
        printer.writer.write_alone(
            &turned(pages, &self.faces, words.language()),
            &about,
            &pack.pictures,
        )
    }
}

fn render_chosen(
    printers: &Printers<'_>,
    publication: &Publication<'_>,
    is_wanted: &(dyn Fn(&SessionId) -> bool + Sync),
    chosen: &[Sheet],
) -> (Bundle, InkReport) {
    let pack = publication.pack;
    let desk = Desk::of(publication, chosen);
    let sessions = pack.sessions.iter().zip(&publication.plans);
    let is_asked = |session: &Session| {
        is_wanted(&session.id) && publication.wants_below(&format!("print/{}/", session.id))
    };
    let sessions: Vec<_> =
        sessions.filter(|(session, _)| !session.is_retired() && is_asked(session)).collect();
    let printed: Vec<Printed> = sessions
        .par_iter()
        .map(|(session, plans)| {
            let print = |pack: &Pack| {
                let (words, codes) = (&publication.words, Arc::new(Codes::of(session, pack)));
                let marks = outline_session(session, plans, pack, words).marks;
                let (sheets, figures) = (Sheets::NONE, Arc::new(FigureCase::of(session, words)));
                let source =
                    SheetSource { session, plans, pack, words, codes, figures, marks, sheets };
                printers.lend(|printer| render_session(printer, &source, chosen))
            };
            let sheets = desk.find_or_print(session, print);
            (publication.order.on_session)();
            sheets
        })
        .flatten_iter()
        .collect();
    let (mut bundle, mut ink) = (Bundle::new(), InkReport::new());
    add(&mut bundle, &mut ink, printed);
    (bundle, ink)
}

/// Adds the files that were made, and the ink of all.
fn add(bundle: &mut Bundle, ink: &mut InkReport, printed: Vec<Printed>) {
    for sheet in printed {
        bundle.extend(sheet.bytes.map(|bytes| (sheet.path.clone(), bytes)));
        ink.insert(sheet.path, sheet.ink);
    }
}

/// A sheet that is laid out.
struct LaidSheet {
    path: String,
    pages: Vec<Page>,
    about: About,
}

/// A finished sheet.
struct Printed {
    path: String,
    /// Nothing where the file stays as it was published.
    bytes: Option<Vec<u8>>,
    /// The share of each page that is inked.
    ink: Vec<f32>,
}

/// The one sheet that is for the whole pack.
fn render_gather(press: &mut Printer<'_>, publication: &Publication<'_>) -> Vec<Printed> {
    let Publication { pack, words, .. } = publication;
    let title = plain_line(&pack.title);
    let gather_set = publication.gather_set();
    let sessions = pack.sessions.iter().map(AsRef::as_ref);
    press.shaper.passages = Passages::of(pack, sessions, None);
    let pages = gather::lay_gather(&mut press.shaper, pack, &title, gather_set, words);
    let pages = turned(pages, press.shaper.faces(), &pack.language);
    let pages = marked(&mut press.shaper, pages);
    let about = About {
        title: format!("{} – {}", pack.title, words.say("sheet-gather")),
        author: pack.school.clone().unwrap_or_else(|| pack.title.clone()),
        language: pack.language.value.clone(),
        date: NO_DATE.to_owned(),
        is_folded: false,
        is_rtl: is_right_to_left(&pack.language),
    };
    press.print(vec![LaidSheet { path: GATHER_SHEET.to_owned(), pages, about }], pack)
}

/// The sheet of the poses that a session can name, for the teachers’ folder.
///
/// # Errors
/// Where a font of the pack's own look can't be used.
pub fn render_pose_sheet(publication: &Publication<'_>) -> Result<Vec<u8>, RenderFault> {
    let (pack, words) = (publication.pack, &publication.words);
    let press = Press::load(&publication.house)?;
    let mut press = Printer::new(&press.faces, &pack.language, Air::of(Spacing::Usual));
    let pages = pose_sheet::lay_pose_sheet(&mut press.shaper, pack, words);
    let pages = turned(pages, press.shaper.faces(), &pack.language);
    let about = About {
        title: format!("{} – {}", pack.title, words.say("poses-title")),
        author: pack.school.clone().unwrap_or_else(|| pack.title.clone()),
        language: pack.language.value.clone(),
        date: NO_DATE.to_owned(),
        is_folded: false,
        is_rtl: is_right_to_left(&pack.language),
    };
    Ok(press.writer.write_alone(&pages, &about, &pack.pictures))
}

fn render_session(
    press: &mut Printer<'_>,
    source: &SheetSource<'_>,
    chosen: &[Sheet],
) -> Vec<Printed> {
    press.shaper.begin_session();
    press.shaper.passages = Passages::of(source.pack, std::iter::once(source.session), None);
    let lay = |sheet: &Sheet| {
        let source = &SheetSource { sheets: sheet.of_edition(), ..source.clone() };
        LaidSheet {
            path: sheet.path(&source.session.id),
            pages: lay_sheet(&mut press.shaper, source, *sheet),
            about: about(source, *sheet),
        }
    };
    let laid = chosen.iter().map(lay).collect();
    press.print(laid, source.pack)
}

fn lay_sheet(shaper: &mut Shaper<'_>, source: &SheetSource<'_>, sheet: Sheet) -> Vec<Page> {
    let pages = match sheet {
        Sheet::Cards => cards::lay_cards(shaper, source),
        Sheet::LargePrint => cards::lay_large_print(shaper, source),
        Sheet::ClassSet => {
            cards::lay_class_set(shaper, source, source.pack.printing.copies.unwrap_or(1))
        }
        Sheet::Booklet => booklet::lay_booklet(shaper, source),
        Sheet::Poster => poster::lay_poster(shaper, source),
        Sheet::HomeGuide => home_guide::lay_home_guide(shaper, source),
        Sheet::Record => record::lay_record(shaper, source),
        Sheet::ClassRecord => record_class::lay_class_record(shaper, source),
        Sheet::WeekRecord => record_week::lay_week_record(shaper, source),
        Sheet::Review => review::lay_review(shaper, source),
    };
    let pages = turned(pages, shaper.faces(), &source.pack.language);
    marked(shaper, pages)
}

/// Pages whose passages in another language say so.
fn marked(shaper: &mut Shaper<'_>, mut pages: Vec<Page>) -> Vec<Page> {
    let passages = std::mem::take(&mut shaper.passages);
    passages.mark(&mut pages, shaper);
    shaper.passages = passages;
    pages
}

/// Pages as their script runs, mirrored where it runs from right to left; words that stand apart are parted.
fn turned(mut pages: Vec<Page>, faces: &Faces, language: &str) -> Vec<Page> {
    if is_right_to_left(language) {
        pages = pages.into_iter().map(Page::mirrored).collect();
    }
    word_gaps::part_words(&mut pages, faces);
    pages
}

fn about(source: &SheetSource<'_>, sheet: Sheet) -> About {
    let date = source.session.standing.as_ref().and_then(|standing| standing.on.as_ref());
    About {
        title: format!("{} – {}", source.title(), source.words.say(&sheet.word_key())),
        author: source.pack.school.clone().unwrap_or_else(|| source.pack.title.clone()),
        language: source.pack.language.value.clone(),
        date: date.map_or_else(|| NO_DATE.to_owned(), |date| date.to_string().replace('-', "")),
        is_folded: sheet == Sheet::Booklet,
        is_rtl: is_right_to_left(&source.pack.language),
    }
}
