//! A laid-out page: placed glyphs, lines and shapes, in points from the top left corner. It knows
//! nothing of PDF; the writer is the one module behind it.

use super::faces::Face;

/// Points in a millimetre.
pub const MM: f32 = 72.0 / 25.4;

/// One page of paper.
#[derive(Clone, Debug)]
pub struct Page {
    pub width: f32,
    pub height: f32,
    pub items: Vec<Item>,
}

pub use crate::drawing::{At, Corner};

/// Black is 0, white is 1.
pub type Grey = f32;

pub const BLACK: Grey = 0.0;
pub const WHITE: Grey = 1.0;

/// How an outline is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stroke {
    pub thickness: f32,
    pub grey: Grey,
    /// Drawn and left out in turn.
    pub dash: Option<(f32, f32)>,
}

/// Something drawn.
#[derive(Clone, Debug)]
pub enum Item {
    Glyphs(GlyphRun),
    Line { from: At, to: At, thickness: f32, dash: Option<(f32, f32)>, grey: Grey },
    Shape { outline: Vec<Corner>, fill: Option<Grey>, stroke: Option<Stroke> },
    Picture { path: String, at: At, width: f32, height: f32 },
}

/// Shaped words in one face and size on one baseline.
#[derive(Clone, Debug)]
pub struct GlyphRun {
    pub face: Face,
    pub size: f32,
    pub at: At,
    pub grey: Grey,
    pub glyphs: Vec<PlacedGlyph>,
}

/// A glyph, its distance from the start of the run, and the text it stands for.
#[derive(Clone, Debug)]
pub struct PlacedGlyph {
    pub id: u16,
    pub x: f32,
    /// Raised above the baseline by so much.
    pub rise: f32,
    pub text: Box<str>,
}

impl Page {
    /// The page turned round for a script that runs from right to left: what began at the left begins at
    /// the right, columns and cards follow from right to left. Lines of words are not turned inside: the
    /// shaper places their runs from the line’s right end for it.
    #[must_use]
    pub fn mirrored(mut self) -> Self {
        let wide = self.width;
        self.items = self.items.into_iter().map(|item| item.mirrored(wide)).collect();
        self
    }
}

impl Item {
    /// The same item as far from the right edge as it was from the left.
    #[must_use]
    fn mirrored(mut self, wide: f32) -> Self {
        let turn = |at: &mut At| at.0 = wide - at.0;
        match &mut self {
            Self::Glyphs(run) => turn(&mut run.at),
            Self::Line { from, to, .. } => {
                turn(from);
                turn(to);
            }
            Self::Shape { outline, .. } => {
                for corner in outline {
                    turn(&mut corner.at);
                }
            }
            Self::Picture { at, width, .. } => at.0 = wide - at.0 - *width,
        }
        self
    }

    /// A solid line.
    pub fn line(from: At, to: At, thickness: f32) -> Self {
        Self::Line { from, to, thickness, dash: None, grey: BLACK }
    }

    /// A rectangle.
    pub fn rectangle(at: At, size: At, fill: Option<Grey>, stroke: Option<f32>) -> Self {
        let (x, y) = at;
        let corners = [(x, y), (x + size.0, y), (x + size.0, y + size.1), (x, y + size.1)];
        let outline = corners.map(|at| Corner { at, is_bent: false }).to_vec();
        let stroke = stroke.map(|thickness| Stroke { thickness, grey: BLACK, dash: None });
        Self::Shape { outline, fill, stroke }
    }

    /// The same item in another shade, as white words on a black tab.
    #[must_use]
    pub fn shaded(mut self, shade: Grey) -> Self {
        match &mut self {
            Self::Glyphs(run) => run.grey = shade,
            Self::Line { grey, .. } => *grey = shade,
            Self::Shape { fill, stroke, .. } => {
                *fill = fill.map(|_| shade);
                *stroke = stroke.map(|stroke| Stroke { grey: shade, ..stroke });
            }
            Self::Picture { .. } => {}
        }
        self
    }

    /// The same item moved right and down.
    #[must_use]
    pub fn moved(mut self, right: f32, down: f32) -> Self {
        let shift = |at: &mut At| {
            at.0 += right;
            at.1 += down;
        };
        match &mut self {
            Self::Glyphs(run) => shift(&mut run.at),
            Self::Line { from, to, .. } => {
                shift(from);
                shift(to);
            }
            Self::Shape { outline, .. } => {
                for corner in outline {
                    shift(&mut corner.at);
                }
            }
            Self::Picture { at, .. } => shift(at),
        }
        self
    }
}
