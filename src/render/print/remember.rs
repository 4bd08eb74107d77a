//! The sheet of questions that come back: a block for each day, to be answered from memory; the answers on a
//! page of their own.

use super::page::Page;
use super::scale::Type;
use super::shaper::Shaper;
use super::sheet_page::{SheetHead, column_width, inner_width, lay_columns, lay_head};
use super::sheets::{Letterhead, one};
use super::strip::{Column, Seat, Strip};
use super::term_poster::TermPoster;
use crate::prose::Run;
use crate::render::unit::{UnitWords, date_words, question_of};
use crate::words::Filling;

/// The questions of a day stay together up to so many: more would leave columns empty.
const MOST_TOGETHER: usize = 4;

/// Questions, then answers from the top of a new page; nothing where no question comes back.
pub fn lay_remember(shaper: &mut Shaper<'_>, unit: &TermPoster<'_>) -> Vec<Page> {
    if unit.plan.days.iter().all(|day| day.remember.is_empty()) {
        return Vec::new();
    }
    let mut pages = lay_part(shaper, unit, false);
    pages.extend(lay_part(shaper, unit, true));
    pages
}

fn lay_part(shaper: &mut Shaper<'_>, unit: &TermPoster<'_>, is_answers: bool) -> Vec<Page> {
    let sheet = Letterhead::of_pack(unit.pack, unit.words);
    let title = UnitWords::of(unit.unit, unit.plan, unit.words).title;
    let name = unit.words.say("unit-remember");
    let (kind, title) = if is_answers {
        (format!("{name} · {title}"), unit.words.say("unit-answers"))
    } else {
        (title, name)
    };
    let (mut items, mut height) = lay_head(shaper, &sheet, &kind, &title);
    if !is_answers {
        let mut lead = Column::new(shaper, inner_width(&sheet));
        lead.words(&one(unit.words.say("unit-remember-how")), Type::body(13.0), Seat::default());
        for strip in lead.strips {
            items.extend(strip.items.into_iter().map(|item| item.moved(0.0, height)));
            height += strip.height;
        }
    }
    let head = SheetHead { items, height: height + 8.0 };
    let strips = lay_days(shaper, unit, column_width(&sheet, 2), is_answers);
    lay_columns(shaper, &sheet, head, strips, 2)
}

fn lay_days(
    shaper: &mut Shaper<'_>,
    unit: &TermPoster<'_>,
    width: f32,
    is_answers: bool,
) -> Vec<Strip> {
    let mut column = Column::new(shaper, width);
    for day in unit.plan.days.iter().filter(|day| !day.remember.is_empty()) {
        let first = column.strips.len();
        column.gap(16.0);
        column.label(&date_words(day.slot.date, unit.words), Type::HEADING);
        for back in &day.remember {
            let (ask, answer, from) = question_of(unit.pack, *back);
            column.gap(5.0);
            if is_answers {
                column.words(&[Run::bold(ask)], Type::body(12.0), Seat::default());
                column.keep_with_next();
                let answer = answer.unwrap_or_else(|| unit.words.say("review-own"));
                column.words(&one(answer), Type::body(12.0), Seat { indent: 12.0, has_bar: false });
            } else {
                column.words(&one(ask), Type::body(14.0), Seat { indent: 10.0, has_bar: true });
                column.keep_with_next();
                let from =
                    unit.words.say_with("unit-remember-from", &[("session", Filling::Text(&from))]);
                column.words(&one(from), Type::SMALL, Seat { indent: 10.0, has_bar: true });
            }
        }
        if day.remember.len() <= MOST_TOGETHER {
            keep_together(&mut column.strips[first..]);
        }
    }
    column.strips
}

/// Every strip but the last keeps the next.
fn keep_together(strips: &mut [Strip]) {
    if let Some((_, others)) = strips.split_last_mut() {
        for strip in others {
            strip.keeps_next = true;
        }
    }
}
