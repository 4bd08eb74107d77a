//! A laid-out page: placed glyphs, lines and shapes, in points from the top left corner. It knows
//! nothing of PDF; the writer is the one module behind it.

use std::borrow::Cow;
use std::sync::Arc;

use super::faces::Face;
use super::plate::Impression;
use super::read_out::words_of;
use super::structure::room_of;

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
    /// The outline is filled, but not drawn from its last corner back to the first.
    pub is_open: bool,
}

/// Something drawn.
#[derive(Clone, Debug)]
pub enum Item {
    Glyphs(GlyphRun),
    Line {
        from: At,
        to: At,
        thickness: f32,
        dash: Option<(f32, f32)>,
        grey: Grey,
    },
    Shape {
        outline: Vec<Corner>,
        fill: Option<Grey>,
        stroke: Option<Stroke>,
    },
    Picture {
        path: String,
        at: At,
        width: f32,
        height: f32,
    },
    /// A drawing that is made once for all places it stands in.
    Plate(Impression),
    /// Items that are one thing to who reads without seeing. What stands in no group is decoration:
    /// lines, boxes, folios.
    Group {
        tag: Tag,
        items: Vec<Item>,
    },
}

/// What a group is. Groups of one key are one thing, though they lie on several pages: a paragraph
/// that goes on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tag {
    pub role: Role,
    pub key: Key,
    /// As a BCP 47 tag, where it is not that of what it stands in.
    pub language: Option<Arc<str>>,
}

/// Tells the things of one document apart; [`Shaper::next_key`](super::shaper::Shaper::next_key)
/// gives them out.
pub type Key = u32;

/// The roles of things in a document, as PDF/UA has them (ISO 32000-1, 14.8.4).
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Role {
    /// A page of a folded booklet.
    Section,
    /// A heading of a level from 1.
    Heading(u8),
    Paragraph,
    List {
        is_numbered: bool,
    },
    Entry,
    /// What stands before the words of an entry.
    Marker,
    EntryText,
    Table,
    Row,
    ColumnHead,
    RowHead,
    Cell,
    /// A drawing or picture, with its description.
    Figure(String),
    /// Words that lead to an address.
    Link(String),
    /// Words in another language among others.
    Span,
    /// No thing at all: folios, heads that were read out before.
    Decoration,
}

/// Shaped words in one face and size on one baseline.
#[derive(Clone, Debug)]
pub struct GlyphRun {
    pub face: Face,
    pub size: f32,
    pub at: At,
    pub grey: Grey,
    /// In the order that they are read.
    pub glyphs: Vec<PlacedGlyph>,
    /// They are read from right to left.
    pub runs_left: bool,
    /// Which of the shaped runs of words it belongs to.
    pub source: usize,
}

impl GlyphRun {
    /// The glyphs as they stand from left to right, whichever way they are read: programs that read a page by what
    /// stands on it expect strings so.
    pub fn as_they_stand(&self) -> Cow<'_, [PlacedGlyph]> {
        if self.runs_left {
            Cow::Owned(self.glyphs.iter().rev().cloned().collect())
        } else {
            Cow::Borrowed(&self.glyphs)
        }
    }

    /// From the left end to the last glyph.
    pub fn last_glyph_x(&self) -> f32 {
        self.rightmost().map_or(0.0, |glyph| glyph.x)
    }

    /// The glyph that stands furthest right.
    pub fn rightmost(&self) -> Option<&PlacedGlyph> {
        if self.runs_left { self.glyphs.first() } else { self.glyphs.last() }
    }
}

/// A glyph, its distance from the left end of the run, and the text it stands for.
#[derive(Clone, Debug)]
pub struct PlacedGlyph {
    pub id: u16,
    pub x: f32,
    /// Raised above the baseline by so much.
    pub rise: f32,
    pub text: GlyphText,
}

/// The text that a glyph stands for. Nearly always it is one letter: those need no room of their own,
/// and a page has thousands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum GlyphText {
    /// A further glyph of a letter that another stands for.
    Nothing,
    Letter(char),
    /// A ligature, or a letter with its marks.
    Letters(Box<str>),
}

impl GlyphText {
    pub fn of(text: &str) -> Self {
        let mut letters = text.chars();
        match (letters.next(), letters.next()) {
            (None, _) => Self::Nothing,
            (Some(letter), None) => Self::Letter(letter),
            _ => Self::Letters(text.into()),
        }
    }

    pub fn first(&self) -> Option<char> {
        match self {
            Self::Nothing => None,
            Self::Letter(letter) => Some(*letter),
            Self::Letters(letters) => letters.chars().next(),
        }
    }

    pub fn last(&self) -> Option<char> {
        match self {
            Self::Letters(letters) => letters.chars().next_back(),
            _ => self.first(),
        }
    }

    /// Adds the text to a longer one.
    pub fn write_to(&self, words: &mut String) {
        match self {
            Self::Nothing => {}
            Self::Letter(letter) => words.push(*letter),
            Self::Letters(letters) => words.push_str(letters),
        }
    }
}

impl std::fmt::Display for GlyphText {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::Nothing => Ok(()),
            Self::Letter(letter) => write!(f, "{letter}"),
            Self::Letters(letters) => f.write_str(letters),
        }
    }
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

/// More things than any one set of cards holds.
const THINGS_OF_A_COPY: Key = 1_000_000;

impl Page {
    /// The page of a further copy, whose things are things of their own.
    #[must_use]
    pub fn copied(mut self, copy: Key) -> Self {
        for item in &mut self.items {
            item.rekey(copy.saturating_mul(THINGS_OF_A_COPY));
        }
        self
    }
}

fn strip_groups(items: Vec<Item>, bare: &mut Vec<Item>) {
    for item in items {
        match item {
            Item::Group { items, .. } => strip_groups(items, bare),
            drawn => bare.push(drawn),
        }
    }
}

impl Item {
    fn rekey(&mut self, more: Key) {
        if let Self::Group { tag, items } = self {
            tag.key = tag.key.saturating_add(more);
            for item in items {
                item.rekey(more);
            }
        }
    }

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
            Self::Plate(set) => set.at.0 = wide - set.at.0 - set.width(),
            Self::Group { tag, items } => {
                // A figure without words is read as it is, such as a code to scan: it is moved over whole.
                let is_wordless = words_of(items).is_empty() && matches!(tag.role, Role::Figure(_));
                let [left, _, right, _] = room_of(items, &|_| 0.0);
                let over = wide - left - right;
                let turn = |item: Self| {
                    if is_wordless { item.moved(over, 0.0) } else { item.mirrored(wide) }
                };
                *items = std::mem::take(items).into_iter().map(turn).collect();
            }
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
        let stroke =
            stroke.map(|thickness| Stroke { thickness, grey: BLACK, dash: None, is_open: false });
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
            Self::Picture { .. } | Self::Plate(_) => {}
            Self::Group { items, .. } => {
                let shaded = std::mem::take(items).into_iter().map(|item| item.shaded(shade));
                *items = shaded.collect();
            }
        }
        self
    }

    /// Items that are not read out, even if they are words.
    pub fn decoration(items: Vec<Self>) -> Self {
        let mut bare = Vec::new();
        strip_groups(items, &mut bare);
        Self::group(Role::Decoration, 0, bare)
    }

    /// The same group in a language of its own.
    #[must_use]
    pub fn in_language(mut self, other: Option<Arc<str>>) -> Self {
        if let Self::Group { tag, .. } = &mut self {
            tag.language = other;
        }
        self
    }

    /// Items as one thing.
    pub fn group(role: Role, key: Key, items: Vec<Self>) -> Self {
        Self::Group { tag: Tag { role, key, language: None }, items }
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
            Self::Plate(set) => shift(&mut set.at),
            Self::Group { items, .. } => {
                let moved = std::mem::take(items).into_iter().map(|item| item.moved(right, down));
                *items = moved.collect();
            }
        }
        self
    }
}
