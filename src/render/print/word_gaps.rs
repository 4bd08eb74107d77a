//! Words of one element that stand apart, such as a label and what it names, are parted by a space that is read and not
//! seen: who reads a page by its text would else join them (ISO 32000-1, 14.8.2.5).

use rustc_hash::FxHashMap;

use super::breaks::SOFT_HYPHEN;
use super::faces::{Face, Faces};
use super::page::{GlyphRun, GlyphText, Grey, Item, Key, Page, PlacedGlyph, Role};

/// Words that stand so far apart, in sizes, are two.
const APART: f32 = 0.6;

/// Parts words on pages that are laid out, as they lie on paper.
pub fn part_words(pages: &mut [Page], faces: &Faces) {
    for page in pages {
        let mut gaps = Gaps { faces, ends: FxHashMap::default() };
        gaps.part(&mut page.items, None);
    }
}

/// The elements of a page as far as they have been read.
struct Gaps<'f> {
    faces: &'f Faces,
    ends: FxHashMap<Key, End>,
}

/// The end of what has been read of an element.
struct End {
    /// Where the run stands: left and right end, baseline.
    left: f32,
    right: f32,
    baseline: f32,
    says: Option<char>,
    /// How it is set.
    face: Face,
    size: f32,
    grey: Grey,
    runs_left: bool,
    source: usize,
}

impl Gaps<'_> {
    fn part(&mut self, items: &mut Vec<Item>, within: Option<Key>) {
        let mut index = 0;
        while let Some(item) = items.get_mut(index) {
            match item {
                Item::Group { tag, items } => match tag.role {
                    // Neither is read by its words.
                    Role::Decoration | Role::Figure(_) => {}
                    // What is a piece of a line is read with it.
                    Role::Link(_) | Role::Span => self.part(items, within.or(Some(tag.key))),
                    _ => self.part(items, Some(tag.key)),
                },
                Item::Glyphs(run) => {
                    let end = within.and_then(|key| self.ends.insert(key, self.end_of(run)));
                    if let Some(end) = end.filter(|end| end.stands_apart_from(run)) {
                        items.insert(index, Item::Glyphs(end.space(self.faces)));
                        index += 1;
                    }
                }
                _ => {}
            }
            index += 1;
        }
    }

    fn end_of(&self, run: &GlyphRun) -> End {
        let GlyphRun { face, size, grey, runs_left, source, at: (left, baseline), .. } = *run;
        let width = |glyph: u16| self.faces.get(face).width(glyph) * size / 1000.0;
        let right = run.rightmost().map_or(left, |glyph| left + glyph.x + width(glyph.id));
        let says = run.glyphs.iter().rev().find_map(|glyph| glyph.text.last());
        End { left, right, baseline, says, face, size, grey, runs_left, source }
    }
}

impl End {
    /// Whether a run that is read next is another word, and nothing says so. A word that is broken, or an address, goes on
    /// in the next line.
    fn stands_apart_from(&self, run: &GlyphRun) -> bool {
        let is_lower = (run.at.1 - self.baseline).abs() > self.size / 2.0;
        let gap = (run.at.0 - self.right).max(self.left - run.at.0 - run.last_glyph_x());
        let goes_on =
            |c: char| c.is_whitespace() || c == SOFT_HYPHEN || is_lower && "-/".contains(c);
        let is_parted =
            run.glyphs.iter().find_map(|glyph| glyph.text.first()).is_some_and(char::is_whitespace);
        (is_lower || gap > self.size * APART)
            && !is_parted
            && self.says.is_some_and(|c| !goes_on(c))
    }

    /// A space behind the run, set as it is.
    fn space(&self, faces: &Faces) -> GlyphRun {
        let Self { baseline, face, size, grey, runs_left, source, .. } = *self;
        let loaded = faces.get(face);
        let width = loaded.width(loaded.space) * size / 1000.0;
        let x = if runs_left { self.left - width } else { self.right };
        let text = GlyphText::Letter(' ');
        let glyphs = vec![PlacedGlyph { id: loaded.space, x: 0.0, rise: 0.0, text }];
        GlyphRun { at: (x, baseline), face, size, grey, glyphs, runs_left, source }
    }
}
