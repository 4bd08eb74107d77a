//! Whether things suffice for what is held at one moment, by a flow; if not, the wants that show it.
//!
//! A group of wants that asks for more than there is of all that suits it can't be met, and if there is no such
//! group, all can be met (Hall 1935). A group that lacks most is found from a largest flow, which is pushed
//! along shortest paths (Edmonds and Karp 1972).

use std::collections::VecDeque;

use super::demand::Asked;
use crate::plan::assign::Effort;

/// Of these things together, at least so many are needed.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Cover {
    pub things: Vec<usize>,
    pub least: u64,
}

/// The flow at one moment. Numbers are counted in fractions of a thing.
struct Flow<'a> {
    asked: &'a [&'a Asked],
    spare: Vec<u64>,
    open: Vec<u64>,
    /// `given[want][n]`: how much of the want’s `n`-th thing it has.
    given: Vec<Vec<u64>>,
}

/// The covers that a supply falls short of. `unit` is one thing, in the fractions that `supply` is counted in.
pub fn missing_covers(
    asked: &[&Asked],
    supply: &[u64],
    unit: u64,
    effort: &mut Effort,
) -> Vec<Cover> {
    let mut flow = Flow::greedy(asked, supply, unit);
    (0..asked.len()).filter_map(|want| flow.fill(want, effort)).collect()
}

impl<'a> Flow<'a> {
    fn greedy(asked: &'a [&'a Asked], supply: &[u64], unit: u64) -> Self {
        let mut flow = Self {
            asked,
            spare: supply.to_vec(),
            open: asked.iter().map(|asked| u64::from(asked.count) * unit).collect(),
            given: asked.iter().map(|asked| vec![0; asked.things.len()]).collect(),
        };
        for (want, asked) in asked.iter().enumerate() {
            for (n, thing) in asked.things.iter().enumerate() {
                let given = flow.open[want].min(flow.spare[*thing]);
                flow.open[want] -= given;
                flow.spare[*thing] -= given;
                flow.given[want][n] += given;
            }
        }
        flow
    }

    /// Fills one want up; if that can't be, the cover that is missing.
    fn fill(&mut self, want: usize, effort: &mut Effort) -> Option<Cover> {
        while self.open[want] > 0 {
            let reached = Reached::from(self, want, effort);
            let Some(end) = reached.end else {
                return Some(reached.cover(self));
            };
            self.push(want, end, &reached);
        }
        None
    }

    /// Moves as much as the path allows.
    fn push(&mut self, start: usize, end: usize, reached: &Reached) {
        let path = reached.path(self, start, end);
        let taken = path.iter().filter_map(|(_, _, taken)| *taken);
        let most = taken.map(|(want, n)| self.given[want][n]).min().unwrap_or(u64::MAX);
        let moved = most.min(self.open[start]).min(self.spare[end]);
        for (want, n, taken) in path {
            self.given[want][n] += moved;
            if let Some((other, n)) = taken {
                self.given[other][n] -= moved;
            }
        }
        self.open[start] -= moved;
        self.spare[end] -= moved;
    }
}

/// A want, which of its things it is given, and the want and its thing that this is taken from, if any.
type Step = (usize, usize, Option<(usize, usize)>);

/// What can be reached from a want: its things, the wants that have some of them, their things …
struct Reached {
    /// The want and its link that a thing was reached by.
    thing_by: Vec<Option<(usize, usize)>>,
    /// The want’s link that it was reached by: the thing that could be taken from it.
    want_by: Vec<Option<usize>>,
    wants: Vec<usize>,
    /// A thing that is left over.
    end: Option<usize>,
}

impl Reached {
    fn from(flow: &Flow, start: usize, effort: &mut Effort) -> Self {
        let mut reached = Self {
            thing_by: vec![None; flow.spare.len()],
            want_by: vec![None; flow.asked.len()],
            wants: vec![start],
            end: None,
        };
        let mut waiting = VecDeque::from([start]);
        while let Some(want) = waiting.pop_front() {
            for (n, thing) in flow.asked[want].things.iter().enumerate() {
                effort.spend(1);
                if reached.thing_by[*thing].is_none() {
                    effort.spend(4 * flow.asked.len());
                    reached.thing_by[*thing] = Some((want, n));
                    if flow.spare[*thing] > 0 {
                        reached.end = Some(*thing);
                        return reached;
                    }
                    reached.go_on(flow, *thing, &mut waiting);
                }
            }
        }
        reached
    }

    fn go_on(&mut self, flow: &Flow, thing: usize, waiting: &mut VecDeque<usize>) {
        for (want, asked) in flow.asked.iter().enumerate() {
            let Ok(n) = asked.things.binary_search(&thing) else { continue };
            if flow.given[want][n] > 0 && !self.wants.contains(&want) {
                self.want_by[want] = Some(n);
                self.wants.push(want);
                waiting.push_back(want);
            }
        }
    }

    /// From the end back to the start.
    fn path(&self, flow: &Flow, start: usize, end: usize) -> Vec<Step> {
        let mut path = Vec::new();
        let (mut thing, mut taken) = (end, None);
        loop {
            let (want, n) =
                self.thing_by[thing].expect("the path runs over things that were reached");
            path.push((want, n, taken));
            if want == start {
                return path;
            }
            let back =
                self.want_by[want].expect("every want but the first was reached over a thing");
            taken = Some((want, back));
            thing = flow.asked[want].things[back];
        }
    }

    fn cover(&self, flow: &Flow) -> Cover {
        let things = (0..self.thing_by.len()).filter(|thing| self.thing_by[*thing].is_some());
        let least = self.wants.iter().map(|want| u64::from(flow.asked[*want].count)).sum();
        Cover { things: things.collect(), least }
    }
}
