//! What a search has found out about every set that meets all demands: covers and clauses. Both are added when
//! something falls short of them.

use std::cmp::Reverse;
use std::collections::BTreeSet;

use super::hall::Cover;
use super::meet::{Clause, Met, covers_at_moments, meets};
use super::pack::Piece;
use crate::plan::assign::Effort;

/// How many covers are added at once.
const COVERS_AT_ONCE: usize = 60;

/// One thing, in the fractions that values are counted in when covers are looked for.
const UNIT: f64 = 1_048_576.0;

pub struct Known<'a> {
    pub piece: &'a Piece,
    pub covers: Vec<Cover>,
    seen: BTreeSet<Cover>,
    pub clauses: Vec<Clause>,
    /// Whether every clause is certain.
    pub is_sure: bool,
}

impl<'a> Known<'a> {
    pub fn nothing(piece: &'a Piece) -> Self {
        let (covers, clauses) = (Vec::new(), Vec::new());
        Self { piece, covers, seen: BTreeSet::new(), clauses, is_sure: true }
    }

    /// Adds the covers that values fall short of most; false if there are no new ones.
    pub fn add_covers(&mut self, values: &[f64], effort: &mut Effort) -> bool {
        let supply: Vec<u64> = values.iter().map(|value| fractions(*value)).collect();
        let unit = fractions(1.0);
        let demands = self.piece.demands.iter();
        let covers: BTreeSet<Cover> = demands
            .flat_map(|demand| covers_at_moments(demand, &supply, unit, effort))
            .filter(|cover| !self.seen.contains(cover))
            .collect();
        let lacking = |cover: &Cover| {
            let have: u64 = cover.things.iter().map(|thing| supply[*thing]).sum();
            (unit * cover.least).saturating_sub(have)
        };
        let mut new: Vec<Cover> =
            covers.into_iter().filter(|cover| lacking(cover) > rounding(cover)).collect();
        new.sort_by_key(|cover| Reverse(lacking(cover)));
        new.truncate(COVERS_AT_ONCE);
        self.covers.extend(new.iter().cloned());
        let has_new = !new.is_empty();
        self.seen.extend(new);
        has_new
    }

    /// None if whole numbers meet every demand, or every demand that a thing suits; else what they lack, which
    /// is noted.
    pub fn test(
        &mut self,
        numbers: &[u32],
        thing: Option<usize>,
        effort: &mut Effort,
    ) -> Option<Clause> {
        let missed = self.clauses.iter().find(|clause| clause.is_missed_by(numbers));
        if missed.is_some() {
            return missed.cloned();
        }
        let supply: Vec<u64> = numbers.iter().map(|number| u64::from(*number)).collect();
        let piece = self.piece;
        let demands = piece.demands.iter().filter(|demand| demand.may_use(thing));
        let mut lacks = demands.filter_map(|demand| {
            let covers = covers_at_moments(demand, &supply, 1, effort);
            let cover = covers.first().map(|cover| Clause::of_cover(cover, numbers, &piece.most));
            cover.or_else(|| self.lack_of(meets(demand, numbers, &piece.most, effort)))
        });
        lacks.next()
    }

    fn lack_of(&mut self, met: Met) -> Option<Clause> {
        let clause = match met {
            Met::Yes => return None,
            Met::No(clause) => clause,
            Met::Unknown(clause) => {
                self.is_sure = false;
                clause
            }
        };
        self.clauses.push(clause.clone());
        Some(clause)
    }
}

/// By how much rounding to fractions can make a cover seem short.
fn rounding(cover: &Cover) -> u64 {
    1 + cover.things.len() as u64
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "values are those of a u32"
)]
fn fractions(value: f64) -> u64 {
    (value * UNIT).round() as u64
}
