//! Whether numbers of things meet every demand, and if not, what any set that does must have.

use super::demand::{Asked, Demand};
use super::hall::{Cover, missing_covers};
use crate::plan::assign::{Effort, assign_within};

/// The most work that one test may cost.
pub const STEPS_OF_TEST: u64 = 1_000_000;

/// Of some thing there must be more than so many.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Clause {
    pub more_than: Vec<(usize, u32)>,
}

impl Clause {
    /// A cover that numbers fall short of.
    pub fn of_cover(cover: &Cover, numbers: &[u32], most: &[u32]) -> Self {
        clause(cover.things.clone(), numbers, most)
    }

    pub fn is_missed_by(&self, numbers: &[u32]) -> bool {
        self.more_than.iter().all(|(thing, than)| numbers[*thing] <= *than)
    }
}

/// What a test of whole numbers shows.
pub enum Met {
    Yes,
    No(Clause),
    /// The effort of the assignment ran out.
    Unknown(Clause),
}

/// The covers that a supply falls short of at any moment of a demand.
pub fn covers_at_moments(
    demand: &Demand,
    supply: &[u64],
    unit: u64,
    effort: &mut Effort,
) -> Vec<Cover> {
    let mut covers = Vec::new();
    for moment in 0..demand.moments() {
        let asked: Vec<&Asked> = demand.held_at(moment).collect();
        effort
            .spend(supply.len() + asked.iter().map(|asked| 4 + asked.things.len()).sum::<usize>());
        covers.extend(missing_covers(&asked, supply, unit, effort));
    }
    covers
}

/// Whether numbers that suffice at every moment also meet the demand as a whole. `most` is the most that there
/// can be of each thing.
pub fn meets(demand: &Demand, numbers: &[u32], most: &[u32], effort: &mut Effort) -> Met {
    if demand.is_at_one_moment() {
        return Met::Yes;
    }
    match test(demand, numbers, effort) {
        Some(true) => Met::Yes,
        Some(false) => Met::No(what_lacks(demand, numbers, most, effort)),
        None => Met::Unknown(clause(things_of(demand), numbers, most)),
    }
}

/// None if that can't be told within the assignment’s effort.
fn test(demand: &Demand, numbers: &[u32], effort: &mut Effort) -> Option<bool> {
    let wants = demand.wants();
    let assignment = effort.lend(STEPS_OF_TEST, |effort| assign_within(&wants, numbers, effort));
    let is_met = assignment.missing_needed(&wants) == 0;
    (is_met || assignment.is_proven).then_some(is_met)
}

/// Raises one thing after another to its most as long as the demand stays unmet: of the others, some thing must
/// be more than it is.
fn what_lacks(demand: &Demand, numbers: &[u32], most: &[u32], effort: &mut Effort) -> Clause {
    let mut raised = numbers.to_vec();
    let mut lacking = Vec::new();
    for thing in things_of(demand) {
        raised[thing] = most[thing];
        if test(demand, &raised, effort) != Some(false) {
            raised[thing] = numbers[thing];
            lacking.push(thing);
        }
    }
    clause(lacking, numbers, most)
}

fn clause(things: Vec<usize>, numbers: &[u32], most: &[u32]) -> Clause {
    let open = things.into_iter().filter(|thing| numbers[*thing] < most[*thing]);
    Clause { more_than: open.map(|thing| (thing, numbers[thing])).collect() }
}

fn things_of(demand: &Demand) -> Vec<usize> {
    let mut things: Vec<usize> =
        demand.asked.iter().flat_map(|asked| &asked.things).copied().collect();
    things.sort_unstable();
    things.dedup();
    things
}
