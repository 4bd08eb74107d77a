//! A group of wants that get in each other’s way, in a form that is quick to reckon with.
//!
//! Things are numbered anew. Of all moments only those count, for each thing, in which some want that it suits
//! ends: whatever is held at a moment is still held when the first of it ends, so no moment asks for more than
//! one of these. A thing at such a moment is a place.
//! The three aims become one number, the cost, by weights that can't run into each other.

use std::collections::BTreeMap;

use super::conflict::{Span, conflicts};
use super::{Suit, Want};

/// Wide enough for every sum here, since numbers of things are held below [`MOST_IN_ALL`].
pub type Cost = i128;

/// More than any household holds; what is asked for beyond it is missing.
const MOST_IN_ALL: usize = 1 << 24;

/// One want of the group.
#[derive(Debug)]
pub struct Wanted {
    /// The index of the want in the question.
    pub name: usize,
    pub count: u32,
    /// The first and the last moment at which it is held.
    pub from: usize,
    pub to: usize,
    /// Its links, from `links.start` to before `links.end`, the most suitable first.
    pub links: std::ops::Range<usize>,
    /// The cost of one that is missing.
    pub missing: Cost,
}

/// A want and a thing that suits it.
#[derive(Debug)]
pub struct Link {
    pub want: usize,
    pub thing: usize,
    pub unsuitability: u32,
    /// The first and the last of the thing’s places at which the want holds it.
    pub first: usize,
    pub last: usize,
}

#[derive(Debug)]
pub struct Problem {
    pub wants: Vec<Wanted>,
    pub links: Vec<Link>,
    /// The indices of the things in the stock.
    pub things: Vec<usize>,
    pub stock: Vec<u32>,
    /// The links of each thing.
    pub links_of: Vec<Vec<usize>>,
    /// Things and moments, in order.
    pub places: Vec<(usize, usize)>,
}

impl Wanted {
    pub fn is_held(&self, moment: usize) -> bool {
        (self.from..=self.to).contains(&moment)
    }
}

impl Problem {
    /// The groups of a question. Wants that nothing suits are in none.
    pub fn of(wants: &[Want], stock: &[u32]) -> Vec<Self> {
        let suits: Vec<Vec<Suit>> = wants.iter().map(|want| suits_in(want, stock)).collect();
        let scarce = scarce_things(wants, &suits, stock);
        let shared: Vec<Vec<usize>> = suits.iter().map(|suits| shared_of(suits, &scarce)).collect();
        let spans: Vec<Span> =
            wants.iter().zip(&shared).map(|(want, things)| span_of(want, things)).collect();
        let can_be_served = |want: &usize| !suits[*want].is_empty() && wants[*want].count > 0;
        let mut groups = conflicts(&spans);
        for group in &mut groups {
            group.retain(can_be_served);
        }
        groups.retain(|group| !group.is_empty());
        groups.iter().map(|group| Self::of_group(group, wants, &suits, stock)).collect()
    }

    fn of_group(group: &[usize], wants: &[Want], suits: &[Vec<Suit>], stock: &[u32]) -> Self {
        let mut problem = Self::empty(group, suits, stock);
        let most = u32::try_from(MOST_IN_ALL / group.len()).unwrap_or(u32::MAX);
        for name in group.iter().copied() {
            let start = problem.links.len();
            problem.add_links(&suits[name]);
            let ((from, to), count) = (ordered(&wants[name]), wants[name].count.min(most));
            let links = start..problem.links.len();
            problem.wants.push(Wanted { name, count, from, to, links, missing: 0 });
        }
        problem.set_places();
        problem.weigh_missing(wants);
        problem
    }

    fn empty(group: &[usize], suits: &[Vec<Suit>], stock: &[u32]) -> Self {
        let mut things: Vec<usize> =
            group.iter().flat_map(|want| &suits[*want]).map(|suit| suit.thing).collect();
        things.sort_unstable();
        things.dedup();
        Self {
            wants: Vec::with_capacity(group.len()),
            links: Vec::new(),
            stock: things.iter().map(|thing| stock[*thing]).collect(),
            links_of: vec![Vec::new(); things.len()],
            places: Vec::new(),
            things,
        }
    }

    fn add_links(&mut self, suits: &[Suit]) {
        let want = self.wants.len();
        for suit in suits {
            let thing =
                self.things.binary_search(&suit.thing).expect("the things are of the group");
            self.links_of[thing].push(self.links.len());
            let unsuitability = suit.unsuitability;
            self.links.push(Link { want, thing, unsuitability, first: 0, last: 0 });
        }
    }

    fn set_places(&mut self) {
        let ends = self.links.iter().map(|link| (link.thing, self.wants[link.want].to));
        self.places = ends.collect();
        self.places.sort_unstable();
        self.places.dedup();
        for link in &mut self.links {
            let want = &self.wants[link.want];
            link.first = self.places.partition_point(|place| *place < (link.thing, want.from));
            link.last = self.places.partition_point(|place| *place < (link.thing, want.to));
        }
    }

    /// One missing optional thing outweighs all unsuitability, one missing needed thing all optional ones.
    fn weigh_missing(&mut self, wants: &[Want]) {
        let worst = self.links.iter().map(|link| Cost::from(link.unsuitability)).max().unwrap_or(0);
        let counts: Cost = self.wants.iter().map(|want| Cost::from(want.count)).sum();
        let optional = counts * worst + 1;
        let needed = optional * (counts + 1);
        for want in &mut self.wants {
            want.missing = if wants[want.name].optional { optional } else { needed };
        }
    }
}

/// What suits and is there, each thing once, the most suitable first.
fn suits_in(want: &Want, stock: &[u32]) -> Vec<Suit> {
    let mut least: BTreeMap<usize, u32> = BTreeMap::new();
    for suit in want.suits.iter().filter(|suit| stock.get(suit.thing).is_some_and(|n| *n > 0)) {
        let known = least.entry(suit.thing).or_insert(suit.unsuitability);
        *known = suit.unsuitability.min(*known);
    }
    let mut suits: Vec<Suit> =
        least.into_iter().map(|(thing, unsuitability)| Suit { thing, unsuitability }).collect();
    suits.sort_by_key(|suit| suit.unsuitability);
    suits
}

/// Whether all who want a thing could not take as many as they like of it.
fn scarce_things(wants: &[Want], suits: &[Vec<Suit>], stock: &[u32]) -> Vec<bool> {
    let mut asked = vec![0_u64; stock.len()];
    for (want, suits) in wants.iter().zip(suits) {
        for suit in suits {
            asked[suit.thing] += u64::from(want.count);
        }
    }
    asked.iter().zip(stock).map(|(asked, stock)| *asked > u64::from(*stock)).collect()
}

fn shared_of(suits: &[Suit], scarce: &[bool]) -> Vec<usize> {
    suits.iter().map(|suit| suit.thing).filter(|thing| scarce[*thing]).collect()
}

fn span_of<'a>(want: &Want, things: &'a [usize]) -> Span<'a> {
    let (from, to) = ordered(want);
    Span { from, to, things }
}

fn ordered(want: &Want) -> (usize, usize) {
    (want.from.min(want.to), want.from.max(want.to))
}
