//! A lower bound: every want is held to one moment only.
//!
//! From bounds for each link to numbers and a cost that no assignment within the bounds can undercut. Moments
//! are chosen so that every want is held at one of them; the wants of each are a transportation problem of
//! their own. The numbers keep the stock at these moments, but perhaps not at others; there, holding has a price.
//! With a single moment nothing is lost.

use super::effort::Effort;
use super::held::Held;
use super::problem::{Cost, Problem};
use super::transport::Transport;

/// How many a link takes at least and at most, one of each for every link.
#[derive(Clone, Debug)]
pub struct Bounds {
    pub least: Vec<u32>,
    pub most: Vec<u32>,
}

/// The wants of each moment that is looked at.
pub type LookedAt = Vec<(usize, Vec<usize>)>;

/// Moments that every want is held at one of: the given one first, then as few as will do.
pub fn moments_to_look_at(problem: &Problem, first: Option<usize>) -> LookedAt {
    let mut left: Vec<usize> = (0..problem.wants.len()).collect();
    left.sort_by_key(|want| problem.wants[*want].to);
    let mut looked_at = Vec::new();
    let mut next = first.or_else(|| Some(problem.wants[*left.first()?].to));
    while let Some(moment) = next {
        let (mut here, later): (Vec<_>, Vec<_>) =
            left.iter().partition(|want| problem.wants[**want].is_held(moment));
        here.sort_unstable();
        looked_at.push((moment, here));
        left = later;
        next = left.first().map(|want| problem.wants[*want].to);
    }
    looked_at
}

/// The cheapest numbers within the bounds that keep the stock at the moments that are looked at, and a bound
/// for all that keep it always; none if there are none or the effort ran out. Narrows the bounds on the way.
pub fn relax(
    problem: &Problem,
    looked_at: &LookedAt,
    bounds: &mut Bounds,
    effort: &mut Effort,
) -> Option<(Vec<u32>, Cost)> {
    let fixed = Held::of(problem, &bounds.least);
    narrow(problem, &fixed, bounds)?;
    effort.spend(problem.links.len());
    let room: Vec<u32> =
        bounds.most.iter().zip(&bounds.least).map(|(most, least)| most - least).collect();
    let mut numbers = vec![0; room.len()];
    let mut cost = unsuitability_of(problem, &bounds.least);
    for (moment, wants) in looked_at {
        let spare = spare_at(problem, &fixed, *moment);
        let mut transport = Transport::new(problem, &room, &mut numbers, spare);
        for want in wants.iter().copied() {
            let links = problem.wants[want].links.clone();
            let served: u32 = bounds.least[links].iter().sum();
            let count = problem.wants[want].count - served;
            cost += transport.serve(want, count, effort)?;
        }
    }
    for (number, least) in numbers.iter_mut().zip(&bounds.least) {
        *number += least;
    }
    Some((numbers, cost))
}

/// No link can take more than is left beside what the others are sure to hold.
fn narrow(problem: &Problem, fixed: &Held, bounds: &mut Bounds) -> Option<()> {
    for want in &problem.wants {
        let served: u64 = bounds.least[want.links.clone()].iter().map(|n| u64::from(*n)).sum();
        let open = u32::try_from(u64::from(want.count).checked_sub(served)?).ok()?;
        for at in want.links.clone() {
            let free = fixed.free(problem, &problem.links[at])?.min(open);
            bounds.most[at] = bounds.most[at].min(bounds.least[at] + free);
        }
    }
    bounds.least.iter().zip(&bounds.most).all(|(least, most)| least <= most).then_some(())
}

/// What is left at a moment beside what is fixed: at the thing’s first place from then on, where every want of
/// that moment still holds it.
fn spare_at(problem: &Problem, fixed: &Held, moment: usize) -> Vec<u32> {
    let spare = |(thing, stock): (usize, &u32)| {
        let place = problem.places.partition_point(|place| *place < (thing, moment));
        let is_of_thing = problem.places.get(place).is_some_and(|place| place.0 == thing);
        let held = if is_of_thing { fixed.at(place) } else { 0 };
        u32::try_from(u64::from(*stock) - held).expect("less than the stock")
    };
    problem.stock.iter().enumerate().map(spare).collect()
}

fn unsuitability_of(problem: &Problem, numbers: &[u32]) -> Cost {
    let each = problem.links.iter().zip(numbers);
    each.map(|(link, number)| Cost::from(link.unsuitability) * Cost::from(*number)).sum()
}

/// The whole cost of numbers: unsuitability and what is missing.
pub fn whole_cost(problem: &Problem, numbers: &[u32]) -> Cost {
    let missing = problem.wants.iter().map(|want| {
        let served: u32 = numbers[want.links.clone()].iter().sum();
        want.missing * Cost::from(want.count - served)
    });
    unsuitability_of(problem, numbers) + missing.sum::<Cost>()
}
