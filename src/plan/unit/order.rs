//! The best order of a unit’s sessions, where the teacher leaves it open.
//!
//! Places stand in the order of time, each with its day; some hold a session already. The others are filled so
//! that, in this order of weight: the fewest sessions come before their ground; the fewest vigorous days follow
//! one on the other; the fewest sessions are done twice in a row, since practice that is spread out lasts longer
//! (Cepeda and others 2006); the fewest things are got out and put back from one session to the next; and the
//! least active time falls away from one session to the next, so that effort builds up. Of several best orders the one
//! nearest the teacher’s list counts: the first place holds the earliest possible of the list, then the second.
//!
//! Exact, by dynamic programming over which sessions are placed and which was last (Held and Karp 1962).

use std::collections::BTreeSet;
use std::ops::Add;

/// With more open sessions than this the teacher’s own order is kept: the sets to look at double with each.
pub const MOST_OPEN: usize = 13;

/// A session to be placed.
#[derive(Clone, Debug, Default)]
pub struct OrderItem {
    /// Which session it is, by a number of the caller’s.
    pub session: usize,
    pub is_vigorous: bool,
    /// Things it needs, by numbers of the caller’s.
    pub things: BTreeSet<usize>,
    /// Seconds of moderate and vigorous work.
    pub active: u32,
    /// For each session it builds on that is in the unit: the items that are that session. One of them
    /// must come before.
    pub grounds: Vec<Vec<usize>>,
}

/// A place in time.
#[derive(Clone, Copy, Debug)]
pub struct OrderPlace {
    /// Counted in days from any one day on.
    pub day: i32,
    /// The item that stands here already.
    pub fixed: Option<usize>,
}

/// What an order costs; compared from the first figure on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct OrderCost {
    /// Grounds that come later than what builds on them.
    pub grounds_later: u32,
    /// Vigorous days that follow directly on another.
    pub vigorous_running: u32,
    /// Sessions that are followed by themselves.
    pub same_running: u32,
    /// Things got out or put back between one session and the next.
    pub things_changed: u32,
    /// Seconds of active time that fall away from one session to the next, added up.
    pub active_lost: u32,
}

impl Add for OrderCost {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            grounds_later: self.grounds_later + other.grounds_later,
            vigorous_running: self.vigorous_running + other.vigorous_running,
            same_running: self.same_running + other.same_running,
            things_changed: self.things_changed + other.things_changed,
            active_lost: self.active_lost.saturating_add(other.active_lost),
        }
    }
}

/// An order and its cost.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Order {
    /// The item of each place.
    pub items: Vec<usize>,
    pub cost: OrderCost,
    /// No other order costs less.
    pub is_best: bool,
}

/// Fills the open places. There are as many items as places, and each fixed place names an item of its own.
pub fn plan_order(items: &[OrderItem], places: &[OrderPlace]) -> Order {
    let mut search = Search::new(items, places);
    let is_best = search.open.len() <= MOST_OPEN;
    let chosen = if is_best { search.choose() } else { search.as_listed() };
    let cost = search.cost_of(&chosen);
    Order { items: chosen, cost, is_best }
}

struct Search<'p> {
    items: &'p [OrderItem],
    places: &'p [OrderPlace],
    /// Items without a place, as they are listed.
    open: Vec<usize>,
    /// The bit of an open item, by item.
    bits: Vec<Option<usize>>,
    /// The place of a fixed item, by item.
    fixed_at: Vec<Option<usize>>,
    /// What it costs to do one item after another, but for what depends on days and grounds; empty where
    /// the order is kept.
    pairs: Vec<OrderCost>,
    /// The least cost from an open place on, by the open items placed and the last of them.
    known: Vec<Option<OrderCost>>,
}

impl<'p> Search<'p> {
    fn new(items: &'p [OrderItem], places: &'p [OrderPlace]) -> Self {
        let mut fixed_at = vec![None; items.len()];
        for (place, held) in places.iter().enumerate() {
            if let Some(item) = held.fixed {
                fixed_at[item] = Some(place);
            }
        }
        let open: Vec<usize> = (0..items.len()).filter(|item| fixed_at[*item].is_none()).collect();
        let mut bits = vec![None; items.len()];
        for (bit, item) in open.iter().enumerate() {
            bits[*item] = Some(bit);
        }
        let size = if open.len() <= MOST_OPEN { (1 << open.len()) * (open.len() + 1) } else { 0 };
        let pairs = items.iter().flat_map(|one| items.iter().map(|other| pair_cost(one, other)));
        let pairs = if size > 0 { pairs.collect() } else { Vec::new() };
        Self { items, places, open, bits, fixed_at, pairs, known: vec![None; size] }
    }

    /// Open items in the order of the list.
    fn as_listed(&self) -> Vec<usize> {
        let mut open = self.open.iter();
        let of = |place: &OrderPlace| place.fixed.or_else(|| open.next().copied());
        self.places.iter().filter_map(of).collect()
    }

    fn cost_of(&self, order: &[usize]) -> OrderCost {
        let mut placed = 0;
        let mut cost = OrderCost::default();
        for (place, item) in order.iter().enumerate() {
            let before = place.checked_sub(1).map(|before| order[before]);
            cost = cost + self.step(before, *item, place, placed);
            placed |= self.bits[*item].map_or(0, |bit| 1_u64 << bit.min(63));
        }
        cost
    }

    /// Goes through the places, each time with the first item of the list that keeps the cost least.
    fn choose(&mut self) -> Vec<usize> {
        let mut chosen: Vec<usize> = Vec::with_capacity(self.places.len());
        let mut placed = 0;
        for place in 0..self.places.len() {
            let before = chosen.last().copied();
            let item = self.places[place].fixed.or_else(|| self.best_at(place, placed, before));
            let Some(item) = item else { break };
            placed |= self.bits[item].map_or(0, |bit| 1 << bit);
            chosen.push(item);
        }
        chosen
    }

    fn best_at(&mut self, place: usize, placed: u64, before: Option<usize>) -> Option<usize> {
        let open: Vec<usize> = self.still_open(placed).collect();
        open.into_iter().min_by_key(|item| self.cost_with(place, placed, before, *item))
    }

    fn still_open(&self, placed: u64) -> impl Iterator<Item = usize> + use<'_, 'p> {
        let open = self.open.iter().enumerate();
        open.filter(move |(bit, _)| placed & (1 << bit) == 0).map(|(_, item)| *item)
    }

    fn cost_with(
        &mut self,
        place: usize,
        placed: u64,
        before: Option<usize>,
        item: usize,
    ) -> OrderCost {
        let step = self.step(before, item, place, placed);
        let placed = placed | self.bits[item].map_or(0, |bit| 1 << bit);
        step + self.least_from(place + 1, placed, Some(item))
    }

    /// The least cost from a place on.
    fn least_from(&mut self, place: usize, placed: u64, before: Option<usize>) -> OrderCost {
        let Some(held) = self.places.get(place) else { return OrderCost::default() };
        if let Some(item) = held.fixed {
            return self.cost_with(place, placed, before, item);
        }
        let last = before.and_then(|item| self.bits[item]).unwrap_or(self.open.len());
        let sets = usize::try_from(placed).unwrap_or(usize::MAX);
        let key = sets * (self.open.len() + 1) + last;
        if let Some(known) = self.known[key] {
            return known;
        }
        let open: Vec<usize> = self.still_open(placed).collect();
        let costs = open.into_iter().map(|item| self.cost_with(place, placed, before, item));
        let least = costs.min().unwrap_or_default();
        self.known[key] = Some(least);
        least
    }

    /// What it costs to do an item at a place after the one before.
    fn step(&self, before: Option<usize>, item: usize, place: usize, placed: u64) -> OrderCost {
        let here = &self.items[item];
        let is_placed = |other: &usize| match self.bits[*other] {
            Some(bit) => placed & (1_u64 << bit.min(63)) != 0,
            None => self.fixed_at[*other].is_some_and(|at| at < place),
        };
        let later = here.grounds.iter().filter(|ground| !ground.iter().any(is_placed)).count();
        let grounds_later = u32::try_from(later).unwrap_or(u32::MAX);
        let Some(before) = before else {
            return OrderCost { grounds_later, ..OrderCost::default() };
        };
        let is_next_day = self.places[place].day - self.places[place - 1].day == 1;
        let is_hard = self.items[before].is_vigorous && here.is_vigorous;
        OrderCost {
            grounds_later,
            vigorous_running: u32::from(is_next_day && is_hard),
            ..self.pair(before, item)
        }
    }
}

impl Search<'_> {
    fn pair(&self, before: usize, item: usize) -> OrderCost {
        let known = self.pairs.get(before * self.items.len() + item).copied();
        known.unwrap_or_else(|| pair_cost(&self.items[before], &self.items[item]))
    }
}

fn pair_cost(earlier: &OrderItem, here: &OrderItem) -> OrderCost {
    let changed = earlier.things.symmetric_difference(&here.things).count();
    OrderCost {
        same_running: u32::from(earlier.session == here.session),
        things_changed: u32::try_from(changed).unwrap_or(u32::MAX),
        active_lost: earlier.active.saturating_sub(here.active),
        ..OrderCost::default()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn item(things: &[usize], active: u32) -> OrderItem {
        let session = things.len() * 1000 + active as usize;
        OrderItem {
            session,
            things: things.iter().copied().collect(),
            active,
            ..OrderItem::default()
        }
    }

    #[test]
    fn things_change_little_and_effort_builds_up() {
        // By hand: a–b–c changes {1}→{1,2}→{2}: 2 things; a–c–b changes 2 + 1; every other order as much or more,
        // and c–b–a changes 2 as well but loses 20 + 20 s.
        let items = [item(&[1], 60), item(&[2], 100), item(&[1, 2], 80)];
        let places = [0, 3, 7].map(|day| OrderPlace { day, fixed: None });
        let order = plan_order(&items, &places);
        assert_eq!(order.items, [0, 2, 1]);
        assert_eq!((order.cost.things_changed, order.cost.active_lost), (2, 0));
        assert!(order.is_best);
    }

    #[test]
    fn ground_comes_first_and_what_is_fixed_stays() {
        let mut items = [item(&[], 10), item(&[], 10), item(&[], 10)];
        items[0].grounds = vec![vec![2]];
        let mut places = [0, 1, 2].map(|day| OrderPlace { day, fixed: None });
        assert_eq!(plan_order(&items, &places).items, [1, 2, 0]);
        places[0].fixed = Some(0);
        let order = plan_order(&items, &places);
        assert_eq!((order.items, order.cost.grounds_later), (vec![0, 1, 2], 1));
    }
}
