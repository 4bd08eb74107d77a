//! Sheets about a class: what each home gets, for the teacher, and the survey that asks a home what it has.

use super::page::{Item, Page};
use super::scale::Type;
use super::shaper::Shaper;
use super::sheet_page::{SheetHead, column_width, inner_width, lay_columns, lay_head};
use super::sheets::{Letterhead, one};
use super::strip::{Column, Seat, placed};
use crate::pack::Pack;
use crate::prose::Run;
use crate::words::Words;

/// A sheet as sections of entries; pages show the same.
#[derive(Clone, Debug, Default)]
pub struct ClassSheet {
    /// What kind of sheet it is.
    pub kind: String,
    pub title: String,
    pub lead: String,
    pub sections: Vec<ClassSection>,
}

/// A heading and what stands below it.
#[derive(Clone, Debug, Default)]
pub struct ClassSection {
    pub heading: String,
    pub about: String,
    pub entries: Vec<ClassEntry>,
}

/// One entry.
#[derive(Clone, Debug)]
pub enum ClassEntry {
    /// A title in bold, with lines below it.
    Told { title: String, lines: Vec<String> },
    /// A box to tick.
    Tick(String),
    /// A short line to write a number on.
    Count(String),
    /// A line to write on.
    Fill(String),
}

/// The height of an entry to be ticked or written on.
const ROW: f32 = 23.0;

/// The short line of a number.
const COUNT: f32 = 34.0;

/// Lays out a sheet in two columns.
pub fn lay_class_sheet(
    shaper: &mut Shaper<'_>,
    pack: &Pack,
    words: &Words,
    sheet: &ClassSheet,
) -> Vec<Page> {
    let letterhead = Letterhead::of_pack(pack, words);
    let (mut items, mut height) = lay_head(shaper, &letterhead, &sheet.kind, &sheet.title);
    let mut lead = Column::new(shaper, inner_width(&letterhead));
    lead.words(&one(sheet.lead.clone()), Type::body(12.0), Seat::default());
    for strip in lead.strips {
        items.extend(strip.items.into_iter().map(|item| item.moved(0.0, height)));
        height += strip.height;
    }
    let mut column = Column::new(shaper, column_width(&letterhead, 2));
    for section in &sheet.sections {
        lay_section(&mut column, section);
    }
    let strips = column.strips;
    lay_columns(shaper, &letterhead, SheetHead { items, height: height + 8.0 }, strips, 2)
}

fn lay_section(column: &mut Column<'_, '_>, section: &ClassSection) {
    column.gap(14.0);
    column.label(&section.heading, Type::HEADING);
    if !section.about.is_empty() {
        column.words(&one(section.about.clone()), Type::SMALL, Seat::default());
        column.keep_with_next();
    }
    column.gap(4.0);
    for entry in &section.entries {
        lay_entry(column, entry);
    }
}

fn lay_entry(column: &mut Column<'_, '_>, entry: &ClassEntry) {
    match entry {
        ClassEntry::Told { title, lines } => {
            column.gap(6.0);
            if !title.is_empty() {
                column.words(&[Run::bold(title.clone())], Type::SMALL, Seat::default());
                if !lines.is_empty() {
                    column.keep_with_next();
                }
            }
            for line in lines {
                column.entry(&one(line.clone()), Type::SMALL);
            }
        }
        ClassEntry::Tick(text) => {
            let square = Item::rectangle((0.5, (ROW - 11.0) / 2.0), (11.0, 11.0), None, Some(1.0));
            lay_field(column, text, 20.0, vec![square]);
        }
        ClassEntry::Count(text) => {
            let y = ROW - 5.0;
            lay_field(column, text, COUNT + 8.0, vec![Item::line((0.0, y), (COUNT, y), 0.8)]);
        }
        ClassEntry::Fill(text) => {
            lay_field(column, text, 0.0, Vec::new());
            let width = column.width;
            column.drawing(ROW, vec![Item::line((0.0, ROW - 5.0), (width, ROW - 5.0), 0.8)]);
        }
    }
}

/// What is to be marked, and its words beside it.
fn lay_field(column: &mut Column<'_, '_>, text: &str, left: f32, mut items: Vec<Item>) {
    let kind = Type::SMALL;
    let lines = column.shaper.shape(&one(text), kind, column.width - left);
    #[allow(clippy::cast_precision_loss, reason = "a label is a few lines at most")]
    let tall = ROW.max(kind.leading * lines.len() as f32 + 8.0);
    let mut y = (ROW - kind.leading) / 2.0;
    for line in lines {
        items.extend(placed(line, left).map(|item| item.moved(0.0, y)));
        y += kind.leading;
    }
    column.drawing(tall, items);
}
