//! The smallest set of household things that serves every session of a pack, to be gathered once.
//!
//! From the wants of every session and the most a household can find of each thing to how many of each to
//! gather: the fewest things in all; among those the fewest kinds; among those the least unsuitability, each
//! thing counted at its worst for any want. Only needed wants count. What not even everything together can
//! serve is reported, and the rest is gathered for.
//!
//! Sessions fall apart into demands, wants that get in each other’s way (`demand`); alike ones are kept once,
//! things that others always replace are left out (`replace`), and demands that share no thing are solved
//! apart. A demand at one moment is met exactly when every group of its wants finds enough that suits it
//! (Hall 1935; `hall`). These conditions are found as they are needed, as rows of a linear program
//! (`simplex`), whose prices give exact bounds (`bound`) to a branch and bound (`search`). Demands over
//! several moments are tested by the assignment itself (`meet`).

mod bound;
mod demand;
mod hall;
mod known;
mod meet;
mod narrow;
mod pack;
mod program;
mod replace;
mod search;
mod simplex;
mod start;

#[cfg(test)]
mod tests;

use super::assign::{Effort, Want};
use pack::{PackNeeds, Piece};
use search::{Aim, Found, search};

/// Enough for any real pack; a hostile one ends within a second or two.
const STEPS: u64 = 60_000_000;

/// A want that can't be met in full, whatever is gathered.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Unserved {
    /// The index of the session and of the want in it.
    pub session: usize,
    pub want: usize,
    pub missing: u32,
}

/// What to gather once.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct GatherOnce {
    /// How many of each thing, in the order of `most`.
    pub counts: Vec<u32>,
    pub unserved: Vec<Unserved>,
    /// Whether it is certain that no smaller number of things would do, and that no more than must be is
    /// unserved. Otherwise the set still serves all the rest, and is a good one.
    pub is_proven: bool,
    /// Whether it is also certain that no set as small is of fewer kinds or more suitable.
    pub is_best_of_smallest: bool,
    /// No smaller number would do, as far as was found out; the number itself if proven.
    pub at_least: u64,
}

impl GatherOnce {
    /// How many things there are to gather in all.
    pub fn number(&self) -> u64 {
        self.counts.iter().map(|count| u64::from(*count)).sum()
    }

    /// How many kinds of things.
    pub fn kinds(&self) -> usize {
        self.counts.iter().filter(|count| **count > 0).count()
    }
}

/// Chooses what to gather for all sessions. `most` says how many of each thing a household can find; a thing
/// that it lacks can't be found. Optional wants are left out.
pub fn plan_gather_once(sessions: &[Vec<Want>], most: &[u32]) -> GatherOnce {
    let mut effort = Effort::of(STEPS);
    let needs = PackNeeds::of(sessions, most, &mut effort);
    let mut gather = GatherOnce {
        counts: vec![0; most.len()],
        unserved: needs.unserved,
        is_proven: needs.is_proven,
        is_best_of_smallest: true,
        at_least: 0,
    };
    for piece in &needs.pieces {
        gather_piece(piece, &mut gather, &mut effort);
    }
    gather
}

/// First the number, then the best of that number.
fn gather_piece(piece: &Piece, gather: &mut GatherOnce, effort: &mut Effort) {
    let fewest = search(piece, &Aim::fewest(piece), effort);
    gather.is_proven &= fewest.is_proven;
    gather.at_least += u64::try_from(fewest.bound).unwrap_or(0);
    let best = best_of_smallest(piece, &fewest, effort);
    gather.is_best_of_smallest &= fewest.is_proven && best.is_proven;
    for (thing, number) in piece.things.iter().zip(best.numbers) {
        gather.counts[*thing] = number;
    }
}

fn best_of_smallest(piece: &Piece, fewest: &Found, effort: &mut Effort) -> Found {
    search(piece, &Aim::best_of(piece, &fewest.numbers), effort)
}
