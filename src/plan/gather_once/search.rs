//! Branch and bound over how many of each thing are gathered (Land and Doig 1960), with the covers that a
//! relaxed set falls short of added on the way (cutting planes).

use std::collections::BTreeSet;

use super::super::assign::Effort;
pub use super::bound::Aim;
use super::bound::{Cost, Node};
use super::hall::Cover;
use super::meet::{Clause, Met, covers_at_moments, meets};
use super::narrow::narrow;
use super::pack::Piece;
use super::program::relax;

/// How often covers are added at one node, and how many at once.
const ROUNDS: usize = 50;
const COVERS_AT_ONCE: usize = 60;

/// A value this near to a whole number is taken for it.
const NEAR: f64 = 1e-6;

/// One thing, in the fractions that values are counted in when covers are looked for.
const UNIT: f64 = 1_048_576.0;

/// The best set that was found.
pub struct Found {
    pub numbers: Vec<u32>,
    /// No set costs less.
    pub bound: Cost,
    pub is_proven: bool,
}

/// A search while it runs.
struct Search<'a> {
    piece: &'a Piece,
    aim: &'a Aim,
    covers: Vec<Cover>,
    known: BTreeSet<Cover>,
    clauses: Vec<Clause>,
    best: Vec<u32>,
    cost: Cost,
    /// Whether every clause is certain.
    is_sure: bool,
}

/// The best set for a piece, proven as long as the effort lasts.
pub fn search(piece: &Piece, aim: &Aim, effort: &mut Effort) -> Found {
    let mut search = Search::begin(piece, aim, effort);
    let root = Node { least: vec![0; piece.most.len()], most: piece.most.clone(), bound: 0 };
    let mut waiting = vec![root];
    let mut first_bound = None;
    while let Some(node) = waiting.pop() {
        if node.bound >= search.cost {
            continue;
        }
        if effort.is_spent() {
            waiting.push(node);
            break;
        }
        waiting.extend(search.branch(node, effort));
        first_bound = first_bound.or_else(|| search.is_sure.then(|| search.least(&waiting)));
    }
    let is_proven = waiting.is_empty() && search.is_sure;
    let sure = if search.is_sure { search.least(&waiting) } else { first_bound.unwrap_or(0) };
    Found { numbers: search.best, bound: sure, is_proven }
}

impl<'a> Search<'a> {
    fn begin(piece: &'a Piece, aim: &'a Aim, effort: &mut Effort) -> Self {
        let mut search = Self {
            piece,
            aim,
            covers: Vec::new(),
            known: BTreeSet::new(),
            clauses: Vec::new(),
            best: piece.most.clone(),
            cost: 0,
            is_sure: true,
        };
        search.best = aim.start.clone().unwrap_or_else(|| search.thinned(effort));
        search.cost = aim.cost(&search.best);
        search.add_whole_cover();
        search
    }

    /// With a limit on the whole number goes that no set is smaller.
    fn add_whole_cover(&mut self) {
        if let Some(least) = self.aim.most_in_all {
            self.covers.push(Cover { things: (0..self.best.len()).collect(), least });
        }
    }

    /// The least that can still be found.
    fn least(&self, waiting: &[Node]) -> Cost {
        waiting.iter().map(|node| node.bound).fold(self.cost, Cost::min)
    }

    /// Takes as much as can be from everything there is, the least suitable first.
    fn thinned(&mut self, effort: &mut Effort) -> Vec<u32> {
        let mut numbers = self.piece.most.clone();
        let mut order: Vec<usize> = (0..numbers.len()).rev().collect();
        order.sort_by_key(|thing| std::cmp::Reverse(self.piece.unsuitability[*thing]));
        for thing in order {
            let (mut low, mut high) = (0, numbers[thing]);
            while low < high && !effort.is_spent() {
                let middle = low + (high - low) / 2;
                numbers[thing] = middle;
                if self.test(&numbers, Some(thing), effort).is_none() {
                    high = middle;
                } else {
                    low = middle + 1;
                }
            }
            numbers[thing] = high;
        }
        numbers
    }

    /// The nodes below; none if nothing better can be there.
    fn branch(&mut self, mut node: Node, effort: &mut Effort) -> Vec<Node> {
        let Some(values) = self.relaxed(&mut node, effort) else { return Vec::new() };
        let numbers = rounded_up(&values, &node);
        let unmet = self.test(&numbers, None, effort);
        if unmet.is_none() {
            self.improve(&numbers);
        }
        let split = match most_broken(&values) {
            Some(thing) => Some((thing, numbers[thing] - 1)),
            None => match unmet {
                Some(clause) => split_by_clause(&clause, &node),
                None if self.aim.cost(&numbers) <= node.bound => None,
                None => self.split_by_kind(&numbers, &node),
            },
        };
        split.map_or_else(Vec::new, |(thing, most)| split_at(thing, most, node))
    }

    /// The values of a node’s program, once they meet every cover; none if nothing better can be below.
    fn relaxed(&mut self, node: &mut Node, effort: &mut Effort) -> Option<Vec<f64>> {
        let mut values = Vec::new();
        for _ in 0..ROUNDS {
            narrow(node, &self.covers, &self.clauses)?;
            effort.spend(self.covers.len() * 4);
            let relaxed = relax(self.aim, &self.covers, node, effort)?;
            node.bound = node.bound.max(self.aim.bound(&self.covers, &relaxed, node));
            if node.bound >= self.cost {
                return None;
            }
            values = relaxed.values;
            if effort.is_spent() || !self.add_covers(&values, effort) {
                break;
            }
        }
        Some(values)
    }

    /// Adds the covers that values fall short of most; false if there are no new ones.
    fn add_covers(&mut self, values: &[f64], effort: &mut Effort) -> bool {
        let supply: Vec<u64> = values.iter().map(|value| fractions(*value)).collect();
        let demands = self.piece.demands.iter();
        let covers: BTreeSet<Cover> = demands
            .flat_map(|demand| covers_at_moments(demand, &supply, fractions(1.0), effort))
            .collect();
        let short = |cover: &Cover| {
            let have: f64 = cover.things.iter().map(|thing| values[*thing]).sum();
            fractions(1.0) * cover.least - fractions(have).min(fractions(1.0) * cover.least)
        };
        let mut new: Vec<(u64, Cover)> = covers
            .into_iter()
            .filter(|cover| !self.known.contains(cover))
            .map(|cover| (short(&cover), cover))
            .filter(|(short, _)| *short > 1)
            .collect();
        new.sort_by_key(|(short, _)| std::cmp::Reverse(*short));
        new.truncate(COVERS_AT_ONCE);
        self.covers.extend(new.iter().map(|(_, cover)| cover.clone()));
        self.known.extend(new.iter().map(|(_, cover)| cover.clone()));
        !new.is_empty()
    }

    /// None if whole numbers meet every demand, or every demand that a thing suits; else what they lack, which
    /// is noted.
    fn test(
        &mut self,
        numbers: &[u32],
        thing: Option<usize>,
        effort: &mut Effort,
    ) -> Option<Clause> {
        let known = self.clauses.iter().find(|clause| clause.is_missed_by(numbers));
        if known.is_some() {
            return known.cloned();
        }
        let supply: Vec<u64> = numbers.iter().map(|number| u64::from(*number)).collect();
        let piece = self.piece;
        for demand in piece.demands.iter().filter(|demand| demand.may_use(thing)) {
            if let Some(cover) = covers_at_moments(demand, &supply, 1, effort).into_iter().next() {
                return Some(Clause::of_cover(&cover, numbers, &piece.most));
            }
            match meets(demand, numbers, &piece.most, effort) {
                Met::Yes => {}
                Met::No(clause) => return Some(self.note(clause)),
                Met::Unknown(clause) => {
                    self.is_sure = false;
                    return Some(self.note(clause));
                }
            }
        }
        None
    }

    fn note(&mut self, clause: Clause) -> Clause {
        self.clauses.push(clause.clone());
        clause
    }

    fn improve(&mut self, numbers: &[u32]) {
        let cost = self.aim.cost(numbers);
        if cost < self.cost && self.aim.allows(numbers) {
            (self.best, self.cost) = (numbers.to_vec(), cost);
        }
    }

    /// Whole numbers meet everything, but cost more than the bound, in which the cost of a kind is spread out:
    /// either a thing is not used at all, or its kind counts in full.
    fn split_by_kind(&self, numbers: &[u32], node: &Node) -> Option<(usize, u32)> {
        let is_open = |thing: &usize| node.least[*thing] < node.most[*thing];
        let open = (0..numbers.len()).filter(is_open);
        let counted = self.aim.counts_kinds();
        let spread =
            open.clone().find(|thing| counted && node.least[*thing] == 0 && numbers[*thing] > 0);
        let below = |thing: usize| (thing, numbers[thing].min(node.most[thing] - 1));
        spread.map(|thing| (thing, 0)).or_else(|| open.map(below).next())
    }
}

/// At most so many of a thing, or more: the latter is looked at first.
fn split_at(thing: usize, most: u32, node: Node) -> Vec<Node> {
    let (mut fewer, mut more) = (node.clone(), node);
    fewer.most[thing] = most;
    more.least[thing] = most + 1;
    vec![fewer, more]
}

fn split_by_clause(clause: &Clause, node: &Node) -> Option<(usize, u32)> {
    let open = clause.more_than.iter().filter(|(thing, than)| node.most[*thing] > *than);
    open.copied().find(|(thing, than)| node.least[*thing] <= *than)
}

fn rounded_up(values: &[f64], node: &Node) -> Vec<u32> {
    let limits = node.least.iter().zip(&node.most);
    values
        .iter()
        .zip(limits)
        .map(|(v, (least, most))| whole(v - NEAR).clamp(*least, *most))
        .collect()
}

/// The thing whose value is farthest from whole.
fn most_broken(values: &[f64]) -> Option<usize> {
    let distance = |thing: &usize| (values[*thing] - values[*thing].round()).abs();
    let broken = (0..values.len()).filter(|thing| distance(thing) > NEAR);
    broken.max_by(|one, other| distance(one).total_cmp(&distance(other)).then(other.cmp(one)))
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "values are those of a u32"
)]
fn whole(value: f64) -> u32 {
    value.ceil() as u32
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "values are not negative"
)]
fn fractions(value: f64) -> u64 {
    (value * UNIT).round() as u64
}
