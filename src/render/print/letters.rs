//! Letters that stand side by side as they are: the faces that the program ships have one glyph for each, with no kerning
//! and nothing that changes beside another, but for ligatures that begin with f (tables GSUB and GPOS of Andika). Most words
//! are of such letters alone, and need no shaping engine, which takes ten times as long. A test holds them against it.

use skrifa::instance::{LocationRef, Size};
use skrifa::metrics::GlyphMetrics;
use skrifa::raw::TableProvider;
use skrifa::raw::tables::layout::ClassDef;
use skrifa::{FontRef, GlyphId16, MetadataProvider, charmap::Charmap};

use super::breaks::SOFT_HYPHEN;

/// The first and last letter of each stretch: ASCII; Latin-1 with Latin Extended-A; Cyrillic; dashes, quotation marks
/// and the like.
pub const ALL: [(char, char); 4] =
    [(' ', '~'), ('\u{a0}', '\u{17f}'), ('\u{400}', '\u{45f}'), ('\u{2010}', '\u{2026}')];

/// The class of glyphs that are marks (OpenType, GDEF).
const MARK: u16 = 3;

/// The letters of a face, found when they are first asked for.
pub struct Letters<'f> {
    charmap: Charmap<'f>,
    metrics: GlyphMetrics<'f>,
    classes: Option<ClassDef<'f>>,
    /// In the order of the stretches.
    known: Vec<Option<Letter>>,
}

/// A letter’s glyph and advance, in units of the face. A soft hyphen has none.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Letter {
    pub glyph: Option<u16>,
    pub advance: f32,
}

impl<'f> Letters<'f> {
    /// The letters of a face that the program ships.
    pub fn of(font: &FontRef<'f>) -> Self {
        let count = ALL.map(|(first, last)| (first..=last).count()).iter().sum();
        Self {
            charmap: font.charmap(),
            metrics: font.glyph_metrics(Size::unscaled(), LocationRef::default()),
            classes: font.gdef().ok().and_then(|table| table.glyph_class_def()?.ok()),
            known: vec![None; count],
        }
    }

    /// Each letter of a word; none where one is not known, or begins what may be a ligature.
    pub fn of_word(&mut self, word: &str, mut each: impl FnMut(char, Letter)) -> Option<()> {
        let mut was_f = false;
        for letter in word.chars() {
            if was_f && letter != ' ' {
                return None;
            }
            was_f = letter == 'f';
            each(letter, self.get(letter)?);
        }
        Some(())
    }

    fn get(&mut self, letter: char) -> Option<Letter> {
        let place = place_of(letter)?;
        if let Some(known) = self.known[place] {
            return Some(known);
        }
        let found = self.find(letter)?;
        self.known[place] = Some(found);
        Some(found)
    }

    fn find(&self, letter: char) -> Option<Letter> {
        if letter == SOFT_HYPHEN {
            return Some(Letter { glyph: None, advance: 0.0 });
        }
        let glyph = self.charmap.map(letter)?;
        let advance = self.metrics.advance_width(glyph)?;
        let glyph = u16::try_from(glyph.to_u32()).ok()?;
        // What the face has for a mark, such as a diaeresis by itself, is set over its neighbour.
        let class = self.classes.as_ref().map_or(0, |classes| classes.get(GlyphId16::new(glyph)));
        (class != MARK).then_some(Letter { glyph: Some(glyph), advance })
    }
}

/// Where a letter stands among those of all stretches.
fn place_of(letter: char) -> Option<usize> {
    let mut before = 0;
    for (first, last) in ALL {
        if letter <= last {
            let beyond = u32::from(letter).checked_sub(u32::from(first))?;
            return Some(before + usize::try_from(beyond).ok()?);
        }
        before += usize::try_from(u32::from(last) - u32::from(first)).ok()? + 1;
    }
    None
}
