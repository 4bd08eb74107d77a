//! How the pieces of a figure look: on pages a class, on paper a fill and a pen.

use super::{At, Tone};

/// What a piece of a figure is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Look {
    /// A part of the body that is near.
    Near,
    /// One beyond the trunk, in the shade.
    Far,
    /// Covers a line where a limb joins the trunk.
    Patch,
    Bib,
    /// Thin lines on the body: mouth, ear, hem.
    Thin,
    /// Eyes.
    Ink,
    Thing,
    /// A towel, a rope, a stick, a line on the floor.
    Rope,
    /// The legs of a chair.
    Post,
    Arrow,
    Floor,
}

impl Look {
    /// The class on pages; `static/site/figure.css` has the same fills and pens.
    pub const fn class(self) -> &'static str {
        match self {
            Self::Near => "n",
            Self::Far => "f",
            Self::Patch => "p",
            Self::Bib => "b",
            Self::Thin => "l",
            Self::Ink => "e",
            Self::Thing => "t",
            Self::Rope => "r",
            Self::Post => "c",
            Self::Arrow => "w",
            Self::Floor => "g",
        }
    }

    /// What it is filled with.
    pub const fn fill(self) -> Option<Tone> {
        match self {
            Self::Near | Self::Patch => Some(Tone::Ground),
            Self::Far => Some(Tone::Soft),
            Self::Bib | Self::Thing => Some(Tone::Measured),
            Self::Ink => Some(Tone::Ink),
            Self::Thin | Self::Rope | Self::Post | Self::Arrow | Self::Floor => None,
        }
    }

    /// The pen: how thick, over stature, and its tone.
    pub const fn pen(self) -> Option<(f32, Tone)> {
        match self {
            Self::Near | Self::Thing => Some((0.0155, Tone::Ink)),
            Self::Far | Self::Thin => Some((0.0105, Tone::Ink)),
            Self::Rope => Some((0.026, Tone::Ink)),
            Self::Post => Some((0.0155, Tone::Soft)),
            Self::Arrow => Some((0.021, Tone::Ink)),
            Self::Floor => Some((0.01, Tone::Soft)),
            Self::Patch | Self::Bib | Self::Ink => None,
        }
    }
}

/// Where a smooth line starts: at its first control point, or, where it is closed, between the last and
/// the first.
pub fn start_of(around: &[At], is_open: bool) -> At {
    match around {
        [] => (0.0, 0.0),
        [first, ..] if is_open => *first,
        [first, .., last] => middle(*last, *first),
        [only] => *only,
    }
}

/// A smooth line as quadratic curves, each by its control point and its end.
pub fn curves_of(around: &[At], is_open: bool) -> Vec<(At, At)> {
    let count = around.len();
    if is_open {
        let inner = around.get(1..count.saturating_sub(1)).unwrap_or_default();
        if inner.is_empty() {
            return around.last().map(|last| (*last, *last)).into_iter().collect();
        }
        let ends = inner.iter().enumerate().map(|(index, at)| match inner.get(index + 1) {
            Some(next) => (*at, middle(*at, *next)),
            None => (*at, around[count - 1]),
        });
        return ends.collect();
    }
    let next = around.iter().cycle().skip(1);
    around.iter().zip(next).map(|(at, next)| (*at, middle(*at, *next))).collect()
}

const fn middle(a: At, b: At) -> At {
    (f32::midpoint(a.0, b.0), f32::midpoint(a.1, b.1))
}
