//! What is aimed at, and exact lower bounds for it.
//!
//! Whatever prices the covers have, no set within a node’s limits costs less than the price of all covers and,
//! for each thing, the least that its cost can exceed the prices it earns (Lagrangian duality: Geoffrion 1974).
//! Good prices come from the linear program; the bound is reckoned from them in whole numbers, so that rounding
//! in the program can make it weaker, but not wrong.

use super::hall::Cover;
use super::pack::Piece;
use super::program::Relaxed;

/// Wide enough for any sum of costs.
pub type Cost = i128;

/// Prices are counted in fractions of a cost.
const FRACTION: Cost = 1 << 20;

/// What a set costs.
pub struct Aim {
    /// The cost of each one of a thing.
    each: Vec<Cost>,
    /// The cost of each kind.
    once: Cost,
    /// The most things in all.
    pub most_in_all: Option<u64>,
    /// A set to begin with.
    pub start: Option<Vec<u32>>,
}

/// How many there may be of each thing, and what is known of the cost.
#[derive(Clone, Debug)]
pub struct Node {
    pub least: Vec<u32>,
    pub most: Vec<u32>,
    pub bound: Cost,
}

impl Aim {
    /// As few things as can be.
    pub fn fewest(piece: &Piece) -> Self {
        Self { each: vec![1; piece.things.len()], once: 0, most_in_all: None, start: None }
    }

    /// No more things than a given set, of as few kinds as can be, and then as suitable as can be.
    pub fn best_of(piece: &Piece, start: &[u32]) -> Self {
        let each: Vec<Cost> = piece.unsuitability.iter().map(|each| Cost::from(*each)).collect();
        let most_in_all: u64 = start.iter().map(|number| u64::from(*number)).sum();
        let worst = each.iter().max().copied().unwrap_or(0);
        let once = worst * Cost::from(most_in_all) + 1;
        Self { each, once, most_in_all: Some(most_in_all), start: Some(start.to_vec()) }
    }

    pub fn cost(&self, numbers: &[u32]) -> Cost {
        numbers.iter().enumerate().map(|(thing, number)| self.cost_of(thing, *number)).sum()
    }

    pub fn allows(&self, numbers: &[u32]) -> bool {
        let number: u64 = numbers.iter().map(|number| u64::from(*number)).sum();
        self.most_in_all.is_none_or(|most| number <= most)
    }

    pub fn counts_kinds(&self) -> bool {
        self.once > 0
    }

    fn cost_of(&self, thing: usize, number: u32) -> Cost {
        self.each[thing] * Cost::from(number) + if number > 0 { self.once } else { 0 }
    }

    /// The cost of one more, with the cost of the kind spread over as many as there may be.
    pub fn slope(&self, thing: usize, node: &Node) -> f64 {
        let spread =
            if node.least[thing] > 0 { 0.0 } else { real(self.once) / f64::from(node.most[thing]) };
        real(self.each[thing]) + spread
    }

    /// The least that any set within the node’s limits costs, by the prices of a relaxed program.
    pub fn bound(&self, covers: &[Cover], relaxed: &Relaxed, node: &Node) -> Cost {
        let limit = whole(relaxed.limit_price);
        let mut bound = -limit * Cost::from(self.most_in_all.unwrap_or(0));
        let mut earned = vec![-limit; node.least.len()];
        for (cover, price) in covers.iter().zip(&relaxed.cover_prices) {
            let price = whole(*price);
            bound += price * Cost::from(cover.least);
            for thing in &cover.things {
                earned[*thing] += price;
            }
        }
        let beyond =
            earned.iter().enumerate().map(|(thing, earned)| self.beyond(thing, *earned, node));
        bound += beyond.sum::<Cost>();
        bound.div_euclid(FRACTION) + Cost::from(bound.rem_euclid(FRACTION) > 0)
    }

    /// The least by which a thing’s cost exceeds what it earns: that is straight but for the step at the
    /// first, so least where a straight piece ends.
    fn beyond(&self, thing: usize, earned: Cost, node: &Node) -> Cost {
        let (least, most) = (node.least[thing], node.most[thing]);
        let ends = [least, most.min(least.max(1)), most];
        let beyond = ends.map(|end| FRACTION * self.cost_of(thing, end) - earned * Cost::from(end));
        beyond.into_iter().min().unwrap_or(0)
    }
}

#[expect(clippy::cast_precision_loss, reason = "a price to try need not be exact")]
fn real(cost: Cost) -> f64 {
    cost as f64
}

#[expect(clippy::cast_possible_truncation, reason = "a price to try need not be exact")]
#[expect(clippy::cast_precision_loss, reason = "a power of two")]
fn whole(price: f64) -> Cost {
    (price * FRACTION as f64).round() as Cost
}
