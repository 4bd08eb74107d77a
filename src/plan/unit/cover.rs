//! Which sessions of the library cover the statements that a unit still lacks: an exact set cover.
//!
//! With at most so many sessions, in this order of weight: the most statements are covered; by the fewest
//! sessions; with the fewest minutes in all; and of several such choices the one whose sessions come first by
//! their addresses. A branch and bound over the statement that the fewest sessions cover; a session is left out
//! where another covers as much and more and is no longer (Garfinkel and Nemhauser 1969, the usual reductions).

use std::cmp::Reverse;

/// A session that could be added.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Candidate {
    /// The statements it covers, by their numbers below [`MOST_STATEMENTS`].
    pub covers: u128,
    /// How long it is.
    pub seconds: u32,
}

/// As many statements can be asked for.
pub const MOST_STATEMENTS: usize = 128;

/// Enough for any real library; a hostile one ends within a second or so.
const STEPS: u64 = 300_000;

/// What was chosen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CoverChoice {
    /// Places in the list of candidates, in order.
    pub chosen: Vec<usize>,
    /// The statements that are covered with them.
    pub covered: u128,
    /// No other choice is better.
    pub is_best: bool,
}

/// Chooses for the statements of `asked`. Candidates stand in the order of their addresses.
pub fn plan_cover(asked: u128, candidates: &[Candidate], at_most: usize) -> CoverChoice {
    let mut search = Search {
        kept: keep_useful(asked, candidates),
        chosen: Vec::new(),
        seconds: 0,
        best: Found::default(),
        steps: STEPS,
    };
    let reachable = search.kept.iter().fold(0, |all, kept| all | kept.covers);
    search.go(reachable & asked, 0, at_most);
    CoverChoice {
        covered: search.best.chosen.iter().fold(0, |all, at| all | candidates[*at].covers & asked),
        is_best: search.steps > 0,
        chosen: search.best.chosen,
    }
}

/// A candidate that no other replaces.
#[derive(Clone, Copy, Debug)]
struct Kept {
    at: usize,
    covers: u128,
    seconds: u32,
}

/// Leaves out what covers nothing that is asked for, and what another always replaces.
fn keep_useful(asked: u128, candidates: &[Candidate]) -> Vec<Kept> {
    let useful = candidates.iter().enumerate().map(|(at, candidate)| Kept {
        at,
        covers: candidate.covers & asked,
        seconds: candidate.seconds,
    });
    let mut useful: Vec<Kept> = useful.filter(|kept| kept.covers != 0).collect();
    // One that replaces another stands before it here.
    useful.sort_by_key(|kept| (Reverse(kept.covers.count_ones()), kept.seconds, kept.at));
    let mut kept: Vec<Kept> = Vec::new();
    for one in useful {
        if !kept.iter().any(|other| replaces(other, &one)) {
            kept.push(one);
        }
    }
    kept.sort_by_key(|kept| kept.at);
    kept
}

fn replaces(other: &Kept, one: &Kept) -> bool {
    one.covers & !other.covers == 0 && (other.seconds, other.at) <= (one.seconds, one.at)
}

#[derive(Clone, Debug, Default)]
struct Found {
    covered: u32,
    seconds: u32,
    chosen: Vec<usize>,
}

impl Found {
    /// The better choice is the greater.
    fn rank(&self) -> impl Ord + use<'_> {
        let count = self.chosen.len();
        (self.covered, Reverse(count), Reverse(self.seconds), Reverse(&self.chosen))
    }
}

struct Search {
    kept: Vec<Kept>,
    chosen: Vec<Kept>,
    seconds: u32,
    best: Found,
    steps: u64,
}

impl Search {
    /// Goes on with the statements still open; those given up are in neither set.
    fn go(&mut self, open: u128, covered: u32, left: usize) {
        if self.steps == 0 {
            return;
        }
        self.steps -= 1;
        self.note(covered);
        let Some(statement) = self.rarest(open).filter(|_| left > 0) else { return };
        if !self.is_worth(open, covered, left) {
            return;
        }
        let mut ways: Vec<Kept> =
            self.kept.iter().filter(|kept| kept.covers & statement != 0).copied().collect();
        ways.sort_by_key(|way| Reverse((way.covers & open).count_ones()));
        for way in ways {
            self.chosen.push(way);
            self.seconds += way.seconds;
            let gained = (way.covers & open).count_ones();
            self.go(open & !way.covers, covered + gained, left - 1);
            self.seconds -= way.seconds;
            self.chosen.pop();
        }
        // Without the statement: what covers it is then out of the question.
        let without = self.kept.iter().filter(|kept| kept.covers & statement == 0).copied();
        let without = without.collect();
        let all = std::mem::replace(&mut self.kept, without);
        let reachable = self.kept.iter().fold(0, |all, kept| all | kept.covers);
        self.go(open & reachable, covered, left);
        self.kept = all;
    }

    fn note(&mut self, covered: u32) {
        let mut chosen: Vec<usize> = self.chosen.iter().map(|kept| kept.at).collect();
        chosen.sort_unstable();
        let found = Found { covered, seconds: self.seconds, chosen };
        if found.rank() > self.best.rank() {
            self.best = found;
        }
    }

    /// The open statement that the fewest sessions cover.
    fn rarest(&self, open: u128) -> Option<u128> {
        let statements = (0..MOST_STATEMENTS).map(|at| 1_u128 << at).filter(|one| open & one != 0);
        statements.min_by_key(|one| self.kept.iter().filter(|k| k.covers & one != 0).count())
    }

    /// Whether the best that could still come of it is as good as what is known.
    fn is_worth(&self, open: u128, covered: u32, left: usize) -> bool {
        let gains = self.kept.iter().map(|kept| (kept.covers & open).count_ones());
        let most = gains.max().unwrap_or(0);
        if most == 0 {
            return false;
        }
        let left = u32::try_from(left).unwrap_or(u32::MAX);
        let reach = covered + open.count_ones().min(left.saturating_mul(most));
        let best = &self.best;
        if reach != best.covered {
            return reach > best.covered;
        }
        let needed = (best.covered - covered).div_ceil(most);
        let count = self.chosen.len().saturating_add(usize::try_from(needed).unwrap_or(usize::MAX));
        let shortest = self.kept.iter().map(|kept| kept.seconds).min().unwrap_or(0);
        let seconds = self.seconds.saturating_add(shortest.saturating_mul(needed));
        (count, seconds) <= (best.chosen.len(), best.seconds)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn candidate(covers: u128, minutes: u32) -> Candidate {
        Candidate { covers, seconds: minutes * 60 }
    }

    #[test]
    fn the_fewest_sessions_cover_everything() {
        // By hand: the longest cover is b, but a and c do with two what b needs two more for.
        let library = [
            candidate(0b000_111, 30),
            candidate(0b011_110, 30),
            candidate(0b111_000, 30),
            candidate(0b111_000, 20),
        ];
        let choice = plan_cover(0b111_111, &library, 9);
        assert_eq!((choice.chosen, choice.is_best), (vec![0, 3], true));
        assert_eq!(plan_cover(0b111_111, &library, 1).chosen, [1]);
        assert_eq!(plan_cover(0b1_000_000, &library, 9).chosen, [0_usize; 0]);
    }

    #[test]
    fn ties_fall_to_the_shorter_then_to_the_first_address() {
        let library =
            [candidate(0b01, 20), candidate(0b10, 20), candidate(0b01, 20), candidate(0b10, 10)];
        assert_eq!(plan_cover(0b11, &library, 9).chosen, [0, 3]);
    }
}
