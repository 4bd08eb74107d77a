//! The booklet: the cover with what is inside, then every card as a page of half a sheet, two pages to
//! a side, so that the printed stack is folded once and reads in order. How far folded sheets creep
//! outwards is left out of account: a session has a few sheets.

use super::booklet_cover::lay_cover;
use super::card_fit::{CardForm, Cell};
use super::card_plan::lay_all_cards;
use super::card_type::PAGE;
use super::flow::place_frames;
use super::impose::{booklet_sides, padded};
use super::one_line::fit_line;
use super::page::{Item, Key, Page, Role};
use super::record::ruled_line;
use super::scale::{MARGIN, Type, paper_size};
use super::shaper::Shaper;
use super::sheets::{SheetSource, one};
use super::strip::{Column, placed};

/// The line at the foot of a page.
pub const FOOT: f32 = 18.0;

/// Lays out the printed sides of the booklet.
pub fn lay_booklet(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let (height, width) = paper_size(source.paper());
    let cell = Cell { width: width / 2.0 - 2.0 * MARGIN, height: height - 2.0 * MARGIN };
    let form = CardForm { cell, types: PAGE, has_back: false, foot_lines: 1, is_wide: false };
    let cards = lay_all_cards(shaper, form, source);
    let mut pages = lay_cover(shaper, cell, &cards, source);
    for card in cards {
        let number = pages.len() + 1;
        let mut items = card.front.items;
        items.extend(lay_foot(shaper, cell, number, &source.title()));
        pages.push(items);
    }
    while pages.len() < padded(pages.len()) {
        pages.push(lay_notes(shaper, cell, source));
    }
    impose(pages, (width, height))
}

/// The key of the first page: beyond that of any other thing.
const FIRST_PAGE: Key = 1 << 31;

/// Places two pages on each side of a sheet, with marks where it is folded on the outermost.
fn impose(pages: Vec<Vec<Item>>, (width, height): (f32, f32)) -> Vec<Page> {
    let mut pages: Vec<Option<Vec<Item>>> = pages.into_iter().map(Some).collect();
    let sides = booklet_sides(pages.len()).into_iter().enumerate();
    sides
        .map(|(side, halves)| {
            let mut items = if side == 0 { fold_marks(width, height) } else { Vec::new() };
            for (page, left) in halves.into_iter().zip([MARGIN, width / 2.0 + MARGIN]) {
                let Some(number) = page else { continue };
                let Some(page) = pages.get_mut(number).and_then(Option::take) else { continue };
                let page = page.into_iter().map(|item| item.moved(left, MARGIN)).collect();
                // The pages are read in their own order, wherever they lie.
                let key = FIRST_PAGE.saturating_add(Key::try_from(number).unwrap_or(Key::MAX));
                items.push(Item::group(Role::Section, key, page));
            }
            Page { width, height, items }
        })
        .collect()
}

/// Short dashed lines at the head and the foot of the fold.
fn fold_marks(width: f32, height: f32) -> Vec<Item> {
    let middle = width / 2.0;
    let dashed = |top: f32, bottom: f32| Item::Line {
        from: (middle, top),
        to: (middle, bottom),
        thickness: 0.6,
        dash: Some((3.0, 3.0)),
        grey: 0.35,
    };
    vec![dashed(MARGIN, MARGIN + 24.0), dashed(height - MARGIN - 24.0, height - MARGIN)]
}

/// The session’s title at the left and the page’s number at the right.
pub fn lay_foot(shaper: &mut Shaper<'_>, cell: Cell, number: usize, title: &str) -> Vec<Item> {
    let y = cell.height - Type::SMALL.leading;
    let number = shaper.shape(&one(number.to_string()), Type::LABEL, 60.0).into_iter().next();
    let mut items: Vec<Item> = Vec::new();
    if let Some(line) = number {
        let left = cell.width - line.width;
        items.extend(placed(line, left));
    }
    if let Some(line) = fit_line(shaper, title, Type::SMALL, cell.width - 60.0) {
        items.extend(placed(line, 0.0));
    }
    items.into_iter().map(|item| item.moved(0.0, y)).collect()
}

/// A page with lines to write on, so that the pages can be divided by four.
fn lay_notes(shaper: &mut Shaper<'_>, cell: Cell, source: &SheetSource<'_>) -> Vec<Item> {
    let mut column = Column::new(shaper, cell.width);
    column.label(&source.words.say("notes"), Type::HEADING);
    column.gap(4.0);
    let mut left = cell.height - Type::HEADING.leading - 10.0;
    while left >= 28.0 {
        ruled_line(&mut column);
        left -= 24.0;
    }
    place_frames(column.strips, &[0]).pop().unwrap_or_default().items
}
