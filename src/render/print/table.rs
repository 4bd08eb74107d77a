//! A table on paper, to be filled in by hand.

use super::page::{Item, Key, Role};
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
    let key = column.shaper.next_key();
    row_strip(column, &lefts, &table.heads, (Type::LABEL, 0.0), (key, true));
    column.keep_with_next();
    for (index, row) in table.rows.iter().enumerate() {
        let row = std::slice::from_ref(row);
        row_strip(column, &lefts, row, (Type::SMALL, row_height), (key, false));
        if index + 1 < table.rows.len() && index < 2 {
            column.keep_with_next();
        }
    }
}

/// One row of a table with its lines: as tall as its fullest cell, and at least `least`.
fn row_strip(
    column: &mut Column<'_, '_>,
    lefts: &[f32],
    cells: &[String],
    (kind, least): (Type, f32),
    (table, is_head): (Key, bool),
) {
    let pad = 5.0;
    let mut row = Vec::new();
    let mut tall = least;
    let empty = String::new();
    for (index, edges) in lefts.windows(2).enumerate() {
        let cell = cells.get(index).unwrap_or(&empty);
        let lines = column.shaper.shape(&one(cell.clone()), kind, edges[1] - edges[0] - 2.0 * pad);
        #[allow(clippy::cast_precision_loss, reason = "a cell has a few lines")]
        let high = kind.leading * lines.len() as f32;
        // Words stand in the middle of a row that is taller for a hand to write in.
        let mut y = 4.0_f32.max((least - high) / 2.0);
        let mut words = Vec::new();
        for line in lines {
            words.extend(placed(line, edges[0] + pad).map(|item| item.moved(0.0, y)));
            y += kind.leading;
        }
        tall = tall.max(y + 4.0);
        let role = match (is_head, index) {
            (true, _) => Role::ColumnHead,
            (false, 0) if !cell.is_empty() => Role::RowHead,
            _ => Role::Cell,
        };
        row.push(Item::group(role, column.shaper.next_key(), words));
    }
    let row = Item::group(Role::Row, column.shaper.next_key(), row);
    let mut items = vec![Item::group(Role::Table, table, vec![row])];
    let (start, end) = (lefts[0], lefts[lefts.len() - 1]);
    items.push(Item::line((start, 0.0), (end, 0.0), 0.8));
    items.push(Item::line((start, tall), (end, tall), 0.8));
    items.extend(lefts.iter().map(|x| Item::line((*x, 0.0), (*x, tall), 0.8)));
    column.drawing(tall, items);
}
