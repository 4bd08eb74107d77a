//! Depth-first branch and bound over how many of each thing a want takes (Land and Doig 1960).
//!
//! A node is bounds for every link. Its lower bound is the relaxed problem’s; if that keeps the stock at
//! every moment, the node is done; if not, the moment where most is lacking is looked at too. Then a thing of which too many are held at some moment is shared out: one of
//! the wants that hold it takes fewer, or keeps what it has and leaves less to the others.

use std::cmp::Reverse;

use super::effort::Effort;
use super::held::Held;
use super::problem::{Cost, Problem};
use super::relax::{Bounds, LookedAt, moments_to_look_at, relax, whole_cost};
use super::repair::repair;

/// The best numbers that were found.
pub struct Found {
    pub numbers: Vec<u32>,
    pub is_proven: bool,
    cost: Cost,
}

impl Found {
    fn improve(&mut self, problem: &Problem, numbers: Vec<u32>) {
        let cost = whole_cost(problem, &numbers);
        if cost < self.cost {
            (self.numbers, self.cost) = (numbers, cost);
        }
    }
}

/// A node that waits, with the bound of the node it came from.
struct Node {
    bounds: Bounds,
    bound: Cost,
}

/// A link that takes too many at a moment, and how many it shall take at most, or else more.
struct Share {
    link: usize,
    most: u32,
    moment: usize,
}

/// A search while it runs.
struct Search<'a> {
    problem: &'a Problem,
    looked_at: LookedAt,
    found: Found,
}

/// The best numbers for a problem, proven as long as the effort lasts.
pub fn search(problem: &Problem, effort: &mut Effort) -> Found {
    let none = vec![0; problem.links.len()];
    let most = problem.links.iter().map(|link| problem.stock[link.thing]).collect();
    let mut waiting = vec![Node { bounds: Bounds { least: none, most }, bound: 0 }];
    let mut search = Search::begin(problem);
    while let Some(node) = waiting.pop() {
        if node.bound < search.found.cost {
            waiting.extend(search.branch(node, effort));
        }
        if effort.is_spent() {
            search.found.is_proven = false;
            break;
        }
    }
    search.found
}

impl<'a> Search<'a> {
    /// Begins with what is quickly handed out.
    fn begin(problem: &'a Problem) -> Self {
        let numbers = repair(problem, &vec![0; problem.links.len()]);
        let cost = whole_cost(problem, &numbers);
        let found = Found { numbers, cost, is_proven: true };
        Self { problem, looked_at: moments_to_look_at(problem, None), found }
    }

    /// The nodes below; none if nothing better can be there.
    fn branch(&mut self, mut node: Node, effort: &mut Effort) -> Vec<Node> {
        let Some(share) = self.raise_bound(&mut node, effort) else { return Vec::new() };
        share_out(&share, node)
    }

    /// Raises the bound of a node, also by looking at the worst moment; none if it is done.
    fn raise_bound(&mut self, node: &mut Node, effort: &mut Effort) -> Option<Share> {
        let share = self.relaxed(None, node, effort)?;
        self.relaxed(Some(share.moment), node, effort)
    }

    /// What the relaxed problem leaves to be shared out; none if the node is done: the relaxed numbers keep
    /// the stock, or their cost is no better than what is found.
    fn relaxed(
        &mut self,
        moment: Option<usize>,
        node: &mut Node,
        effort: &mut Effort,
    ) -> Option<Share> {
        let chosen = moment.map(|moment| moments_to_look_at(self.problem, Some(moment)));
        let looked_at = chosen.as_ref().unwrap_or(&self.looked_at);
        effort.spend(self.problem.wants.len() * looked_at.len());
        let (numbers, bound) = relax(self.problem, looked_at, &mut node.bounds, effort)?;
        self.found.improve(self.problem, repair(self.problem, &numbers));
        node.bound = node.bound.max(bound);
        let share = share_at_worst(self.problem, &node.bounds, &numbers)?;
        (node.bound < self.found.cost).then_some(share)
    }
}

/// Both ways to share a thing out; the one with fewer comes last, since it is looked at first.
fn share_out(share: &Share, node: Node) -> Vec<Node> {
    let (mut fewer, mut as_many) = (node.bounds.clone(), node.bounds);
    fewer.most[share.link] = share.most;
    as_many.least[share.link] = share.most + 1;
    let bound = node.bound;
    vec![Node { bounds: as_many, bound }, Node { bounds: fewer, bound }]
}

/// Where most is lacking: the link that takes most of what is not yet fixed.
fn share_at_worst(problem: &Problem, bounds: &Bounds, numbers: &[u32]) -> Option<Share> {
    let (place, excess) = worst_place(problem, &Held::of(problem, numbers))?;
    let (thing, moment) = problem.places[place];
    let here = problem.links_of[thing].iter().copied().filter(|at| {
        let link = &problem.links[*at];
        (link.first..=link.last).contains(&place)
    });
    let open = here.filter(|at| numbers[*at] > bounds.least[*at]);
    let link = open.max_by_key(|at| (numbers[*at] - bounds.least[*at], Reverse(*at)))?;
    let kept = u64::from(numbers[link]).saturating_sub(excess);
    let most = u32::try_from(kept).expect("less than the number").max(bounds.least[link]);
    Some(Share { link, most, moment })
}

fn worst_place(problem: &Problem, held: &Held) -> Option<(usize, u64)> {
    let places = problem.places.iter().enumerate();
    let excess = places.filter_map(|(place, (thing, _))| {
        let excess = held.at(place).checked_sub(u64::from(problem.stock[*thing]))?;
        (excess > 0).then_some((place, excess))
    });
    excess.max_by_key(|(place, excess)| (*excess, Reverse(*place)))
}
