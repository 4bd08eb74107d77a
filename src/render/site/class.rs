//! Pages about a class: who gets what, for the teacher, and the survey. They stand apart from the pages of
//! every home and lead nowhere but to them.

use serde::Serialize;

use super::Site;
use super::assets::gather_assets;
use crate::prose::plain_line;
use crate::render::print::{ClassEntry, ClassSection, ClassSheet};
use crate::render::{Bundle, Publication, RenderFault};

/// Who gets what at a glance: a row a home, a cell a session.
#[derive(Clone, Debug, Default)]
pub struct ClassTable {
    pub heads: Vec<String>,
    pub rows: Vec<ClassRow>,
}

/// One home.
#[derive(Clone, Debug)]
pub struct ClassRow {
    pub code: String,
    /// Its front page, if it gets any session.
    pub href: Option<String>,
    pub cells: Vec<String>,
}

#[derive(Serialize)]
struct ClassPage<'s> {
    language: String,
    direction: &'static str,
    school: String,
    /// Which page this is.
    here: &'static str,
    kind: &'s str,
    title: &'s str,
    lead: &'s str,
    sheet: &'static str,
    heads: &'s [String],
    rows: Vec<RowView<'s>>,
    sections: Vec<SectionView<'s>>,
}

#[derive(Serialize)]
struct RowView<'s> {
    code: &'s str,
    href: Option<&'s str>,
    cells: &'s [String],
}

#[derive(Serialize)]
struct SectionView<'s> {
    heading: &'s str,
    about: &'s str,
    entries: Vec<EntryView<'s>>,
}

#[derive(Serialize)]
struct EntryView<'s> {
    /// `told`, `tick`, `count` or `fill`.
    kind: &'static str,
    text: &'s str,
    lines: &'s [String],
}

/// Renders one page: `here` is its name, `here.pdf` the sheet beside it.
///
/// # Errors
/// Where a template of the pack's own look can't be used.
pub fn render_class_page(
    publication: &Publication<'_>,
    (here, sheet): (&'static str, &'static str),
    content: &ClassSheet,
    table: &ClassTable,
) -> Result<Vec<u8>, RenderFault> {
    let site = Site::of(publication)?;
    let pack = publication.pack;
    let page = ClassPage {
        language: pack.language.to_string(),
        direction: super::frame::direction_of(&pack.language),
        school: plain_line(pack.school.as_deref().unwrap_or(&pack.title)),
        here,
        kind: &content.kind,
        title: &content.title,
        lead: &content.lead,
        sheet,
        heads: &table.heads,
        rows: table.rows.iter().map(show_row).collect(),
        sections: content.sections.iter().map(show_section).collect(),
    };
    site.templates.fill("class.html", &page)
}

/// What the pages load, for a folder of its own.
pub fn class_assets(publication: &Publication<'_>) -> Bundle {
    let mut assets = gather_assets(publication);
    assets.retain(|path, _| path.starts_with("static/"));
    assets
}

fn show_row(row: &ClassRow) -> RowView<'_> {
    RowView { code: &row.code, href: row.href.as_deref(), cells: &row.cells }
}

fn show_section(section: &ClassSection) -> SectionView<'_> {
    SectionView {
        heading: &section.heading,
        about: &section.about,
        entries: section.entries.iter().map(show_entry).collect(),
    }
}

fn show_entry(entry: &ClassEntry) -> EntryView<'_> {
    let (kind, text, lines): (_, &str, &[String]) = match entry {
        ClassEntry::Told { title, lines } => ("told", title, lines),
        ClassEntry::Tick(text) => ("tick", text, &[]),
        ClassEntry::Count(text) => ("count", text, &[]),
        ClassEntry::Fill(text) => ("fill", text, &[]),
    };
    EntryView { kind, text, lines }
}
