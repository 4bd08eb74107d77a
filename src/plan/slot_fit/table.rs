//! The table behind a fit: for every part and every amount of time left, the best score of that part and
//! those after it.
//!
//! A score holds worth and number of parts in one number: worth × units × (parts + 1), and 1 for each part
//! that is kept. Parts are filled in from the last to the first, so that reading the choices back begins with
//! the first part, whose wishes come first among equals.

use super::window::best_in_windows;
use super::{MOST_WORTH, PartOffer};
use crate::quantity::Duration;

/// Far below every score, and far above what would overflow.
const NEVER: i64 = i64::MIN / 4;

/// The lengths of one part in units of the table.
struct Row {
    least: usize,
    step: usize,
    count: usize,
    essential: bool,
    /// The score of one unit.
    score: i64,
}

pub struct Table {
    unit: u32,
    rows: Vec<Row>,
    /// `best[i][t]`: the best score of the parts from `i` on in `t` units; one row more than parts.
    best: Vec<Vec<i64>>,
}

impl Table {
    /// Fills the table for slots up to `longest`.
    pub fn of(parts: &[PartOffer], longest: Duration) -> Self {
        let unit = unit_of(parts);
        let units =
            units_in(longest.min(parts.iter().map(|part| part.lengths.longest()).sum()), unit);
        let rows: Vec<Row> = parts.iter().map(|part| row_of(part, unit, parts.len())).collect();
        let mut best = vec![vec![0; units + 1]];
        for row in rows.iter().rev() {
            let after = best.last().expect("the table begins with a row");
            best.push(row.before(after));
        }
        best.reverse();
        Self { unit, rows, best }
    }

    /// The best choices for a slot that the essential parts fit into.
    pub fn choices(&self, slot: Duration) -> Vec<Option<Duration>> {
        let mut left = units_in(slot, self.unit).min(self.best[0].len() - 1);
        let mut choices = Vec::with_capacity(self.rows.len());
        for (row, best) in self.rows.iter().zip(self.best.windows(2)) {
            let units = row.longest_best(&best[0], &best[1], left);
            left -= units.unwrap_or(0);
            choices.push(units.map(|units| self.duration(units)));
        }
        choices
    }

    fn duration(&self, units: usize) -> Duration {
        Duration::from_seconds(self.unit) * u32::try_from(units).unwrap_or(u32::MAX)
    }
}

impl Row {
    /// The best scores with this part, from those without it.
    fn before(&self, after: &[i64]) -> Vec<i64> {
        let dropped = if self.essential { vec![NEVER; after.len()] } else { after.to_vec() };
        if self.least >= after.len() {
            return dropped;
        }
        let flat: Vec<i64> = (0..).zip(after).map(|(t, best)| best - self.score * t).collect();
        let windows = best_in_windows(&flat, self.step, self.count);
        let mut best = dropped;
        for (t, (best, window)) in (0..).zip(best[self.least..].iter_mut().zip(windows)) {
            *best = (*best).max(window + self.score * (t + signed(self.least)) + 1);
        }
        best
    }

    /// The longest length that gives the best score, or none if only dropping the part does.
    fn longest_best(&self, best: &[i64], after: &[i64], left: usize) -> Option<usize> {
        let steps = left.checked_sub(self.least)? / self.step;
        let lengths = (0..=steps.min(self.count)).rev().map(|k| self.least + k * self.step);
        lengths
            .into_iter()
            .find(|units| after[left - units] + self.score * signed(*units) + 1 == best[left])
    }
}

fn row_of(part: &PartOffer, unit: u32, parts: usize) -> Row {
    let step = units_in(part.lengths.step, unit);
    Row {
        least: units_in(part.lengths.least, unit),
        step: step.max(1),
        count: if step == 0 { 0 } else { part.lengths.count as usize },
        essential: part.essential,
        score: i64::from(part.worth.min(MOST_WORTH)) * (signed(parts) + 1),
    }
}

/// The largest unit in which every length is whole.
fn unit_of(parts: &[PartOffer]) -> u32 {
    let lengths = parts.iter().flat_map(|part| [part.lengths.least, part.lengths.step]);
    lengths.map(Duration::seconds).fold(0, common_divisor).max(1)
}

fn common_divisor(mut a: u32, mut b: u32) -> u32 {
    while b != 0 {
        (a, b) = (b, a % b);
    }
    a
}

fn units_in(duration: Duration, unit: u32) -> usize {
    (duration.seconds() / unit) as usize
}

fn signed(units: usize) -> i64 {
    i64::try_from(units).expect("a table has far fewer units than this")
}
