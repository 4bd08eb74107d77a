//! Whole-page sheets: a head on the first page, columns of strips, and a foot on every page.

use super::flow::{Frame, break_frames, holds, place_frames};
use super::one_line::fit_line;
use super::page::{Item, Page, Role};
use super::scale::{MARGIN, Type, paper_size};
use super::shaper::Shaper;
use super::sheets::{Letterhead, one, shape_title};
use super::strip::{Strip, placed};
use crate::words::Filling;

/// The line at the foot of a page, and the room above it.
const FOOT: f32 = 19.0;

/// Between two columns.
const GUTTER: f32 = 22.0;

/// The height that is left for columns on the first page, under a head so tall.
pub fn first_room(sheet: &Letterhead<'_>, head: f32) -> f32 {
    paper_size(sheet.paper).1 - 2.0 * MARGIN - FOOT - head
}

/// The page’s inner width.
pub fn inner_width(sheet: &Letterhead<'_>) -> f32 {
    paper_size(sheet.paper).0 - 2.0 * MARGIN
}

/// The width of one of so many columns.
pub fn column_width(sheet: &Letterhead<'_>, columns: u8) -> f32 {
    let columns = f32::from(columns);
    (inner_width(sheet) - GUTTER * (columns - 1.0)) / columns
}

/// Where the title of a sheet begins, below the thick line.
pub const TITLE_TOP: f32 = 22.0;

/// The room for the kind of sheet beside the school.
pub fn kind_room(sheet: &Letterhead<'_>) -> f32 {
    inner_width(sheet) * 0.45
}

/// The head of a sheet: what kind of sheet, a thick line, the title.
pub fn lay_head(
    shaper: &mut Shaper<'_>,
    sheet: &Letterhead<'_>,
    kind: &str,
    title: &str,
) -> (Vec<Item>, f32) {
    let width = inner_width(sheet);
    let mut items = Vec::new();
    if let Some(line) = fit_line(shaper, kind, Type::LABEL, kind_room(sheet)) {
        let words = placed(line, 0.0).collect();
        items.push(Item::group(Role::Paragraph, shaper.next_key(), words));
    }
    if let Some(line) = fit_line(shaper, &sheet.school, Type::SMALL, width * 0.5) {
        let left = width - line.width;
        let words = placed(line, left).collect();
        items.push(Item::group(Role::Paragraph, shaper.next_key(), words));
    }
    items.push(Item::line((0.0, TITLE_TOP - 5.0), (width, TITLE_TOP - 5.0), 2.6));
    let mut y = TITLE_TOP;
    let mut words = Vec::new();
    for line in shape_title(shaper, title, Type::SHEET_TITLE, width) {
        words.extend(placed(line, 0.0).map(|item| item.moved(0.0, y)));
        y += shaper.leading(Type::SHEET_TITLE);
    }
    items.push(Item::group(Role::Heading(1), shaper.next_key(), words));
    (items, y + 2.0)
}

/// A head for one or more pages of columns.
pub struct SheetHead {
    pub items: Vec<Item>,
    pub height: f32,
}

/// Flows strips into columns over as many pages as they need.
pub fn lay_columns(
    shaper: &mut Shaper<'_>,
    sheet: &Letterhead<'_>,
    head: SheetHead,
    strips: Vec<Strip>,
    columns: u8,
) -> Vec<Page> {
    let (_, height) = paper_size(sheet.paper);
    let room = height - 2.0 * MARGIN - FOOT;
    let first = room - head.height;
    let count = usize::from(columns);
    let height_of = |frame: usize| if frame < count { first } else { room };
    let mut starts = break_frames(&strips, height_of);
    if count > 1 && starts.len() <= count {
        starts = balance(&strips, count, first);
    } else if count > 1 {
        // The columns of the last page end together too.
        let before = (starts.len() - 1) / count * count;
        let from = starts[before];
        let last = balance(&strips[from..], count, room);
        starts.truncate(before);
        starts.extend(last.into_iter().map(|start| from + start));
    }
    let frames = place_frames(strips, &starts);
    let mut pages = pages_of(sheet, head, frames, columns);
    add_feet(shaper, sheet, &mut pages);
    pages
}

/// How many pages strips need in so many columns under a head so tall.
pub fn count_pages(sheet: &Letterhead<'_>, head: f32, strips: &[Strip], columns: u8) -> usize {
    let (room, first) = (first_room(sheet, 0.0), first_room(sheet, head));
    let count = usize::from(columns);
    let height_of = |frame: usize| if frame < count { first } else { room };
    break_frames(strips, height_of).len().div_ceil(count)
}

/// Where columns begin at the least height that still holds everything, so that they end at about
/// the same place.
fn balance(strips: &[Strip], columns: usize, most: f32) -> Vec<usize> {
    let mut best = break_frames(strips, |_| most);
    let mut height = most;
    while height > 40.0 {
        height -= 6.0;
        let tried = break_frames(strips, |_| height);
        if tried.len() > columns || !holds(strips, &tried, |_| height) {
            break;
        }
        best = tried;
    }
    best
}

fn pages_of(
    sheet: &Letterhead<'_>,
    mut head: SheetHead,
    frames: Vec<Frame>,
    columns: u8,
) -> Vec<Page> {
    let (width, height) = paper_size(sheet.paper);
    let step = column_width(sheet, columns) + GUTTER;
    let mut pages: Vec<Page> = Vec::new();
    for (index, frame) in frames.into_iter().enumerate() {
        let column = index % usize::from(columns);
        if column == 0 {
            let items = std::mem::take(&mut head.items)
                .into_iter()
                .map(|item| item.moved(MARGIN, MARGIN))
                .collect();
            pages.push(Page { width, height, items });
        }
        let top = if pages.len() == 1 { head.height } else { 0.0 };
        #[allow(clippy::cast_precision_loss, reason = "a page has two columns")]
        let left = MARGIN + step * column as f32;
        if let Some(page) = pages.last_mut() {
            page.items.extend(frame.items.into_iter().map(|item| item.moved(left, MARGIN + top)));
        }
    }
    pages
}

/// Adds the foot to every page: where the sheet is from, and its number where there are several.
fn add_feet(shaper: &mut Shaper<'_>, sheet: &Letterhead<'_>, pages: &mut [Page]) {
    let total = u32::try_from(pages.len()).unwrap_or(u32::MAX);
    for (page, number) in pages.iter_mut().zip(1..) {
        let y = page.height - MARGIN - Type::SMALL.leading;
        let mut right = page.width - MARGIN;
        if total > 1 {
            let counts = [("number", Filling::Count(number)), ("total", Filling::Count(total))];
            let text = sheet.words.say_with("sheet-number", &counts);
            for line in shaper.shape(&one(text), Type::SMALL, 200.0) {
                let left = right - line.width;
                right = left - 12.0;
                page.items.extend(placed(line, left).map(|item| item.moved(0.0, y)));
            }
        }
        let origin = sheet.origin.lay(shaper, Type::SMALL, right - MARGIN).into_iter();
        page.items.extend(origin.map(|item| item.moved(MARGIN, y)));
    }
}
