//! The cupboard of a usual home: every household thing that sessions name, with how many there are.

use std::collections::BTreeMap;

use super::HomeThings;
use crate::pack::{Figures, Need, Session, Substitute, misfits};
use crate::plan::assign::{Suit, Want};

/// What an unknown mass or size costs where a limit asks for one: as much as ten places further
/// down the list. Our own choice: the teacher’s order counts first among things that are known.
const UNKNOWN: u32 = 10;

/// How many a home has of a thing that nothing is said of: enough for any session.
const ENOUGH: u32 = 1000;

/// Household things by name, in the order they are met.
#[derive(Debug, Default)]
pub struct Cupboard {
    by_name: BTreeMap<String, usize>,
    things: Vec<Shelved>,
}

#[derive(Debug)]
struct Shelved {
    name: String,
    plural: String,
    /// The fewest that are said to be at home.
    at_home: Option<u32>,
}

impl Cupboard {
    /// What a session asks for, with the household things that suit each need.
    pub fn wants_of(&mut self, session: &Session) -> Vec<Want> {
        let last = session.parts.len().saturating_sub(1);
        session.needs.iter().map(|need| self.want_of(need, last)).collect()
    }

    /// A need that names no part is held all through.
    fn want_of(&mut self, need: &Need, last: usize) -> Want {
        Want {
            count: need.count,
            from: need.parts.first().copied().unwrap_or(0),
            to: need.parts.last().copied().unwrap_or(last),
            optional: need.optional,
            suits: self.suits_of(need),
        }
    }

    /// The thing itself where every home has it or nothing can stand in; else its substitutes.
    fn suits_of(&mut self, need: &Need) -> Vec<Suit> {
        if need.is_household() || need.substitutes.is_empty() {
            let at_home = need.thing.as_ref().and_then(|thing| thing.at_home);
            let thing = self.shelve(&need.name, &need.plural, at_home);
            return vec![Suit { thing, unsuitability: 0 }];
        }
        let suitable = need.substitutes.iter().zip(0_u32..);
        let suitable = suitable
            .filter(|(substitute, _)| misfits(&need.limits, Figures::of(substitute)).is_empty());
        suitable
            .map(|(substitute, place)| Suit {
                thing: self.shelve(&substitute.thing, &substitute.plural, substitute.at_home),
                unsuitability: place + UNKNOWN * unknown_figures(need, substitute),
            })
            .collect()
    }

    fn shelve(&mut self, name: &str, plural: &str, at_home: Option<u32>) -> usize {
        let next = self.things.len();
        let index = *self.by_name.entry(name.to_owned()).or_insert(next);
        if index == next {
            self.things.push(Shelved { name: name.to_owned(), plural: plural.to_owned(), at_home });
        } else if let Some(fewer) = at_home {
            let known = self.things[index].at_home;
            self.things[index].at_home = Some(known.map_or(fewer, |known| known.min(fewer)));
        }
        index
    }

    /// How many there are of each.
    pub fn stock(&self) -> Vec<u32> {
        self.things.iter().map(|thing| thing.at_home.unwrap_or(ENOUGH)).collect()
    }

    pub fn counted(&self, thing: usize, count: u32) -> HomeThings {
        let shelved = &self.things[thing];
        HomeThings { name: shelved.name.clone(), plural: shelved.plural.clone(), count }
    }
}

fn unknown_figures(need: &Need, substitute: &Substitute) -> u32 {
    u32::from(need.limits.mass.is_some() && substitute.mass.is_none())
        + u32::from(need.limits.size.is_some() && substitute.size.is_none())
}
