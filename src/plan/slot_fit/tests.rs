//! Fits against trying every choice, the ties and the limits.

use std::cmp::Reverse;

use super::*;

/// Small, repeatable numbers: Knuth’s linear congruence (MMIX).
struct Dice(u64);

impl Dice {
    fn below(&mut self, most: u32) -> u32 {
        self.0 =
            self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        u32::try_from(self.0 >> 33).unwrap() % most
    }
}

fn seconds(seconds: u32) -> Duration {
    Duration::from_seconds(seconds)
}

fn offer(least: u32, step: u32, count: u32, essential: bool, worth: u32) -> PartOffer {
    let lengths = Lengths { least: seconds(least), step: seconds(step), count };
    PartOffer { lengths, essential, worth }
}

/// Every choice of every part, best first by the rule in [`plan_slot_fit`].
fn by_trying_all(parts: &[PartOffer], slot: u32) -> Option<Vec<Option<u32>>> {
    let mut all: Vec<Vec<Option<u32>>> = vec![Vec::new()];
    for part in parts {
        let lengths = (0..=part.lengths.count)
            .map(|k| Some(part.lengths.least.seconds() + k * part.lengths.step.seconds()));
        let options: Vec<_> = lengths.chain((!part.essential).then_some(None)).collect();
        let longer = |head: &Vec<_>| {
            let with = |option| head.iter().copied().chain([option]).collect::<Vec<_>>();
            options.iter().map(|option| with(*option)).collect::<Vec<_>>()
        };
        all = all.iter().flat_map(longer).collect();
    }
    all.retain(|choice| choice.iter().flatten().sum::<u32>() <= slot);
    all.into_iter().max_by_key(|choice| {
        let worth: u32 =
            parts.iter().zip(choice).map(|(part, c)| part.worth * c.unwrap_or(0)).sum();
        (worth, choice.iter().flatten().count(), choice.clone())
    })
}

fn random_offer(dice: &mut Dice, scale: u32) -> PartOffer {
    let (least, step) = (dice.below(12) * scale, dice.below(5) * scale);
    offer(least, step, dice.below(4), dice.below(4) == 0, 1 + dice.below(5))
}

#[test]
fn agrees_with_trying_all() {
    let mut dice = Dice(1);
    for round in 0..600 {
        let parts: Vec<_> =
            (0..dice.below(6)).map(|_| random_offer(&mut dice, 1 + round % 7)).collect();
        let slot = dice.below(45 * (1 + round % 7));
        let ours = plan_slot_fit(&parts, seconds(slot)).ok();
        let ours = ours.map(|fit| {
            fit.choices.into_iter().map(|c| c.map(Duration::seconds)).collect::<Vec<_>>()
        });
        assert_eq!(ours, by_trying_all(&parts, slot), "{parts:?} in {slot}");
    }
}

#[test]
fn says_by_how_much_a_slot_is_too_short() {
    let parts = [offer(200, 0, 0, true, 1), offer(150, 30, 4, true, 1), offer(60, 0, 0, false, 5)];
    assert_eq!(plan_slot_fit(&parts, seconds(300)), Err(TooShort { by: seconds(50) }));
    assert_eq!(plan_slot_fit(&parts, seconds(350)).unwrap().unfilled, Duration::ZERO);
}

#[test]
fn keeps_more_parts_among_equals_and_then_the_earlier() {
    let parts = [offer(120, 0, 0, false, 1), offer(60, 0, 0, false, 1), offer(60, 0, 0, false, 1)];
    let fit = plan_slot_fit(&parts, seconds(120)).unwrap();
    assert_eq!(fit.choices, [None, Some(seconds(60)), Some(seconds(60))]);
    let fit = plan_slot_fit(&parts[1..], seconds(60)).unwrap();
    assert_eq!(fit.choices, [Some(seconds(60)), None]);
    let alike = [offer(60, 30, 4, true, 2), offer(60, 30, 4, true, 2)];
    let fit = plan_slot_fit(&alike, seconds(180)).unwrap();
    assert_eq!(fit.choices, [Some(seconds(120)), Some(seconds(60))]);
}

#[test]
fn several_slots_agree_with_one_by_one() {
    let mut dice = Dice(7);
    let parts: Vec<_> = (0..8).map(|_| random_offer(&mut dice, 15)).collect();
    let slots: Vec<_> = (0..40).map(|n| seconds(n * 37)).collect();
    let each: Vec<_> = slots.iter().map(|slot| plan_slot_fit(&parts, *slot)).collect();
    assert_eq!(plan_slot_fits(&parts, &slots), each);
    let mut descending = slots.clone();
    descending.sort_by_key(|slot| Reverse(*slot));
    assert!(plan_slot_fits(&parts, &descending).into_iter().rev().eq(each));
}

#[test]
fn nothing_to_fit_leaves_the_slot_unfilled() {
    let fit = plan_slot_fit(&[], seconds(600)).unwrap();
    assert_eq!((fit.total, fit.worth, fit.unfilled), (Duration::ZERO, 0, seconds(600)));
    let idle = [offer(0, 0, 9, false, 3), offer(0, 0, 0, true, 3)];
    let fit = plan_slot_fit(&idle, Duration::ZERO).unwrap();
    assert_eq!(fit.choices, [Some(Duration::ZERO), Some(Duration::ZERO)]);
}
