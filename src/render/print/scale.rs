//! The type scale and the measures of paper, said once for every sheet.

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

/// Width and height of a paper in points: ISO 216 A4 (210 × 297 mm), US Letter (8.5 × 11 in).
pub fn paper_size(paper: Paper) -> (f32, f32) {
    match paper {
        Paper::A4 => (210.0 * MM, 297.0 * MM),
        Paper::Letter => (8.5 * 72.0, 11.0 * 72.0),
    }
}
