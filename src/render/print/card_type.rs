//! The type of cards: for each kind of card the sizes that are tried, largest first.

use super::scale::Type;

/// The sizes of the words on a card, in points, and how much of its width a drawing or picture may
/// be tall.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CardType {
    pub body: f32,
    pub key_point: f32,
    /// Labels, and the smallest words.
    pub small: f32,
    pub title: f32,
    pub drawing: f32,
    pub picture: f32,
    /// So many times taller are drawings where their card has room left.
    pub growth: f32,
    /// Lines and gaps are closer: only to save a card.
    pub is_close: bool,
}

impl CardType {
    const fn new(body: f32, key_point: f32, frame: (f32, f32), drawn: (f32, f32)) -> Self {
        let ((small, title), (drawing, picture)) = (frame, drawn);
        Self { body, key_point, small, title, drawing, picture, growth: 1.0, is_close: false }
    }

    const fn close(self) -> Self {
        Self { is_close: true, ..self }
    }

    pub const fn words(self) -> Type {
        let words = Type::body(self.body);
        if self.is_close { Type { leading: self.body * 1.19, ..words } } else { words }
    }

    pub const fn small(self) -> Type {
        Type::SMALL.sized(self.small)
    }

    pub const fn label(self) -> Type {
        Type::LABEL.sized(self.small)
    }

    pub const fn title(self) -> Type {
        Type::CARD_TITLE.sized(self.title)
    }

    /// The time, larger than the labels by as much on every card.
    pub const fn figure(self) -> Type {
        Type::FIGURE.sized(Type::FIGURE.size * self.scale())
    }

    /// A gap that is so wide on a usual card.
    pub fn gap(self, points: f32) -> f32 {
        points * if self.is_close { 0.55 } else { (self.body / 13.0).max(1.0) }
    }

    /// How much larger than on a usual card its fixed measures are.
    pub const fn scale(self) -> f32 {
        self.small / Type::SMALL.size
    }
}

/// Four to a sheet.
pub const QUARTER: &[CardType] = &[
    CardType::new(13.0, 20.0, (11.0, 19.0), (0.34, 0.6)),
    CardType::new(12.5, 19.0, (11.0, 19.0), (0.31, 0.6)),
    CardType::new(12.0, 18.0, (11.0, 19.0), (0.28, 0.6)),
    CardType::new(11.5, 17.0, (11.0, 19.0), (0.25, 0.6)),
    CardType::new(11.0, 16.0, (11.0, 19.0), (0.22, 0.6)),
    CardType::new(11.0, 16.0, (11.0, 19.0), (0.22, 0.6)).close(),
];

/// One to a sheet: to hang up.
pub const WHOLE: &[CardType] = &[
    CardType::new(25.0, 46.0, (16.0, 40.0), (0.7, 0.6)),
    CardType::new(23.0, 42.0, (15.0, 38.0), (0.7, 0.6)),
    CardType::new(21.0, 38.0, (15.0, 36.0), (0.7, 0.6)),
    CardType::new(19.0, 34.0, (14.0, 34.0), (0.62, 0.6)),
    CardType::new(17.0, 30.0, (14.0, 32.0), (0.54, 0.6)),
    CardType::new(15.0, 26.0, (13.0, 30.0), (0.46, 0.6)),
    CardType::new(13.5, 22.0, (12.0, 28.0), (0.38, 0.5)),
    CardType::new(12.0, 18.0, (11.0, 26.0), (0.34, 0.4)),
];

/// Two to a sheet: wide, with two columns.
pub const HALF: &[CardType] = &[
    CardType::new(17.0, 26.0, (13.0, 27.0), (0.45, 0.6)),
    CardType::new(16.0, 25.0, (13.0, 26.0), (0.43, 0.6)),
    CardType::new(15.0, 23.0, (12.0, 25.0), (0.4, 0.6)),
    CardType::new(14.0, 21.0, (12.0, 24.0), (0.36, 0.6)),
    CardType::new(13.0, 20.0, (11.0, 23.0), (0.32, 0.6)),
    CardType::new(12.0, 18.0, (11.0, 22.0), (0.28, 0.5)),
    CardType::new(11.0, 16.0, (11.0, 20.0), (0.24, 0.4)),
];

/// Eight to a sheet: pocket cards, whose words are as small as paper has them. A floor plan is told in
/// words there: drawn, it would be too small to work by.
pub const EIGHTH: &[CardType] = &[
    CardType::new(12.0, 16.0, (11.0, 15.0), (0.0, 0.35)),
    CardType::new(11.5, 15.0, (11.0, 15.0), (0.0, 0.35)),
    CardType::new(11.0, 14.0, (11.0, 15.0), (0.0, 0.35)),
    CardType::new(11.0, 14.0, (11.0, 15.0), (0.0, 0.35)).close(),
];

/// Large print, one to a sheet: nothing below 18 point, as large print is usually meant.
pub const LARGE: &[CardType] = &[
    CardType::new(24.0, 38.0, (18.0, 36.0), (0.6, 0.6)),
    CardType::new(22.0, 34.0, (18.0, 34.0), (0.55, 0.6)),
    CardType::new(20.0, 30.0, (18.0, 32.0), (0.5, 0.6)),
    CardType::new(18.0, 26.0, (18.0, 30.0), (0.45, 0.6)),
];

/// The pages of a booklet, half a sheet each.
pub const PAGE: &[CardType] = &[
    CardType::new(15.0, 25.0, (11.5, 26.0), (0.5, 0.6)),
    CardType::new(14.0, 23.0, (11.5, 25.0), (0.46, 0.6)),
    CardType::new(13.0, 21.0, (11.0, 24.0), (0.42, 0.6)),
    CardType::new(12.0, 19.0, (11.0, 23.0), (0.38, 0.6)),
    CardType::new(11.5, 17.5, (11.0, 22.0), (0.34, 0.5)),
    CardType::new(11.0, 16.0, (11.0, 20.0), (0.3, 0.4)),
];
