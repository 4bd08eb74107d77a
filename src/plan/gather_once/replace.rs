//! Leaves out things that another always replaces: one that suits wherever they do, is no less suitable, and of
//! which there is as much as can be asked for at once. Whatever set they are in, the other can take their
//! place, with no more things, no more kinds and no more unsuitability.

use std::collections::{BTreeMap, BTreeSet};

use super::demand::{Asked, Demand};

/// For each thing of the pack, how many can be found and its worst unsuitability.
pub struct Bounds {
    pub most: Vec<u32>,
    pub unsuitability: Vec<u32>,
}

/// The demands without the things that others replace. `most` falls to what can be asked for at once.
pub fn leave_out_replaced(
    demands: &BTreeSet<Demand>,
    mut bounds: Bounds,
) -> (BTreeSet<Demand>, Bounds) {
    let (peaks, company) = (peaks(demands), company(demands));
    let replaces = |one: usize, other: usize| {
        let suits_more = !company[&one].contains(&other);
        let rank = |thing: usize| (bounds.unsuitability[thing], thing);
        peaks[&one] <= u64::from(bounds.most[one])
            && bounds.unsuitability[one] <= bounds.unsuitability[other]
            && (suits_more || rank(one) < rank(other))
    };
    let replaced: BTreeSet<usize> = company
        .iter()
        .filter(|(thing, others)| {
            others.iter().any(|other| other != *thing && replaces(*other, **thing))
        })
        .map(|(thing, _)| *thing)
        .collect();
    for (thing, peak) in peaks {
        bounds.most[thing] = bounds.most[thing].min(u32::try_from(peak).unwrap_or(u32::MAX));
    }
    let left = demands.iter().flat_map(|demand| without(demand, &replaced)).collect();
    (left, bounds)
}

/// The most of each thing that any demand can use at once.
fn peaks(demands: &BTreeSet<Demand>) -> BTreeMap<usize, u64> {
    let mut peaks: BTreeMap<usize, u64> = BTreeMap::new();
    for demand in demands {
        for moment in 0..demand.moments() {
            for (thing, held) in held_at(demand, moment) {
                let peak = peaks.entry(thing).or_default();
                *peak = held.max(*peak);
            }
        }
    }
    peaks
}

fn held_at(demand: &Demand, moment: usize) -> BTreeMap<usize, u64> {
    let mut held = BTreeMap::new();
    for asked in demand.held_at(moment) {
        for thing in &asked.things {
            *held.entry(*thing).or_default() += u64::from(asked.count);
        }
    }
    held
}

/// For each thing, those that suit wherever it does, itself among them.
fn company(demands: &BTreeSet<Demand>) -> BTreeMap<usize, BTreeSet<usize>> {
    let suits: BTreeSet<&[usize]> = demands
        .iter()
        .flat_map(|demand| &demand.asked)
        .map(|asked| asked.things.as_slice())
        .collect();
    let mut company: BTreeMap<usize, BTreeSet<usize>> = BTreeMap::new();
    for things in suits {
        for thing in things {
            let others = company.entry(*thing).or_insert_with(|| things.iter().copied().collect());
            others.retain(|other| things.binary_search(other).is_ok());
        }
    }
    company
}

fn without(demand: &Demand, replaced: &BTreeSet<usize>) -> Vec<Demand> {
    let mut asked: Vec<Asked> = demand.asked.clone();
    for asked in &mut asked {
        asked.things.retain(|thing| !replaced.contains(thing));
    }
    Demand::of_session(&asked)
}
