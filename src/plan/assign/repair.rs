//! Makes numbers possible that ask for too much at some moment: takes away what is not there, then gives the
//! wants that go short whatever is free. Quick and good, not best.

use super::held::Held;
use super::problem::Problem;

/// Possible numbers near the given ones.
pub fn repair(problem: &Problem, wished: &[u32]) -> Vec<u32> {
    let mut held = Held::of(problem, &[]);
    let mut numbers = vec![0; wished.len()];
    let order = neediest_first(problem);
    for want in order.iter().copied() {
        for at in problem.wants[want].links.clone() {
            give(problem, at, wished[at], &mut numbers, &mut held);
        }
    }
    for want in order {
        fill_up(problem, want, &mut numbers, &mut held);
    }
    numbers
}

/// Needed before optional, and those with little choice before those with much.
fn neediest_first(problem: &Problem) -> Vec<usize> {
    let mut order: Vec<usize> = (0..problem.wants.len()).collect();
    order.sort_by_key(|want| {
        let want = &problem.wants[*want];
        (-want.missing, want.links.len())
    });
    order
}

fn fill_up(problem: &Problem, want: usize, numbers: &mut [u32], held: &mut Held) {
    let want = &problem.wants[want];
    let served: u32 = numbers[want.links.clone()].iter().sum();
    let mut short = want.count - served;
    for at in want.links.clone() {
        if short == 0 {
            return;
        }
        short -= give(problem, at, short, numbers, held);
    }
}

/// Gives as many of the asked as are free, and says how many.
fn give(problem: &Problem, at: usize, asked: u32, numbers: &mut [u32], held: &mut Held) -> u32 {
    let given = asked.min(held.free(problem, &problem.links[at]).unwrap_or(0));
    if given > 0 {
        held.add(&problem.links[at], given);
        numbers[at] += given;
    }
    given
}
