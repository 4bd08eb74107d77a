//! What is gathered against trying every set, and the limits.

use super::*;
use crate::plan::assign::{Suit, plan_assignment};

/// Small, repeatable numbers: Knuth’s linear congruence (MMIX).
struct Dice(u64);

impl Dice {
    fn below(&mut self, most: usize) -> usize {
        self.0 =
            self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        usize::try_from(self.0 >> 33).unwrap() % most
    }

    fn number(&mut self, most: usize) -> u32 {
        u32::try_from(self.below(most)).unwrap()
    }

    fn want(&mut self, things: usize, moments: usize, most: usize) -> Want {
        let from = self.below(moments);
        let suits = (0..=self.below(3))
            .map(|_| Suit { thing: self.below(things), unsuitability: self.number(4) });
        let suits = suits.collect();
        let to = from + self.below(moments - from);
        Want { count: 1 + self.number(most), from, to, optional: self.below(9) == 0, suits }
    }

    fn session(&mut self, things: usize, moments: usize, most: usize) -> Vec<Want> {
        (0..=self.below(4)).map(|_| self.want(things, moments, most)).collect()
    }
}

/// Number, kinds and unsuitability, each thing at its worst.
fn score(sessions: &[Vec<Want>], counts: &[u32]) -> (u32, usize, u32) {
    let needed = || sessions.iter().flatten().filter(|want| !want.optional);
    let worst = |thing: usize| {
        let suits = needed().flat_map(|want| &want.suits).filter(|suit| suit.thing == thing);
        suits.map(|suit| suit.unsuitability).max().unwrap_or(0)
    };
    let kinds = counts.iter().filter(|count| **count > 0).count();
    let unsuitability = counts.iter().enumerate().map(|(thing, count)| worst(thing) * count);
    (counts.iter().sum(), kinds, unsuitability.sum())
}

/// Needed wants without what is reported as missing.
fn served_only(sessions: &[Vec<Want>], unserved: &[Unserved]) -> Vec<Vec<Want>> {
    let mut sessions = sessions.to_vec();
    for short in unserved {
        sessions[short.session][short.want].count -= short.missing;
    }
    for session in &mut sessions {
        session.retain(|want| !want.optional);
    }
    sessions
}

fn serves(sessions: &[Vec<Want>], counts: &[u32]) -> bool {
    sessions.iter().all(|wants| plan_assignment(wants, counts).missing_needed(wants) == 0)
}

fn by_trying_all(sessions: &[Vec<Want>], most: &[u32]) -> Option<(u32, usize, u32)> {
    let mut all: Vec<Vec<u32>> = vec![Vec::new()];
    for most in most {
        let with = |head: &Vec<u32>| {
            let longer = |number| head.iter().copied().chain([number]).collect();
            (0..=*most).map(longer).collect::<Vec<Vec<u32>>>()
        };
        all = all.iter().flat_map(with).collect();
    }
    let mut scored: Vec<_> = all.iter().map(|counts| (score(sessions, counts), counts)).collect();
    scored.sort();
    scored.into_iter().find(|(_, counts)| serves(sessions, counts)).map(|(score, _)| score)
}

#[test]
fn agrees_with_trying_all() {
    let mut dice = Dice(5);
    for round in 0..250 {
        let (things, moments) = (2 + dice.below(4), 1 + dice.below(4));
        let sessions: Vec<_> =
            (0..=dice.below(4)).map(|_| dice.session(things, moments, 2)).collect();
        let most: Vec<u32> = (0..things).map(|_| dice.number(5)).collect();
        let ours = plan_gather_once(&sessions, &most);
        let sessions = served_only(&sessions, &ours.unserved);
        assert!(ours.is_proven && ours.is_best_of_smallest && serves(&sessions, &ours.counts));
        assert_eq!(ours.number(), ours.at_least);
        let theirs = by_trying_all(&sessions, &most);
        assert_eq!(Some(score(&sessions, &ours.counts)), theirs, "{round}: {sessions:?} {most:?}");
    }
}

#[test]
fn one_thing_serves_many_sessions() {
    let want = |suits: &[(usize, u32)]| Want {
        count: 2,
        from: 0,
        to: 3,
        optional: false,
        suits: suits.iter().map(|(thing, u)| Suit { thing: *thing, unsuitability: *u }).collect(),
    };
    let sessions = [vec![want(&[(0, 0), (2, 1)])], vec![want(&[(1, 0), (2, 2)])]];
    let ours = plan_gather_once(&sessions, &[9, 9, 9]);
    assert_eq!((ours.counts, ours.unserved, ours.at_least), (vec![0, 0, 2], vec![], 2));
}

#[test]
fn of_things_alike_the_most_suitable_is_gathered() {
    let suits = vec![Suit { thing: 0, unsuitability: 3 }, Suit { thing: 1, unsuitability: 1 }];
    let want = Want { count: 2, from: 0, to: 0, optional: false, suits };
    assert_eq!(plan_gather_once(&[vec![want.clone()]], &[2, 2]).counts, [0, 2]);
    // Two of one kind are less to look for than one each.
    assert_eq!(plan_gather_once(&[vec![want]], &[2, 1]).counts, [2, 0]);
}

#[test]
fn reports_what_nothing_can_serve() {
    let suits = vec![Suit { thing: 0, unsuitability: 0 }];
    let want = Want { count: 3, from: 0, to: 0, optional: false, suits };
    let none = Want { count: 1, suits: vec![Suit { thing: 8, unsuitability: 0 }], ..want.clone() };
    let ours = plan_gather_once(&[vec![none, want]], &[2]);
    let short = |want, missing| Unserved { session: 0, want, missing };
    assert_eq!(ours.unserved, [short(0, 1), short(1, 1)]);
    assert_eq!((ours.counts, ours.is_proven), (vec![2], true));
}

#[test]
fn a_hostile_pack_ends_with_a_set_that_serves() {
    let mut dice = Dice(2);
    let sessions: Vec<_> = (0..60).map(|_| dice.session(25, 6, 20)).collect();
    let most: Vec<u32> = (0..25).map(|_| dice.number(60)).collect();
    let ours = plan_gather_once(&sessions, &most);
    assert!(serves(&served_only(&sessions, &ours.unserved), &ours.counts));
    assert!(ours.at_least <= ours.number());
}
