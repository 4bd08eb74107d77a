//! The sheet for the whole pack: the few things to gather once, with boxes to tick.

use super::page::{Item, Page};
use super::scale::Type;
use super::shaper::Shaper;
use super::sheet_page::{SheetHead, inner_width, lay_columns, lay_head};
use super::sheets::{Letterhead, one};
use super::strip::{Column, Seat, placed};
use crate::pack::Pack;
use crate::plan::GatherSet;
use crate::render::equipment_phrases::counted_things;
use crate::words::Words;

/// The height of an entry: large enough to tick with a child’s hand.
const ROW: f32 = 30.0;

/// Lays out what to gather once for what the title names.
pub fn lay_gather(
    shaper: &mut Shaper<'_>,
    pack: &Pack,
    title: &str,
    set: &GatherSet,
    words: &Words,
) -> Vec<Page> {
    let sheet = Letterhead::of_pack(pack, words);
    let (items, height) = lay_head(shaper, &sheet, &words.say("sheet-gather"), title);
    let mut column = Column::new(shaper, inner_width(&sheet));
    column.words(&one(words.say("things-once-how")), Type::body(13.0), Seat::default());
    if !set.is_proven {
        column.words(&one(words.say("things-once-unproven")), Type::body(13.0), Seat::default());
    }
    column.gap(10.0);
    for things in &set.things {
        entry(&mut column, &counted_things(things));
    }
    let strips = column.strips;
    lay_columns(shaper, &sheet, SheetHead { items, height: height + 6.0 }, strips, 1)
}

/// A box to tick, what to gather and a line below.
fn entry(column: &mut Column<'_, '_>, text: &str) {
    let kind = Type::key_point(15.0);
    let width = column.width;
    let lines = column.shaper.shape(&one(text), kind, width - 34.0);
    #[allow(clippy::cast_precision_loss, reason = "a name is a few lines at most")]
    let tall = ROW.max(kind.leading * lines.len() as f32 + 10.0);
    let mut items = vec![
        Item::rectangle((0.5, (ROW - 15.0) / 2.0), (15.0, 15.0), None, Some(1.2)),
        Item::line((0.0, tall), (width, tall), 0.6),
    ];
    let mut y = (ROW - kind.leading) / 2.0;
    for line in lines {
        items.extend(placed(line, 28.0).map(|item| item.moved(0.0, y)));
        y += kind.leading;
    }
    column.line_of_words(tall, items);
}
