//! Imposition: which card or page comes to lie where, so that backs meet their fronts and a folded
//! stack reads in order. Pure arithmetic; it knows nothing of what stands on a card.
//!
//! Turned over on the long edge of an upright sheet, left and right change places; on the short edge,
//! top and bottom do.

use crate::read::print_choices::CardCount;

/// How many cards stand side by side and one below another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Grid {
    pub across: usize,
    pub down: usize,
}

/// The edge that an upright sheet is turned over on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Flip {
    Long,
    Short,
}

/// Where a card lies: which sheet, and where on this side of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Spot {
    pub sheet: usize,
    pub column: usize,
    pub row: usize,
}

impl Grid {
    /// The grid for so many cards: two are the halves of a sheet one above the other.
    pub const fn of(count: CardCount) -> Self {
        let (across, down) = match count {
            CardCount::One => (1, 1),
            CardCount::Two => (1, 2),
            CardCount::Four => (2, 2),
            CardCount::Eight => (2, 4),
        };
        Self { across, down }
    }

    pub const fn cards(self) -> usize {
        self.across * self.down
    }

    /// Where the front of a card lies, counted from 0: in the order of reading.
    pub const fn front_spot(self, card: usize) -> Spot {
        let on_sheet = card % self.cards();
        let (column, row) = (on_sheet % self.across, on_sheet / self.across);
        Spot { sheet: card / self.cards(), column, row }
    }

    /// Where the back of a card lies on the other side of its sheet.
    pub const fn back_spot(self, card: usize, flip: Flip) -> Spot {
        let front = self.front_spot(card);
        match flip {
            Flip::Long => Spot { column: self.across - 1 - front.column, ..front },
            Flip::Short => Spot { row: self.down - 1 - front.row, ..front },
        }
    }
}

/// The left and the right page of each printed side of a booklet, counted from 0: front and back of
/// the outermost sheet first. A page that is not there is `None`.
///
/// The sheets are stacked, printed on both sides, turned on their short edge and folded once; so the
/// two pages of a side add up to the same number, and the outermost sheet has the last and the first.
pub fn booklet_sides(pages: usize) -> Vec<[Option<usize>; 2]> {
    let whole = padded(pages);
    let page = |number: usize| (number < pages).then_some(number);
    (0..whole / 2)
        .map(|side| {
            let (low, high) = (side, whole - 1 - side);
            // Right-hand pages are the odd ones, counted from 1.
            if side % 2 == 0 { [page(high), page(low)] } else { [page(low), page(high)] }
        })
        .collect()
}

/// The pages of a booklet with the blank ones at its end: four to a sheet.
pub const fn padded(pages: usize) -> usize {
    pages.div_ceil(4) * 4
}

#[cfg(test)]
mod tests {
    use super::*;

    const COUNTS: [CardCount; 4] =
        [CardCount::One, CardCount::Two, CardCount::Four, CardCount::Eight];

    #[test]
    fn every_card_has_a_spot_of_its_own() {
        for grid in COUNTS.map(Grid::of) {
            for flip in [Flip::Long, Flip::Short] {
                let mut spots: Vec<_> = (0..3 * grid.cards())
                    .map(|card| grid.back_spot(card, flip))
                    .map(|spot| (spot.sheet, spot.row, spot.column))
                    .collect();
                spots.sort_unstable();
                spots.dedup();
                assert_eq!(spots.len(), 3 * grid.cards());
            }
        }
    }

    #[test]
    fn backs_lie_behind_their_fronts() {
        for grid in COUNTS.map(Grid::of) {
            for card in 0..2 * grid.cards() {
                let front = grid.front_spot(card);
                let long = grid.back_spot(card, Flip::Long);
                assert_eq!((long.row, long.sheet), (front.row, front.sheet));
                assert_eq!(long.column + front.column, grid.across - 1);
                let short = grid.back_spot(card, Flip::Short);
                assert_eq!((short.column, short.sheet), (front.column, front.sheet));
                assert_eq!(short.row + front.row, grid.down - 1);
            }
        }
    }

    #[test]
    fn two_sheets_fold_to_eight_pages() {
        let sides: Vec<_> =
            booklet_sides(8).into_iter().map(|side| side.map(|page| page.map(|p| p + 1))).collect();
        let of = |left, right| [Some(left), Some(right)];
        assert_eq!(sides, [of(8, 1), of(2, 7), of(6, 3), of(4, 5)]);
    }

    #[test]
    fn a_booklet_is_padded_at_its_end() {
        for pages in 1..40 {
            let sides = booklet_sides(pages);
            assert_eq!(sides.len() % 2, 0);
            let mut met: Vec<usize> = sides.into_iter().flatten().flatten().collect();
            met.sort_unstable();
            assert_eq!(met, (0..pages).collect::<Vec<_>>());
        }
    }
}
