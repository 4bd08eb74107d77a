//! Assignments against trying every one, and the limits.

use super::*;

/// Small, repeatable numbers: Knuth’s linear congruence (MMIX).
struct Dice(u64);

impl Dice {
    fn below(&mut self, most: u32) -> u32 {
        self.0 =
            self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        u32::try_from(self.0 >> 33).unwrap() % most
    }

    fn index(&mut self, most: usize) -> usize {
        self.below(u32::try_from(most).unwrap()) as usize
    }

    fn want(&mut self, things: usize, moments: usize, most: u32) -> Want {
        let from = self.index(moments);
        let suits = (0..things).filter_map(|thing| {
            let unsuitability = self.below(5);
            (self.below(2) == 0).then_some(Suit { thing, unsuitability })
        });
        let suits = suits.collect();
        let to = from + self.index(moments - from);
        Want { count: 1 + self.below(most), from, to, optional: self.below(4) == 0, suits }
    }
}

type Score = (u64, u64, u64);

/// The best score over every way to hand things out one at a time.
fn by_trying_all(wants: &[Want], stock: &[u32]) -> Score {
    let singles: Vec<&Want> =
        wants.iter().flat_map(|want| (0..want.count).map(move |_| want)).collect();
    try_from(&singles, &mut Vec::new(), stock)
}

fn try_from<'a>(singles: &[&'a Want], given: &mut Vec<(&'a Want, usize)>, stock: &[u32]) -> Score {
    let Some((want, later)) = singles.split_first() else { return (0, 0, 0) };
    let (needed, optional, sum) = try_from(later, given, stock);
    let mut best = (needed + u64::from(!want.optional), optional + u64::from(want.optional), sum);
    for suit in &want.suits {
        given.push((want, suit.thing));
        if keeps_stock(given, stock) {
            let (needed, optional, sum) = try_from(later, given, stock);
            best = best.min((needed, optional, sum + u64::from(suit.unsuitability)));
        }
        given.pop();
    }
    best
}

fn keeps_stock(given: &[(&Want, usize)], stock: &[u32]) -> bool {
    (0..8).all(|moment| {
        let held = given.iter().filter(|(want, _)| (want.from..=want.to).contains(&moment));
        let held: Vec<usize> = held.map(|(_, thing)| *thing).collect();
        (0..stock.len()).all(|t| held.iter().filter(|h| **h == t).count() <= stock[t] as usize)
    })
}

fn score(wants: &[Want], assignment: &Assignment) -> Score {
    let missing = (assignment.missing_needed(wants), assignment.missing_optional(wants));
    (missing.0, missing.1, assignment.unsuitability)
}

/// Whether nothing is two things at once, and every want’s things and missing ones are its count.
fn is_possible(wants: &[Want], stock: &[u32], assignment: &Assignment) -> bool {
    let counts = wants.iter().zip(&assignment.served).all(|(want, served)| {
        let given: u32 = served.things.iter().map(|(_, number)| number).sum();
        let suits = |thing| want.suits.iter().any(|suit| suit.thing == thing);
        given + served.missing == want.count && served.things.iter().all(|(thing, _)| suits(*thing))
    });
    let most = wants.iter().map(|want| want.to).max().unwrap_or(0);
    counts
        && (0..=most).all(|moment| {
            (0..stock.len()).all(|thing| {
                let here = wants.iter().zip(&assignment.served);
                let here = here.filter(|(want, _)| (want.from..=want.to).contains(&moment));
                let held =
                    here.flat_map(|(_, served)| &served.things).filter(|(name, _)| *name == thing);
                held.map(|(_, number)| number).sum::<u32>() <= stock[thing]
            })
        })
}

#[test]
fn agrees_with_trying_all() {
    let mut dice = Dice(3);
    for _ in 0..400 {
        let (things, moments) = (1 + dice.index(4), 1 + dice.index(5));
        let wants: Vec<_> = (0..dice.below(5)).map(|_| dice.want(things, moments, 2)).collect();
        let stock: Vec<u32> = (0..things).map(|_| dice.below(3)).collect();
        let ours = plan_assignment(&wants, &stock);
        assert!(ours.is_proven && is_possible(&wants, &stock, &ours), "{wants:?} from {stock:?}");
        assert_eq!(score(&wants, &ours), by_trying_all(&wants, &stock), "{wants:?} from {stock:?}");
    }
}

#[test]
fn a_thing_can_be_used_again_later_but_not_meanwhile() {
    let want = |from, to| Want {
        count: 1,
        from,
        to,
        optional: false,
        suits: vec![Suit { thing: 0, unsuitability: 0 }],
    };
    assert_eq!(plan_assignment(&[want(0, 1), want(2, 3)], &[1]).served[1].missing, 0);
    let meanwhile = plan_assignment(&[want(0, 2), want(2, 3)], &[1]);
    assert_eq!(meanwhile.missing_needed(&[want(0, 2), want(2, 3)]), 1);
}

#[test]
fn needed_goes_before_optional_and_both_before_suitability() {
    let suit = |thing, unsuitability| Suit { thing, unsuitability };
    let optional =
        Want { count: 1, from: 0, to: 0, optional: true, suits: vec![suit(0, 0), suit(1, 90)] };
    let needed = Want { optional: false, suits: vec![suit(0, 7)], ..optional.clone() };
    let ours = plan_assignment(&[optional, needed], &[1, 1]);
    assert_eq!(ours.served[0].things, [(1, 1)]);
    assert_eq!(ours.served[1].things, [(0, 1)]);
    assert_eq!(ours.unsuitability, 97);
}

#[test]
fn a_hostile_question_ends_and_is_possible() {
    let mut dice = Dice(11);
    let wants: Vec<_> = (0..50).map(|_| dice.want(30, 40, 30)).collect();
    let stock: Vec<u32> = (0..30).map(|_| dice.below(20)).collect();
    let ours = plan_assignment(&wants, &stock);
    assert!(is_possible(&wants, &stock, &ours));
    assert_eq!(ours, plan_assignment(&wants, &stock));
}

#[test]
fn absurd_counts_do_no_harm() {
    let suits =
        vec![Suit { thing: 0, unsuitability: u32::MAX }, Suit { thing: 9, unsuitability: 0 }];
    let want = Want { count: u32::MAX, from: 3, to: 1, optional: false, suits };
    let wants = [want.clone(), Want { optional: true, ..want }];
    let ours = plan_assignment(&wants, &[u32::MAX]);
    assert!(ours.served.iter().all(|served| !served.things.is_empty()));
    assert_eq!(plan_assignment(&wants, &[5]).missing_needed(&wants), u64::from(u32::MAX) - 5);
}
