//! A set to begin the search with: good, not best.

use std::cmp::Reverse;

use super::demand::Demand;
use super::known::Known;
use super::meet::STEPS_OF_TEST;
use super::pack::Piece;
use crate::plan::assign::{Effort, assign_within};

/// What every demand would take for itself, thinned out as far as the effort lasts.
pub fn plan_start(known: &mut Known, effort: &mut Effort) -> Vec<u32> {
    let mut numbers = taken_apart(known.piece, effort);
    let mut order: Vec<usize> = (0..numbers.len()).rev().collect();
    order.sort_by_key(|thing| Reverse(known.piece.unsuitability[*thing]));
    for thing in order {
        thin(known, &mut numbers, thing, effort);
    }
    numbers
}

/// Of each thing, the most that any demand takes of everything there is.
fn taken_apart(piece: &Piece, effort: &mut Effort) -> Vec<u32> {
    let mut numbers = vec![0; piece.most.len()];
    for demand in &piece.demands {
        for (thing, number) in taken(demand, piece, effort) {
            numbers[thing] = number.max(numbers[thing]);
        }
    }
    numbers
}

/// What a demand holds of each thing at its busiest moment; if that is not found out, all there is.
fn taken(demand: &Demand, piece: &Piece, effort: &mut Effort) -> Vec<(usize, u32)> {
    let wants = demand.wants();
    let most = STEPS_OF_TEST.min(effort.left());
    let assignment = effort.lend(most, |effort| assign_within(&wants, &piece.most, effort));
    if assignment.missing_needed(&wants) > 0 {
        return piece.most.iter().copied().enumerate().collect();
    }
    let mut taken = Vec::new();
    for moment in 0..demand.moments() {
        let mut held = vec![0; piece.most.len()];
        let here = wants.iter().zip(&assignment.served);
        for (_, served) in here.filter(|(want, _)| (want.from..=want.to).contains(&moment)) {
            served.things.iter().for_each(|(thing, number)| held[*thing] += number);
        }
        taken.extend(held.into_iter().enumerate());
    }
    taken
}

/// Takes as many of a thing away as can be.
fn thin(known: &mut Known, numbers: &mut [u32], thing: usize, effort: &mut Effort) {
    let (mut low, mut high) = (0, numbers[thing]);
    while low < high && !effort.is_spent() {
        let middle = low + (high - low) / 2;
        numbers[thing] = middle;
        match known.test(numbers, Some(thing), effort) {
            None => high = middle,
            Some(_) => low = middle + 1,
        }
    }
    numbers[thing] = high;
}
