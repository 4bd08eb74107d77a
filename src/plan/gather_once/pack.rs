//! The needs of a whole pack: what can't be met is set apart, the rest is boiled down to pieces that have
//! nothing to do with each other.

use std::collections::{BTreeMap, BTreeSet};

use super::Unserved;
use super::demand::{Asked, Demand};
use super::replace::{Bounds, leave_out_replaced};
use crate::plan::assign::{Effort, Want, assign_within};

/// The most work that finding out what can't be served may cost for one session.
const STEPS_OF_SESSION: u64 = 2_000_000;

/// The needs of a pack.
pub struct PackNeeds {
    pub unserved: Vec<Unserved>,
    /// Whether no more than must be is unserved.
    pub is_proven: bool,
    pub pieces: Vec<Piece>,
}

/// Demands that hang together through the things that suit them; things are numbered anew.
#[derive(Debug)]
pub struct Piece {
    /// The indices of the things in the question.
    pub things: Vec<usize>,
    pub demands: Vec<Demand>,
    /// The most of each thing that can be found and used.
    pub most: Vec<u32>,
    /// The worst unsuitability of each thing.
    pub unsuitability: Vec<u32>,
}

impl PackNeeds {
    pub fn of(sessions: &[Vec<Want>], most: &[u32], effort: &mut Effort) -> Self {
        let (mut unserved, mut is_proven) = (Vec::new(), true);
        let mut seen: BTreeMap<Vec<Asked>, Vec<u32>> = BTreeMap::new();
        let mut demands = BTreeSet::new();
        for (session, wants) in sessions.iter().enumerate() {
            let (names, asked) = asked_by(wants, most);
            let missing = seen.entry(asked).or_insert_with_key(|asked| {
                let (missing, is_least) = missing_of(asked, most, effort);
                is_proven &= is_least;
                demands.extend(Demand::of_session(&servable(asked, &missing)));
                missing
            });
            let short = names.into_iter().zip(missing).filter(|(_, missing)| **missing > 0);
            unserved.extend(short.map(|(want, missing)| Unserved {
                session,
                want,
                missing: *missing,
            }));
        }
        let bounds = Bounds { most: most.to_vec(), unsuitability: worst(sessions, most.len()) };
        let (demands, bounds) = leave_out_replaced(&demands, bounds);
        Self { unserved, is_proven, pieces: pieces(largest(demands), &bounds) }
    }
}

/// The needed wants of a session, with their indices.
fn asked_by(wants: &[Want], most: &[u32]) -> (Vec<usize>, Vec<Asked>) {
    let needed = wants.iter().enumerate().filter(|(_, want)| !want.optional && want.count > 0);
    needed.map(|(name, want)| (name, asked_of(want, most))).unzip()
}

fn asked_of(want: &Want, most: &[u32]) -> Asked {
    let found = |thing: &usize| most.get(*thing).is_some_and(|most| *most > 0);
    let mut things: Vec<usize> = want.suits.iter().map(|suit| suit.thing).filter(found).collect();
    things.sort_unstable();
    things.dedup();
    let (from, to) = (want.from.min(want.to), want.from.max(want.to));
    Asked { from, to, things, count: want.count }
}

/// What is missing of each want even if everything is gathered, and whether that is sure to be least.
fn missing_of(asked: &[Asked], most: &[u32], effort: &mut Effort) -> (Vec<u32>, bool) {
    let wants: Vec<Want> = asked.iter().map(Asked::want).collect();
    let assignment = effort.lend(STEPS_OF_SESSION, |effort| assign_within(&wants, most, effort));
    let missing: Vec<u32> = assignment.served.iter().map(|served| served.missing).collect();
    let is_least = assignment.is_proven || missing.iter().all(|missing| *missing == 0);
    (missing, is_least)
}

fn servable(asked: &[Asked], missing: &[u32]) -> Vec<Asked> {
    let both = asked.iter().zip(missing);
    both.map(|(asked, missing)| Asked { count: asked.count - missing, ..asked.clone() }).collect()
}

/// How badly each thing suits at its worst.
fn worst(sessions: &[Vec<Want>], things: usize) -> Vec<u32> {
    let mut worst = vec![0; things];
    let needed = sessions.iter().flatten().filter(|want| !want.optional);
    for suit in needed.flat_map(|want| &want.suits).filter(|suit| suit.thing < things) {
        worst[suit.thing] = suit.unsuitability.max(worst[suit.thing]);
    }
    worst
}

/// Leaves out demands that are met whenever another is.
fn largest(demands: BTreeSet<Demand>) -> Vec<Demand> {
    let mut kept: Vec<Demand> = Vec::new();
    let mut shape_begins = 0;
    let mut all: Vec<Demand> = demands.into_iter().collect();
    all.sort_by(|one, other| one.shape().cmp(&other.shape()));
    for demand in all {
        if kept.get(shape_begins).is_some_and(|first| first.shape() != demand.shape()) {
            shape_begins = kept.len();
        }
        if kept[shape_begins..].iter().all(|other| !other.asks_as_much_as(&demand)) {
            let smaller = kept.split_off(shape_begins).into_iter();
            kept.extend(smaller.filter(|other| !demand.asks_as_much_as(other)));
            kept.push(demand);
        }
    }
    kept
}

fn pieces(demands: Vec<Demand>, bounds: &Bounds) -> Vec<Piece> {
    let mut groups: Vec<(BTreeSet<usize>, Vec<Demand>)> = Vec::new();
    for demand in demands {
        let mut things: BTreeSet<usize> =
            demand.asked.iter().flat_map(|asked| &asked.things).copied().collect();
        let (touched, apart): (Vec<_>, Vec<_>) =
            groups.into_iter().partition(|(others, _)| !others.is_disjoint(&things));
        groups = apart;
        let mut joined = Vec::new();
        for (others, demands) in touched {
            things.extend(others);
            joined.extend(demands);
        }
        joined.push(demand);
        groups.push((things, joined));
    }
    groups.into_iter().map(|(things, demands)| Piece::of(things, demands, bounds)).collect()
}

impl Piece {
    fn of(things: BTreeSet<usize>, mut demands: Vec<Demand>, bounds: &Bounds) -> Self {
        let things: Vec<usize> = things.into_iter().collect();
        for thing in
            demands.iter_mut().flat_map(|d| &mut d.asked).flat_map(|asked| &mut asked.things)
        {
            *thing = things.binary_search(thing).expect("the things are those of the demands");
        }
        demands.sort_unstable();
        let most = things.iter().map(|thing| bounds.most[*thing]).collect();
        let unsuitability = things.iter().map(|thing| bounds.unsuitability[*thing]).collect();
        Self { things, demands, most, unsuitability }
    }
}
