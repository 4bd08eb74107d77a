//! A table on paper, to be filled in by hand.

use super::page::Item;
use super::scale::Type;
use super::sheets::one;
use super::strip::{Column, placed};

/// A table to fill in: the heads of its columns, the first cell of each row, and how wide the first
/// column is against the others.
#[derive(Clone, Debug)]
pub struct Table {
    pub heads: Vec<String>,
    pub rows: Vec<String>,
    pub first_share: f32,
}

/// Draws a table whose rows are at least so tall.
pub fn draw_table(column: &mut Column<'_, '_>, table: &Table, row_height: f32) {
    #[allow(clippy::cast_precision_loss, reason = "ten columns at most")]
    let others = (table.heads.len() - 1).max(1) as f32;
    let unit = column.width / (others + table.first_share);
    let first = unit * table.first_share;
    let lefts: Vec<f32> = (0..=table.heads.len())
        .map(|index| {
            #[allow(clippy::cast_precision_loss, reason = "ten columns at most")]
            let index = index as f32;
            if index == 0.0 { 0.0 } else { first + unit * (index - 1.0) }
        })
        .collect();
    row_strip(column, &lefts, &table.heads, Type::LABEL, 0.0);
    column.keep_with_next();
    for (index, row) in table.rows.iter().enumerate() {
        row_strip(column, &lefts, std::slice::from_ref(row), Type::SMALL, row_height);
        if index + 1 < table.rows.len() && index < 2 {
            column.keep_with_next();
        }
    }
}

/// One row with its lines: as tall as its fullest cell, and at least `least`.
fn row_strip(column: &mut Column<'_, '_>, lefts: &[f32], cells: &[String], kind: Type, least: f32) {
    let pad = 5.0;
    let mut items = Vec::new();
    let mut tall = least;
    for (index, cell) in cells.iter().enumerate() {
        let (left, right) = (lefts[index], lefts[index + 1]);
        let lines = column.shaper.shape(&one(cell.clone()), kind, right - left - 2.0 * pad);
        let mut y = 4.0;
        for line in lines {
            items.extend(placed(line, left + pad).map(|item| item.moved(0.0, y)));
            y += kind.leading;
        }
        tall = tall.max(y + 4.0);
    }
    let (start, end) = (lefts[0], lefts[lefts.len() - 1]);
    items.push(Item::line((start, 0.0), (end, 0.0), 0.8));
    items.push(Item::line((start, tall), (end, tall), 0.8));
    items.extend(lefts.iter().map(|x| Item::line((*x, 0.0), (*x, tall), 0.8)));
    column.drawing(tall, items);
}
