//! Every thing that the sessions of a pack can use, numbered once for all homes: what suits each need, what a
//! home has of it, and what the school can lend.

use std::collections::BTreeMap;

use super::model::WantModel;
use crate::homes::Home;
use crate::pack::{Figures, misfits};
use crate::pack::{Need, Pack, Session, Substitute};
use crate::plan::HomeThings;
use crate::plan::assign::Suit;

/// What an unknown mass or size costs where a limit asks for one: as much as ten places further down the list,
/// as in the plan for a usual home.
const UNKNOWN: u32 = 10;

/// More than any session asks for.
const ENOUGH: u32 = 1000;

/// The things of a pack.
#[derive(Clone, Debug, Default)]
pub struct Cupboard {
    by_name: BTreeMap<String, usize>,
    things: Vec<Shelved>,
}

#[derive(Clone, Debug)]
struct Shelved {
    name: String,
    plural: String,
    at_home: Option<u32>,
    /// Every home has it.
    is_household: bool,
    /// The school’s own, which it can lend or post.
    is_lent: bool,
}

impl Cupboard {
    /// Every thing that any session of a pack can use.
    pub fn of_pack(pack: &Pack) -> Self {
        let mut cupboard = Self::default();
        for session in &pack.sessions {
            cupboard.wants_of(session);
        }
        cupboard
    }

    /// Numbers the things of one more session and gives its wants.
    pub(super) fn wants_of(&mut self, session: &Session) -> Vec<WantModel> {
        let want = |need: &Need| WantModel {
            count: need.count,
            optional: need.optional,
            suits: self.suits_of(need),
        };
        session.needs.iter().map(want).collect()
    }

    /// The thing itself, then what can stand in; what doesn’t suit is left out.
    fn suits_of(&mut self, need: &Need) -> Vec<Suit> {
        let own = self.shelve_own(need);
        let is_fit = need.thing.as_ref().is_none_or(|thing| {
            misfits(&need.limits, Figures::of_own(thing, &need.limits)).is_empty()
                && (!need.is_weight() || is_weighed(need, thing.mass.is_some()))
        });
        let mut suits = Vec::from_iter(is_fit.then_some(Suit { thing: own, unsuitability: 0 }));
        for (substitute, place) in need.substitutes.iter().zip(1_u32..) {
            let thing = self.shelve(substitute);
            if suits_need(need, substitute) && thing != own {
                let unsuitability = place + UNKNOWN * unknown_figures(need, substitute);
                suits.push(Suit { thing, unsuitability });
            }
        }
        suits
    }

    fn shelve_own(&mut self, need: &Need) -> usize {
        let index = self.index_of(&need.name, &need.plural);
        let thing = &mut self.things[index];
        thing.is_household |= need.is_household();
        thing.is_lent |= need.thing.is_some() && !need.is_household();
        thing.at_home = thing.at_home.or(need.thing.as_ref().and_then(|thing| thing.at_home));
        index
    }

    fn shelve(&mut self, substitute: &Substitute) -> usize {
        let index = self.index_of(&substitute.thing, &substitute.plural);
        let known = &mut self.things[index].at_home;
        *known = match (*known, substitute.at_home) {
            (Some(a), Some(b)) => Some(a.min(b)),
            (a, b) => a.or(b),
        };
        index
    }

    fn index_of(&mut self, name: &str, plural: &str) -> usize {
        let next = self.things.len();
        let index = *self.by_name.entry(name.to_lowercase()).or_insert(next);
        if index == next {
            let (name, plural) = (name.to_owned(), plural.to_owned());
            let (is_household, is_lent) = (false, false);
            self.things.push(Shelved { name, plural, at_home: None, is_household, is_lent });
        }
        index
    }

    /// The number of a thing by its name or plural, in whatever letters. Where no plural is known, one with
    /// an s at the end of a word counts too.
    pub fn find(&self, name: &str) -> Option<usize> {
        let name = name.to_lowercase();
        let is_so = |thing: &Shelved| thing.plural.to_lowercase() == name;
        let plain = without_endings(&name);
        let is_alike = |thing: &Shelved| without_endings(&thing.name.to_lowercase()) == plain;
        let position = |is: &dyn Fn(&Shelved) -> bool| self.things.iter().position(is);
        let known = self.by_name.get(&name).copied();
        known.or_else(|| position(&is_so)).or_else(|| position(&is_alike))
    }

    pub fn names(&self) -> impl Iterator<Item = &str> {
        self.things.iter().map(|thing| thing.name.as_str())
    }

    /// What a home need not be asked about.
    pub fn is_household(&self, thing: usize) -> bool {
        self.things[thing].is_household
    }

    /// What a home has. A thing without a number counts as many as a usual home has, or one.
    pub(super) fn stock_of(&self, home: &Home) -> Vec<u32> {
        let usual = |thing: &Shelved| {
            if thing.is_household { thing.at_home.unwrap_or(ENOUGH) } else { 0 }
        };
        let mut stock: Vec<u32> = self.things.iter().map(usual).collect();
        for owned in &home.things {
            let Some(thing) = self.find(&owned.name) else { continue };
            let usual = self.things[thing].at_home.unwrap_or(1);
            stock[thing] = owned.count.unwrap_or(usual);
        }
        stock
    }

    /// How many of each thing the school can lend one home.
    pub(super) fn lendable(&self) -> Vec<u32> {
        self.things.iter().map(|thing| if thing.is_lent { ENOUGH } else { 0 }).collect()
    }

    pub fn counted(&self, thing: usize, count: u32) -> HomeThings {
        let shelved = &self.things[thing];
        HomeThings { name: shelved.name.clone(), plural: shelved.plural.clone(), count }
    }
}

fn without_endings(name: &str) -> String {
    name.split_whitespace().map(|word| word.trim_end_matches('s')).collect::<Vec<_>>().join(" ")
}

/// A weight is safe only where both what is asked and what is there are known.
fn is_weighed(need: &Need, is_known: bool) -> bool {
    need.limits.mass.is_some() && is_known
}

fn suits_need(need: &Need, substitute: &Substitute) -> bool {
    misfits(&need.limits, Figures::of(substitute)).is_empty()
        && (!need.is_weight() || is_weighed(need, substitute.mass.is_some()))
}

fn unknown_figures(need: &Need, substitute: &Substitute) -> u32 {
    u32::from(need.limits.mass.is_some() && substitute.mass.is_none())
        + u32::from(need.limits.size.is_some() && substitute.size.is_none())
}
