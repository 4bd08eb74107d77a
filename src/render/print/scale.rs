//! The type scale and the measures of paper, said once for every sheet.

use crate::read::print_choices::Spacing;
use crate::read::words::Paper;

use super::page::MM;

/// Nothing on paper is set smaller, in points.
pub const SMALLEST: f32 = 11.0;

/// Home printers leave 4 to 6.7 mm blank (makers’ manuals); 10 mm clears them all. A little more
/// keeps the half of a thick line, or a letter that hangs over, out of the outer 10 mm too.
pub const MARGIN: f32 = 10.8 * MM;

/// A size of type and the distance of its lines, in points.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Type {
    pub size: f32,
    pub leading: f32,
    pub is_bold: bool,
}

impl Type {
    const fn new(size: f32, leading: f32, is_bold: bool) -> Self {
        Self { size, leading, is_bold }
    }

    /// The same kind of words at another size, its lines as far apart in proportion.
    pub const fn sized(self, size: f32) -> Self {
        Self::new(size, self.leading / self.size * size, self.is_bold)
    }

    /// Running text at a size.
    pub const fn body(size: f32) -> Self {
        Self::new(size, size * 1.28, false)
    }

    /// The small print: as small as anything may be.
    pub const SMALL: Self = Self::new(SMALLEST, 14.0, false);
    /// What kind of thing follows.
    pub const LABEL: Self = Self::new(SMALLEST, 14.5, true);
    /// The title of a card.
    pub const CARD_TITLE: Self = Self::new(19.0, 22.5, true);
    /// The title of a sheet.
    pub const SHEET_TITLE: Self = Self::new(28.0, 32.0, true);
    /// A heading inside a sheet.
    pub const HEADING: Self = Self::new(14.0, 18.5, true);
    /// A figure to be seen at once.
    pub const FIGURE: Self = Self::new(15.0, 18.0, true);

    /// A key point, to be read from the floor while moving.
    pub const fn key_point(size: f32) -> Self {
        Self::new(size, size * 1.2, true)
    }
}

/// How far apart letters, words and lines stand, in parts of the size of the type.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Air {
    pub letters: f32,
    pub words: f32,
    /// The least distance of the lines of running text.
    pub lines: f32,
}

impl Air {
    /// Wide is what a text must bear by WCAG 2.1, criterion 1.4.12: lines 1.5, letters 0.12 and
    /// words 0.16 of the size; many dyslexic readers ask for it.
    pub const fn of(spacing: Spacing) -> Self {
        match spacing {
            Spacing::Usual => Self { letters: 0.0, words: 0.0, lines: 0.0 },
            Spacing::Wide => Self { letters: 0.12, words: 0.16, lines: 1.5 },
        }
    }

    /// A kind of words with its lines so far apart.
    pub fn let_in(self, kind: Type) -> Type {
        Type { leading: kind.leading.max(kind.size * self.lines), ..kind }
    }
}

/// Width and height of a paper in points: ISO 216 A4 (210 × 297 mm), US Letter (8.5 × 11 in).
pub fn paper_size(paper: Paper) -> (f32, f32) {
    match paper {
        Paper::A4 => (210.0 * MM, 297.0 * MM),
        Paper::Letter => (8.5 * 72.0, 11.0 * 72.0),
    }
}
