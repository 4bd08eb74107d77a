//! Branch and bound over how many of each thing are gathered (Land and Doig 1960), with the covers that a
//! relaxed set falls short of added on the way (cutting planes).

pub use super::bound::Aim;
use super::bound::{Cost, Node};
use super::hall::Cover;
use super::known::Known;
use super::meet::Clause;
use super::narrow::narrow;
use super::pack::Piece;
use super::program::relax;
use super::start::plan_start;
use crate::plan::assign::Effort;

/// How often covers are added at one node.
const ROUNDS: usize = 50;

/// A value this near to a whole number is taken for it.
const NEAR: f64 = 1e-6;

/// The best set that was found.
pub struct Found {
    pub numbers: Vec<u32>,
    /// No set costs less.
    pub bound: Cost,
    pub is_proven: bool,
}

/// A search while it runs.
struct Search<'a> {
    aim: &'a Aim,
    known: Known<'a>,
    best: Vec<u32>,
    cost: Cost,
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
        first_bound = first_bound.or_else(|| search.known.is_sure.then(|| search.least(&waiting)));
    }
    let is_proven = waiting.is_empty() && search.known.is_sure;
    let sure = if search.known.is_sure { search.least(&waiting) } else { first_bound.unwrap_or(0) };
    Found { numbers: search.best, bound: sure, is_proven }
}

impl<'a> Search<'a> {
    fn begin(piece: &'a Piece, aim: &'a Aim, effort: &mut Effort) -> Self {
        let mut known = Known::nothing(piece);
        let quarter = effort.left() / 4;
        let best = aim
            .start
            .clone()
            .unwrap_or_else(|| effort.lend(quarter, |effort| plan_start(&mut known, effort)));
        // With a limit on the whole number goes that no set is smaller.
        if let Some(least) = aim.most_in_all {
            known.covers.push(Cover { things: (0..best.len()).collect(), least });
        }
        let cost = aim.cost(&best);
        Self { aim, known, best, cost }
    }

    /// The least that can still be found.
    fn least(&self, waiting: &[Node]) -> Cost {
        waiting.iter().map(|node| node.bound).fold(self.cost, Cost::min)
    }

    /// The nodes below; none if nothing better can be there.
    fn branch(&mut self, mut node: Node, effort: &mut Effort) -> Vec<Node> {
        let Some(values) = self.relaxed(&mut node, effort) else { return Vec::new() };
        let numbers = rounded_up(&values, &node);
        let unmet = self.known.test(&numbers, None, effort);
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
            narrow(node, &self.known.covers, &self.known.clauses)?;
            effort.spend(self.known.covers.len() * 4);
            let relaxed = relax(self.aim, &self.known.covers, node, effort)?;
            node.bound = node.bound.max(self.aim.bound(&self.known.covers, &relaxed, node));
            if node.bound >= self.cost {
                return None;
            }
            values = relaxed.values;
            if effort.is_spent() || !self.known.add_covers(&values, effort) {
                break;
            }
        }
        Some(values)
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
