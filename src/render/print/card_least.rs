//! The least room that what a card says takes in any size, found from one size: larger ones need not be tried where they
//! can’t do.

use super::card::Said;
use super::card_fit::CardForm;
use super::card_type::CardType;

/// Hyphens come and go with the size.
const HYPHENS: f32 = 0.99;

/// The least room that what a card says takes in any size, found from one.
pub struct Least {
    /// Of each paragraph: how often its words fill a line, and how tall a line is.
    paragraphs: Vec<(f32, f32)>,
    /// What else there is.
    other: f32,
    /// All that the sides of one card have room for.
    room: f32,
}

impl Least {
    pub fn of(said: &Said, form: CardForm, kind: CardType, head: f32) -> Self {
        let sides = if form.has_back { 2.0 } else { 1.0 };
        let columns = if form.is_wide { 2.0 } else { 1.0 };
        let room = sides * columns * (form.cell.height - form.foot(kind) - head);
        let mut least = Self { paragraphs: Vec::new(), other: 0.0, room };
        for strip in said.front.iter().chain(said.either.iter().flatten()) {
            match (strip.filled / form.column_width(), least.paragraphs.last_mut()) {
                (0.0, _) => least.other += strip.height,
                (filled, Some(paragraph)) if strip.goes_on => paragraph.0 += filled,
                (filled, _) => least.paragraphs.push((filled, strip.height)),
            }
        }
        least
    }

    /// At least so many cards are needed in another size.
    pub fn cards_in(&self, kind: CardType, of: CardType) -> usize {
        let larger = kind.body / of.body;
        let lines = self.paragraphs.iter();
        let tall_in =
            |(filled, tall): &(f32, f32)| (filled * larger * HYPHENS).ceil() * tall * larger;
        let words: f32 = lines.map(tall_in).sum();
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a handful of cards"
        )]
        let cards = ((words + self.other) / self.room).ceil().max(1.0) as usize;
        cards
    }
}
