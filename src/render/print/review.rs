//! The review sheet: questions with lines to write on, and the answers on a page of their own.

use super::one_line::{DOT, short_title, width_of};
use super::page::Page;
use super::record::ruled_line;
use super::scale::Type;
use super::shaper::Shaper;
use super::sheet_page::{SheetHead, inner_width, kind_room, lay_columns, lay_head};
use super::sheets::{SheetSource, one};
use super::strip::{Column, Seat, Strip};
use crate::prose::{Run, plain_line, plain_words, read_blocks};

/// Lines to write an answer on: as many as still leave the questions on one page.
const LINES: [usize; 3] = [4, 3, 2];

/// Questions, then answers from the top of a new page.
pub fn lay_review(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let mut pages = lay_questions(shaper, source);
    pages.extend(lay_answers(shaper, source));
    pages
}

fn lay_questions(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let mut pages = Vec::new();
    for lines in LINES {
        pages = lay_questions_with(shaper, source, lines);
        if pages.len() == 1 {
            break;
        }
    }
    pages
}

fn lay_questions_with(
    shaper: &mut Shaper<'_>,
    source: &SheetSource<'_>,
    lines: usize,
) -> Vec<Page> {
    let words = source.words;
    let (items, height) =
        lay_head(shaper, &source.letterhead(), &words.say("sheet-review"), &source.title());
    let mut column = Column::new(shaper, inner_width(&source.letterhead()));
    column.words(&one(words.say("review-paper-how")), Type::body(12.0), Seat::default());
    for (question, number) in source.session.review.iter().zip(1_u32..) {
        column.gap(13.0);
        let kind = question.kind.as_ref().map(|kind| words.say(&format!("kind-{}", kind.word())));
        let label = kind.map_or_else(|| number.to_string(), |kind| format!("{number} · {kind}"));
        column.label(&label, Type::LABEL);
        column.blocks(&read_blocks(&question.ask), Type::body(14.0), Seat::default());
        column.keep_with_next();
        for line in 0..lines {
            ruled_line(&mut column);
            if line + 1 < lines {
                column.keep_with_next();
            }
        }
    }
    let strips: Vec<Strip> = column.strips;
    lay_columns(shaper, &source.letterhead(), SheetHead { items, height: height + 6.0 }, strips, 1)
}

fn lay_answers(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let words = source.words;
    let title = words.say("review-answers");
    // The title stands whole on the page of the questions.
    let (sheet, of) = (format!("{}{DOT}", words.say("sheet-review")), source.title());
    let room = kind_room(&source.letterhead()) - width_of(shaper, &sheet, Type::LABEL);
    let kind = format!("{sheet}{}", short_title(shaper, &of, Type::LABEL, room));
    let (items, height) = lay_head(shaper, &source.letterhead(), &kind, &title);
    let mut column = Column::new(shaper, inner_width(&source.letterhead()));
    for (question, number) in source.session.review.iter().zip(1_u32..) {
        column.gap(11.0);
        let asked = plain_words(&question.ask);
        column.words(&[Run::bold(format!("{number}. {asked}"))], Type::body(12.5), Seat::default());
        column.keep_with_next();
        match &question.answer {
            Some(answer) => {
                column.blocks(
                    &read_blocks(answer),
                    Type::body(12.5),
                    Seat { indent: 14.0, has_bar: false },
                );
            }
            None => column.words(&one(words.say("review-own")), Type::body(12.5), Seat::default()),
        }
    }
    if source.session.parts.iter().any(|part| !part.faults.is_empty()) {
        column.gap(16.0);
        let note = plain_line(&words.say("review-help"));
        column.words(&one(note), Type::body(12.0), Seat::default());
    }
    let strips = column.strips;
    lay_columns(shaper, &source.letterhead(), SheetHead { items, height: height + 6.0 }, strips, 1)
}
