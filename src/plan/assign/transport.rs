//! The wants that are held at one moment: a transportation problem.
//!
//! From wants, free room for each link and free stock of each thing to the cheapest numbers, by successive
//! shortest paths (Ahuja, Magnanti and Orlin, “Network Flows”, 1993, section 9.7). A path leads from a want
//! over a thing, perhaps taking it away from another want, to a thing that is left over or to a want that goes
//! without.

use std::collections::VecDeque;

use super::effort::Effort;
use super::problem::{Cost, Problem};

/// Where a path ends.
#[derive(Clone, Copy)]
enum End {
    Thing(usize),
    Missing(usize),
}

/// A transportation problem while it is solved. Numbers stand on top of what the caller has fixed.
pub struct Transport<'a> {
    pub problem: &'a Problem,
    /// How many a link may take, and how many it takes.
    pub room: &'a [u32],
    pub numbers: &'a mut [u32],
    /// How many of each thing are left over.
    pub spare: Vec<u32>,
    want_cost: Vec<Option<Cost>>,
    thing_cost: Vec<Option<Cost>>,
    /// The link over which a want or a thing was reached.
    want_from: Vec<usize>,
    thing_from: Vec<usize>,
}

impl<'a> Transport<'a> {
    pub fn new(
        problem: &'a Problem,
        room: &'a [u32],
        numbers: &'a mut [u32],
        spare: Vec<u32>,
    ) -> Self {
        let (wants, things) = (problem.wants.len(), problem.things.len());
        Self {
            problem,
            room,
            numbers,
            spare,
            want_cost: vec![None; wants],
            thing_cost: vec![None; things],
            want_from: vec![0; wants],
            thing_from: vec![0; things],
        }
    }

    /// Serves one more want as cheaply as all before it and this one can be; gives what it adds to the cost,
    /// or none if the effort ran out.
    pub fn serve(&mut self, want: usize, mut count: u32, effort: &mut Effort) -> Option<Cost> {
        let mut cost = 0;
        while count > 0 {
            self.reach(want, effort);
            if effort.is_spent() {
                return None;
            }
            let (end, each) = self.cheapest_end(want);
            let moved = self.bottleneck(want, end, count);
            self.shift(want, end, moved);
            cost += each * Cost::from(moved);
            count -= moved;
        }
        Some(cost)
    }

    /// The cheapest way from a want to every want and thing, by label correction: links that give back cost
    /// less than nothing, but no circle does.
    fn reach(&mut self, start: usize, effort: &mut Effort) {
        effort.spend(self.want_cost.len() + self.thing_cost.len());
        self.want_cost.fill(None);
        self.thing_cost.fill(None);
        self.want_cost[start] = Some(0);
        let mut waiting = VecDeque::from([start]);
        while let Some(want) = waiting.pop_front() {
            if effort.is_spent() {
                return;
            }
            self.reach_from(want, start, &mut waiting, effort);
        }
    }

    fn reach_from(
        &mut self,
        want: usize,
        start: usize,
        waiting: &mut VecDeque<usize>,
        effort: &mut Effort,
    ) {
        let problem = self.problem;
        let so_far = self.want_cost[want].expect("a want that waits has been reached");
        effort.spend(problem.wants[want].links.len());
        for at in problem.wants[want].links.clone() {
            let link = &problem.links[at];
            let cost = so_far + Cost::from(link.unsuitability);
            if self.numbers[at] < self.room[at] && is_less(cost, self.thing_cost[link.thing]) {
                self.thing_cost[link.thing] = Some(cost);
                self.thing_from[link.thing] = at;
                self.take_back(link.thing, start, waiting, effort);
            }
        }
    }

    /// Goes on to the wants that a thing could be taken away from.
    fn take_back(
        &mut self,
        thing: usize,
        start: usize,
        waiting: &mut VecDeque<usize>,
        effort: &mut Effort,
    ) {
        let problem = self.problem;
        let so_far = self.thing_cost[thing].expect("the thing has just been reached");
        effort.spend(problem.links_of[thing].len());
        for at in problem.links_of[thing].iter().copied().filter(|at| self.numbers[*at] > 0) {
            let link = &problem.links[at];
            let cost = so_far - Cost::from(link.unsuitability);
            if link.want != start && is_less(cost, self.want_cost[link.want]) {
                self.want_cost[link.want] = Some(cost);
                self.want_from[link.want] = at;
                if !waiting.contains(&link.want) {
                    waiting.push_back(link.want);
                }
            }
        }
    }

    /// Of ends alike the first thing, so that nothing goes without for nothing.
    fn cheapest_end(&self, start: usize) -> (End, Cost) {
        let things = self.thing_cost.iter().enumerate().filter(|(thing, _)| self.spare[*thing] > 0);
        let left_over = things.filter_map(|(thing, cost)| Some((End::Thing(thing), (*cost)?)));
        let wants = self.problem.wants.iter().zip(&self.want_cost).enumerate();
        let without = wants.filter_map(|(want, (wanted, cost))| {
            Some((End::Missing(want), (*cost)? + wanted.missing))
        });
        let own = (End::Missing(start), self.problem.wants[start].missing);
        left_over.chain(without).min_by_key(|(_, cost)| *cost).unwrap_or(own)
    }

    /// How many can go along the path to the end.
    fn bottleneck(&self, start: usize, end: End, count: u32) -> u32 {
        let mut most = match end {
            End::Thing(thing) => count.min(self.spare[thing]),
            End::Missing(_) => count,
        };
        self.along(start, end, |given, taken| {
            most = most.min(self.room[given] - self.numbers[given]);
            most = taken.map_or(most, |taken| most.min(self.numbers[taken]));
        });
        most
    }

    fn shift(&mut self, start: usize, end: End, moved: u32) {
        if let End::Thing(thing) = end {
            self.spare[thing] -= moved;
        }
        let mut changes = Vec::new();
        self.along(start, end, |given, taken| changes.push((given, taken)));
        for (given, taken) in changes {
            self.numbers[given] += moved;
            if let Some(taken) = taken {
                self.numbers[taken] -= moved;
            }
        }
    }

    /// Follows the path backwards: each link that gives, with the link that the same thing is taken from.
    fn along(&self, start: usize, end: End, mut step: impl FnMut(usize, Option<usize>)) {
        let mut want = match end {
            End::Thing(thing) => {
                let given = self.thing_from[thing];
                step(given, None);
                self.problem.links[given].want
            }
            End::Missing(want) => want,
        };
        while want != start {
            let back = self.want_from[want];
            let given = self.thing_from[self.problem.links[back].thing];
            step(given, Some(back));
            want = self.problem.links[given].want;
        }
    }
}

fn is_less(cost: Cost, known: Option<Cost>) -> bool {
    known.is_none_or(|known| cost < known)
}
