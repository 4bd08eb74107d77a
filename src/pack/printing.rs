//! What is printed of each session, and how: the usual set, unless the pack or the command asks for more.

use crate::read::print_choices::{CardCount, RecordKind, Sides, Spacing};

/// The choices of a pack about paper.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Printing {
    pub cards: CardCount,
    pub sides: Sides,
    /// Whether there is a set in large print besides the cards.
    pub large_print: bool,
    pub spacing: Spacing,
    pub booklet: bool,
    pub poster: bool,
    /// How many numbered sets there are for a class; none where it is not asked for.
    pub copies: Option<u32>,
    pub records: Vec<RecordKind>,
}

impl Default for Printing {
    /// Four cards to a sheet, fronts only, and a record sheet for one child.
    fn default() -> Self {
        Self {
            cards: CardCount::Four,
            sides: Sides::One,
            large_print: false,
            spacing: Spacing::Usual,
            booklet: false,
            poster: false,
            copies: None,
            records: vec![RecordKind::Child],
        }
    }
}

/// Choices of which some are made: by the pack, or over it by the command.
#[derive(Clone, Debug, Default)]
pub struct PrintWishes {
    pub cards: Option<CardCount>,
    pub sides: Option<Sides>,
    pub large_print: Option<bool>,
    pub spacing: Option<Spacing>,
    pub booklet: Option<bool>,
    pub poster: Option<bool>,
    pub copies: Option<u32>,
    pub records: Vec<RecordKind>,
}

impl Printing {
    /// What is printed when these wishes lie over the choices so far.
    #[must_use]
    pub fn with(self, wishes: PrintWishes) -> Self {
        let mut records = wishes.records;
        records.sort_unstable();
        records.dedup();
        Self {
            cards: wishes.cards.unwrap_or(self.cards),
            sides: wishes.sides.unwrap_or(self.sides),
            large_print: wishes.large_print.unwrap_or(self.large_print),
            spacing: wishes.spacing.unwrap_or(self.spacing),
            booklet: wishes.booklet.unwrap_or(self.booklet),
            poster: wishes.poster.unwrap_or(self.poster),
            copies: wishes.copies.or(self.copies),
            records: if records.is_empty() { self.records } else { records },
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_not_wished_stays() {
        let pack = PrintWishes {
            cards: Some(CardCount::Two),
            booklet: Some(true),
            ..PrintWishes::default()
        };
        let command =
            PrintWishes { booklet: Some(false), copies: Some(3), ..PrintWishes::default() };
        let printing = Printing::default().with(pack).with(command);
        assert_eq!((printing.cards, printing.booklet), (CardCount::Two, false));
        assert_eq!((printing.copies, printing.records), (Some(3), vec![RecordKind::Child]));
    }
}
