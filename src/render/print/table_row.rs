//! Rows of a table on paper: cells side by side over a thin line; a row is never cut.

use super::page::Item;
use super::scale::Type;
use super::strip::{Column, placed};
use crate::prose::Run;

/// Between two columns, and above and below the words of a row.
const GUTTER: f32 = 8.0;
const AIR: f32 = 2.5;

/// A row of cells, each with the width of its column; the head is bold, over a thicker line.
pub fn table_row(column: &mut Column<'_, '_>, cells: &[(&str, f32)], is_head: bool) {
    let (items, tall) = row_items(column, cells, is_head);
    column.line_of_words(tall, items);
    if is_head {
        column.keep_with_next();
    }
}

/// The same with a drawing, as high as `tall`, at its right end and words below it.
pub fn table_row_with(
    column: &mut Column<'_, '_>,
    cells: &[(&str, f32)],
    drawn: (Vec<Item>, f32, f32),
    below: &str,
) {
    let (drawing, wide, tall) = drawn;
    let left = column.width - wide;
    let (mut items, mut height) = words_of(column, cells, false);
    items.extend(drawing.into_iter().map(|item| item.moved(left, AIR)));
    height = height.max(tall + AIR);
    let beside = column.width - if height <= tall + AIR { wide + GUTTER } else { 0.0 };
    // Words below begin beside the drawing where there is room under the cells.
    let (_, cells_tall) = words_of(column, cells, false);
    let lines = column.shaper.shape(&[Run::plain(below)], Type::SMALL, beside);
    let mut y = cells_tall;
    for line in lines {
        items.extend(placed(line, 0.0).map(|item| item.moved(0.0, y)));
        y += Type::SMALL.leading;
    }
    let tall = height.max(y) + AIR;
    items.push(Item::line((0.0, tall), (column.width, tall), 0.5));
    column.line_of_words(tall, items);
}

fn row_items(
    column: &mut Column<'_, '_>,
    cells: &[(&str, f32)],
    is_head: bool,
) -> (Vec<Item>, f32) {
    let (mut items, height) = words_of(column, cells, is_head);
    let tall = height + AIR;
    items.push(Item::line((0.0, tall), (column.width, tall), if is_head { 1.4 } else { 0.5 }));
    (items, tall)
}

fn words_of(column: &mut Column<'_, '_>, cells: &[(&str, f32)], is_head: bool) -> (Vec<Item>, f32) {
    let mut items = Vec::new();
    let (mut x, mut tallest) = (0.0, 0.0_f32);
    for (text, width) in cells {
        let kind = if is_head { Type::LABEL } else { Type::SMALL };
        let run = if is_head { Run::bold(*text) } else { Run::plain(*text) };
        let mut y = AIR;
        for line in column.shaper.shape(&[run], kind, (width - GUTTER).max(20.0)) {
            items.extend(placed(line, x).map(|item| item.moved(0.0, y)));
            y += kind.leading;
        }
        tallest = tallest.max(y);
        x += width;
    }
    (items, tallest)
}
