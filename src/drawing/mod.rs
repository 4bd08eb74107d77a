//! Drawings, made once and drawn twice: the pages turn them into SVG, paper into shapes and glyphs.
//!
//! A drawing is a list of marks on a field, measured in points from its top left corner. It knows no
//! colours: a [`Tone`] is a grey on paper and a colour of the house on pages. Every drawing comes with
//! its description in words, for who can't see it.

mod angle_figure;
mod class_spread;
mod effort_bar;
pub mod figure;
mod floor_plan;
mod look;
mod mark_strip;
mod marks;
mod pen;
mod qr;
mod scale_of_marks;
mod svg;
mod svg_fill;
mod svg_path;
mod time_line;

pub use angle_figure::{Curves, draw_angle_figure};
pub use class_spread::{SpreadRow, draw_class_spread};
pub use effort_bar::draw_effort_bar;
pub use floor_plan::draw_floor_plan;
pub use look::{Look, curves_of, start_of};
pub use mark_strip::{StripDay, StripSetting, draw_mark_strip};
pub use marks::{effort_steps, effort_width, part_mark};
pub use pen::{circle, hatch_lines};
pub use qr::draw_qr;
pub use svg::{escape, marks_to_svg, to_svg};
pub use time_line::{Bar, draw_low_time_line, draw_time_line, low_bars};

/// A point: right, then down.
pub type At = (f32, f32);

/// A drawing and what it shows.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Drawing {
    pub width: f32,
    pub height: f32,
    pub marks: Vec<Mark>,
    /// What it shows, in words.
    pub says: String,
}

/// Something drawn.
#[derive(Clone, Debug, PartialEq)]
pub enum Mark {
    Line {
        from: At,
        to: At,
        pen: Pen,
    },
    Shape {
        outline: Vec<Corner>,
        fill: Option<Tone>,
        pen: Option<Pen>,
    },
    /// A smooth line or outline: a quadratic B-spline with these control points, round and round or, where
    /// it is open, from the first to the last. An open one is filled all the same.
    Smooth {
        around: Vec<At>,
        look: Look,
        is_open: bool,
        /// Units of the drawing in a stature: how thick the pen is.
        scale: f32,
    },
    /// Slanting strokes inside a convex outline, so far apart along its sides: what is kept clear.
    Hatched {
        outline: Vec<At>,
        apart: f32,
        pen: Pen,
    },
    /// One line of words; `at` lies on its baseline.
    Words {
        at: At,
        text: String,
        size: f32,
        anchor: Anchor,
        is_bold: bool,
    },
}

/// How a line is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pen {
    pub thickness: f32,
    pub tone: Tone,
    /// Drawn and left out in turn.
    pub dash: Option<(f32, f32)>,
}

/// How dark something is. The names say what it is for, so that each medium finds its own colour.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Tone {
    /// The ground it is drawn on.
    Ground,
    /// A field to be told from the ground.
    Pale,
    /// Lines and fields of the second order.
    Soft,
    /// Lines and words.
    Ink,
    /// What is measured: the one colour that stands out.
    Measured,
}

/// What of the words lies at their point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Anchor {
    Start,
    Middle,
    End,
}

/// A corner of an outline; a bent one is a control point of a curve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Corner {
    pub at: At,
    pub is_bent: bool,
}

/// The room for a drawing, and the size of its words: both differ between a phone and a card.
#[derive(Clone, Copy, Debug)]
pub struct Room {
    pub width: f32,
    pub tallest: f32,
    pub words: f32,
    /// Pages and paper of a language that runs from right to left.
    pub is_rtl: bool,
}

impl Pen {
    pub const fn ink(thickness: f32) -> Self {
        Self { thickness, tone: Tone::Ink, dash: None }
    }

    pub const fn soft(thickness: f32) -> Self {
        Self { thickness, tone: Tone::Soft, dash: None }
    }

    #[must_use]
    pub const fn dashed(self, on: f32, off: f32) -> Self {
        Self { dash: Some((on, off)), ..self }
    }
}

impl Mark {
    pub const fn line(from: At, to: At, pen: Pen) -> Self {
        Self::Line { from, to, pen }
    }

    /// A rectangle from its top left corner.
    pub fn rectangle(at: At, size: At, fill: Option<Tone>, pen: Option<Pen>) -> Self {
        let (x, y) = at;
        let corners = [(x, y), (x + size.0, y), (x + size.0, y + size.1), (x, y + size.1)];
        Self::polygon(&corners, fill, pen)
    }

    /// An outline with straight sides.
    pub fn polygon(corners: &[At], fill: Option<Tone>, pen: Option<Pen>) -> Self {
        let outline = corners.iter().map(|at| Corner { at: *at, is_bent: false }).collect();
        Self::Shape { outline, fill, pen }
    }

    pub fn words(at: At, text: impl Into<String>, size: f32, anchor: Anchor) -> Self {
        Self::Words { at, text: text.into(), size, anchor, is_bold: false }
    }

    /// The same mark moved right and down.
    #[must_use]
    pub fn moved(mut self, right: f32, down: f32) -> Self {
        self.change_points(|(x, y)| (x + right, y + down));
        self
    }

    /// The same mark so many times as large; but for words, which figures have none of.
    #[must_use]
    pub fn scaled(mut self, by: f32) -> Self {
        self.change_points(|(x, y)| (x * by, y * by));
        if let Self::Smooth { scale, .. } = &mut self {
            *scale *= by;
        }
        self
    }

    fn change_points(&mut self, change: impl Fn(At) -> At) {
        match self {
            Self::Line { from, to, .. } => (*from, *to) = (change(*from), change(*to)),
            Self::Shape { outline, .. } => {
                for corner in outline {
                    corner.at = change(corner.at);
                }
            }
            Self::Smooth { around: points, .. } | Self::Hatched { outline: points, .. } => {
                for at in points {
                    *at = change(*at);
                }
            }
            Self::Words { at, .. } => *at = change(*at),
        }
    }
}

impl Drawing {
    /// The same drawing for a language that runs from right to left.
    #[must_use]
    pub fn mirrored(mut self) -> Self {
        let width = self.width;
        for mark in &mut self.marks {
            mark.change_points(|(x, y)| (width - x, y));
            if let Mark::Words { anchor, .. } = mark {
                *anchor = match anchor {
                    Anchor::Start => Anchor::End,
                    Anchor::Middle => Anchor::Middle,
                    Anchor::End => Anchor::Start,
                };
            }
        }
        self
    }
}
