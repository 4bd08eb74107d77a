//! What to lend one home: the fewest things with which every session can be done that lending makes possible.
//!
//! A home keeps what it is lent, so of each thing the most that any one session needs is enough. For each
//! session the smallest loans that make it possible are found by trying them in the order of their size, never
//! one that holds more than another that already does; then one of each session’s loans is taken so that the sum
//! over things of the largest number is least. Both steps leave nothing out, so the answer is exact.

use super::choose::fits;
use super::model::Model;

/// More loans than this are not tried for one session: a hostile session ends.
const MOST_TRIED: usize = 20_000;

/// What a home is lent.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Lending {
    /// Of each thing in the stock, how many.
    pub counts: Vec<u32>,
    /// Whether each session can then be done.
    pub possible: Vec<bool>,
    /// Whether it is certain that no fewer would do.
    pub is_proven: bool,
}

impl Lending {
    pub fn number(&self) -> u64 {
        self.counts.iter().map(|count| u64::from(*count)).sum()
    }
}

/// Chooses what to lend. All sessions share one stock; `most` says how many of each thing can be lent.
pub fn plan_lending(sessions: &[Model], most: &[u32]) -> Lending {
    let mut lending =
        Lending { counts: vec![0; most.len()], possible: Vec::new(), is_proven: true };
    let mut loans = Vec::new();
    for session in sessions {
        let smallest = smallest_loans(session, most);
        lending.is_proven &= smallest.is_complete;
        lending.possible.push(!smallest.loans.is_empty());
        // A session that is possible without a loan, or never, asks for nothing.
        if smallest.loans.first().is_some_and(|loan| loan.iter().any(|count| *count > 0)) {
            loans.push(smallest.loans);
        }
    }
    loans.sort();
    loans.dedup();
    let mut best: Option<Vec<u32>> = None;
    combine(&loans, &lending.counts, &mut best);
    lending.counts = best.unwrap_or_default();
    lending
}

struct Smallest {
    loans: Vec<Vec<u32>>,
    is_complete: bool,
}

/// Every loan that makes a session possible and holds no smaller one that does.
fn smallest_loans(session: &Model, most: &[u32]) -> Smallest {
    let with = |loan: &[u32]| {
        let stock = session.stock.iter().zip(loan).map(|(own, lent)| own.saturating_add(*lent));
        fits(&session.with_stock(stock.collect()))
    };
    let none = vec![0; most.len()];
    let useful = useful_of(session, most);
    if with(&none) {
        return Smallest { loans: vec![none], is_complete: true };
    }
    if !with(&useful) {
        return Smallest { loans: Vec::new(), is_complete: true };
    }
    let kinds: Vec<usize> = (0..useful.len()).filter(|thing| useful[*thing] > 0).collect();
    let (mut loans, mut tried): (Vec<Vec<u32>>, usize) = (Vec::new(), 0);
    let largest: u32 = useful.iter().sum();
    for size in 1..=largest {
        for loan in loans_of_size(&useful, &kinds, size) {
            tried += 1;
            let holds = |known: &Vec<u32>| known.iter().zip(&loan).all(|(less, more)| less <= more);
            if !loans.iter().any(holds) && with(&loan) {
                loans.push(loan);
            }
        }
        if tried > MOST_TRIED {
            let is_complete = false;
            return Smallest {
                loans: if loans.is_empty() { vec![useful] } else { loans },
                is_complete,
            };
        }
    }
    Smallest { loans, is_complete: true }
}

/// No more of a thing is useful than all wants that it suits ask for.
fn useful_of(session: &Model, most: &[u32]) -> Vec<u32> {
    let mut useful = vec![0_u32; most.len()];
    for want in session.wants.iter().filter(|want| !want.optional) {
        for suit in &want.suits {
            useful[suit.thing] = useful[suit.thing].saturating_add(want.count);
        }
    }
    useful.iter().zip(most).map(|(useful, most)| (*useful).min(*most)).collect()
}

/// Every loan of so many things, with no more of each than is useful.
fn loans_of_size(useful: &[u32], kinds: &[usize], size: u32) -> Vec<Vec<u32>> {
    let Some((kind, rest)) = kinds.split_first() else {
        return if size == 0 { vec![vec![0; useful.len()]] } else { Vec::new() };
    };
    let mut loans = Vec::new();
    for count in 0..=useful[*kind].min(size) {
        for mut loan in loans_of_size(useful, rest, size - count) {
            loan[*kind] = count;
            loans.push(loan);
        }
    }
    loans
}

/// Takes a loan of each session so that the largest numbers have the least sum.
fn combine(sessions: &[Vec<Vec<u32>>], lent: &[u32], best: &mut Option<Vec<u32>>) {
    let number = |counts: &[u32]| counts.iter().map(|count| u64::from(*count)).sum::<u64>();
    if best.as_ref().is_some_and(|best| number(lent) >= number(best)) {
        return;
    }
    let Some((session, rest)) = sessions.split_first() else {
        *best = Some(lent.to_vec());
        return;
    };
    for loan in session {
        let both: Vec<u32> = lent.iter().zip(loan).map(|(a, b)| *a.max(b)).collect();
        combine(rest, &both, best);
    }
}
