//! The teachers’ sheet of every pose that a session can name: figures in a grid, each over its name.

use std::sync::Arc;

use super::page::{Item, Page, Role};
use super::plate::{Impression, Plate};
use super::scale::Type;
use super::shaper::Shaper;
use super::sheet_page::{SheetHead, inner_width, lay_columns, lay_head};
use super::sheets::{Letterhead, one};
use super::strip::{Column, Seat, placed};
use crate::drawing::figure::{Strip, draw_moment};
use crate::figure::Moment;
use crate::figure::library::Named;
use crate::figure::proportions::Proportions;
use crate::pack::Pack;
use crate::prose::plain_line;
use crate::render::figure_phrases::moment_says;
use crate::render::phrases::is_right_to_left;
use crate::render::site::YEARS;
use crate::words::Words;

/// Figures side by side.
const ACROSS: u8 = 5;

/// A stature in points: 24 mm.
const STATURE: f32 = 68.0;

/// Lays out the sheet of poses.
pub fn lay_pose_sheet(shaper: &mut Shaper<'_>, pack: &Pack, words: &Words) -> Vec<Page> {
    let sheet = Letterhead::of_pack(pack, words);
    let title = plain_line(&pack.title);
    let (items, height) = lay_head(shaper, &sheet, &words.say("poses-title"), &title);
    let mut column = Column::new(shaper, inner_width(&sheet));
    column.words(&one(words.say("poses-lead")), Type::body(12.0), Seat::default());
    let numbered: Vec<(u32, &Named)> = (0..).zip(&pack.poses.poses).collect();
    for row in numbered.chunks(usize::from(ACROSS)) {
        column.gap(12.0);
        lay_row(&mut column, row, words);
    }
    let strips = column.strips;
    lay_columns(shaper, &sheet, SheetHead { items, height: height + 6.0 }, strips, 1)
}

fn lay_row(column: &mut Column<'_, '_>, row: &[(u32, &Named)], words: &Words) {
    let cell = column.width / f32::from(ACROSS);
    let drawn: Vec<(Impression, String)> =
        row.iter().map(|(number, named)| draw(*number, named, cell, words)).collect();
    let tall = drawn.iter().map(|(set, _)| set.height()).fold(0.0, f32::max);
    let kind = Type::SMALL;
    let leading = column.shaper.leading(kind);
    let (mut items, mut lines, mut x) = (Vec::new(), 1.0_f32, 0.0);
    for ((_, named), (set, says)) in row.iter().zip(drawn) {
        let at = (x + (cell - set.width()) / 2.0, tall - set.height());
        let set = Item::Plate(Impression { at, ..set });
        items.push(Item::group(Role::Figure(says), column.shaper.next_key(), vec![set]));
        let shaped = column.shaper.shape(&one(named.name.as_str()), kind, cell - 8.0);
        let mut y = tall + 2.0;
        let mut name = Vec::new();
        for line in shaped {
            let left = x + (cell - line.width) / 2.0;
            name.extend(placed(line, left).map(|item| item.moved(0.0, y)));
            y += leading;
        }
        lines = lines.max((y - tall) / leading);
        items.push(Item::group(Role::Paragraph, column.shaper.next_key(), name));
        x += cell;
    }
    column.drawing(tall + 2.0 + lines * leading, items);
}

/// A pose as large as all are, or as its cell is wide.
fn draw(number: u32, named: &Named, cell: f32, words: &Words) -> (Impression, String) {
    let moment = Moment::of(&named.name, named.pose.clone());
    let strip = Strip { stature: 1.0, is_rtl: is_right_to_left(words.language()) };
    let plate = Plate::new(number, draw_moment(&moment, Proportions::of_age(YEARS), strip));
    let scale = STATURE.min((cell - 8.0) / plate.width());
    let set = Impression { plate: Arc::new(plate), at: (0.0, 0.0), scale };
    (set, moment_says(&moment, words))
}
