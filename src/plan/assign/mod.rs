//! Assigns household things to the needs of a session, so that nothing is two things at once.
//!
//! From wants (how many, from which part to which, what suits and how badly) and the stock of a household to
//! things for each want. A thing is held from the first part that uses it to the last, so that nothing has to
//! be put back and fetched again. An assignment is possible exactly when, for every thing and every moment,
//! no more of it is held than there is: the wants that share a thing are intervals of time, and interval
//! graphs are perfect, so as many copies suffice as are held at the busiest moment (Golumbic, “Algorithmic
//! Graph Theory and Perfect Graphs”, 1980, chapter 8). Numbers of each thing are therefore enough, and no
//! copy needs a name.
//!
//! Best is, in this order: the fewest needed things missing, the fewest optional ones missing, the least
//! unsuitability in all. Wants that are held at one moment are a transportation problem, solved exactly by
//! shortest augmenting paths (`transport`). Otherwise such problems bound a depth-first branch and bound
//! (`search`), which is exact as long as its effort lasts, and says so.

mod conflict;
mod effort;
mod held;
mod problem;
mod relax;
mod repair;
mod search;
mod transport;

#[cfg(test)]
mod tests;

pub(super) use conflict::{Span, conflicts};
pub(super) use effort::Effort;
use problem::Problem;

/// Enough for any household; a hostile question ends within about a tenth of a second.
const STEPS: u64 = 8_000_000;

/// A thing that suits a want, and how badly: 0 for the thing itself, more for what stands in less well.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Suit {
    /// The index of the thing in the stock.
    pub thing: usize,
    pub unsuitability: u32,
}

/// Something that a session asks for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Want {
    pub count: u32,
    /// The first part in which it is held.
    pub from: usize,
    /// The last part in which it is held, that part included.
    pub to: usize,
    pub optional: bool,
    pub suits: Vec<Suit>,
}

/// What one want receives.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Served {
    /// Things and how many of each, in the order of the stock.
    pub things: Vec<(usize, u32)>,
    /// How many the want asks for and does not receive.
    pub missing: u32,
}

/// An assignment of things to wants.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Assignment {
    /// One for each want, in order.
    pub served: Vec<Served>,
    /// The sum over all things handed out, each counted as often as it is handed out.
    pub unsuitability: u64,
    /// Whether it is certain that no assignment is better. Otherwise it is possible, and a good one.
    pub is_proven: bool,
}

impl Assignment {
    /// How many needed things are missing in all.
    pub fn missing_needed(&self, wants: &[Want]) -> u64 {
        self.missing(wants, false)
    }

    /// How many optional things are missing in all.
    pub fn missing_optional(&self, wants: &[Want]) -> u64 {
        self.missing(wants, true)
    }

    fn missing(&self, wants: &[Want], optional: bool) -> u64 {
        let both = wants.iter().zip(&self.served);
        both.filter(|(want, _)| want.optional == optional).map(|(_, s)| u64::from(s.missing)).sum()
    }
}

/// Assigns things to wants. `stock` says how many of each thing there are; a thing that it lacks is not there.
/// A want that ends before it begins is taken the other way round.
pub fn plan_assignment(wants: &[Want], stock: &[u32]) -> Assignment {
    assign_within(wants, stock, &mut Effort::of(STEPS))
}

/// The same within a given effort.
pub(super) fn assign_within(wants: &[Want], stock: &[u32], effort: &mut Effort) -> Assignment {
    let mut assignment = Assignment {
        served: wants
            .iter()
            .map(|want| Served { things: Vec::new(), missing: want.count })
            .collect(),
        unsuitability: 0,
        is_proven: true,
    };
    for problem in Problem::of(wants, stock) {
        let found = search::search(&problem, effort);
        assignment.is_proven &= found.is_proven;
        hand_out(&problem, &found.numbers, &mut assignment);
    }
    assignment
}

fn hand_out(problem: &Problem, numbers: &[u32], assignment: &mut Assignment) {
    for (link, number) in problem.links.iter().zip(numbers).filter(|(_, number)| **number > 0) {
        let served = &mut assignment.served[problem.wants[link.want].name];
        served.things.push((problem.things[link.thing], *number));
        served.things.sort_unstable();
        served.missing -= number;
        assignment.unsuitability += u64::from(link.unsuitability) * u64::from(*number);
    }
}
