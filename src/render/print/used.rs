//! Laid-out pages → what they show: the glyphs of each face, with the text they stand for, pictures and plates.

use std::collections::{BTreeMap, BTreeSet};

use super::faces::Face;
use super::page::{GlyphRun, GlyphText, Item, Page};
use super::plate::{Edge, Impression};

/// What pages show that their documents share.
#[derive(Default)]
pub struct Used<'p> {
    pub glyphs: BTreeMap<Face, Glyphs>,
    pub paths: BTreeSet<&'p String>,
    pub plates: BTreeMap<Edge, &'p Impression>,
}

impl<'p> Used<'p> {
    pub fn by(pages: impl Iterator<Item = &'p Page>) -> Self {
        let mut used = Self::default();
        for page in pages {
            used.gather(&page.items);
        }
        used
    }

    fn gather(&mut self, items: &'p [Item]) {
        for item in items {
            match item {
                Item::Glyphs(run) => gather_glyphs(run, self.glyphs.entry(run.face).or_default()),
                Item::Picture { path, .. } => _ = self.paths.insert(path),
                Item::Plate(set) => _ = self.plates.entry(set.edge()).or_insert(set),
                Item::Group { items, .. } => self.gather(items),
                Item::Line { .. } | Item::Shape { .. } => {}
            }
        }
    }
}

/// A reader of the file knows one text for each glyph: of two letters drawn alike, such as a space and
/// one that does not break, it is the plainer, which comes first in Unicode.
fn gather_glyphs(run: &GlyphRun, glyphs: &mut Glyphs) {
    for glyph in &run.glyphs {
        let id = usize::from(glyph.id);
        if glyphs.0.len() <= id {
            glyphs.0.resize(id + 1, None);
        }
        let known = glyphs.0[id].get_or_insert_with(|| glyph.text.clone());
        match (&*known, &glyph.text) {
            (GlyphText::Letter(before), GlyphText::Letter(letter)) if letter < before => {
                *known = glyph.text.clone();
            }
            (GlyphText::Nothing, text) => *known = text.clone(),
            _ => {}
        }
    }
}

/// The glyphs of a face, by their numbers: those that are used with the text they stand for.
#[derive(Default)]
pub struct Glyphs(pub Vec<Option<GlyphText>>);

impl Glyphs {
    pub fn used(&self) -> impl Iterator<Item = (u16, &GlyphText)> {
        (0..).zip(&self.0).filter_map(|(id, text)| Some((id, text.as_ref()?)))
    }
}
