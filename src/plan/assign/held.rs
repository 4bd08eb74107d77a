//! What is held of each thing at each of its places.

use super::problem::{Link, Problem};

#[derive(Clone, Debug)]
pub struct Held {
    numbers: Vec<u64>,
}

impl Held {
    /// Adds up numbers of every link.
    pub fn of(problem: &Problem, numbers: &[u32]) -> Self {
        let mut held = Self { numbers: vec![0; problem.places.len()] };
        for (link, number) in problem.links.iter().zip(numbers).filter(|(_, number)| **number > 0) {
            held.add(link, *number);
        }
        held
    }

    pub fn add(&mut self, link: &Link, number: u32) {
        for held in &mut self.numbers[link.first..=link.last] {
            *held += u64::from(number);
        }
    }

    pub fn at(&self, place: usize) -> u64 {
        self.numbers[place]
    }

    /// How many of a link’s thing are free the whole time its want is held; none if too many are held.
    pub fn free(&self, problem: &Problem, link: &Link) -> Option<u32> {
        let most = self.numbers[link.first..=link.last].iter().max().copied().unwrap_or(0);
        let free = u64::from(problem.stock[link.thing]).checked_sub(most)?;
        u32::try_from(free).ok()
    }
}
