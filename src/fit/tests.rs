//! Choices that can be told by hand; the rest is checked against integer programming from outside.

use super::*;
use crate::plan::assign::Suit;
use crate::plan::slot_fit::{Lengths, PartOffer};
use crate::quantity::Duration;

fn part(seconds: u32, essential: bool, uses: &[&[usize]]) -> PartModel {
    let lengths = Lengths::only(Duration::from_seconds(seconds));
    let versions = uses.iter().zip(0_u32..);
    PartModel {
        offer: PartOffer { lengths, essential, worth: 3 },
        is_main: !essential,
        versions: versions
            .map(|(uses, number)| Version { change: number.min(1), uses: uses.to_vec() })
            .collect(),
    }
}

fn want(count: u32, thing: usize) -> WantModel {
    WantModel { count, optional: false, suits: vec![Suit { thing, unsuitability: 0 }] }
}

/// A warm-up, two steps that want one thing each, and a cool-down.
fn model(stock: &[u32]) -> Model {
    let parts = vec![
        part(60, true, &[&[]]),
        part(120, false, &[&[0], &[]]),
        part(180, false, &[&[1]]),
        part(60, true, &[&[]]),
    ];
    let wants = vec![want(2, 0), want(1, 1)];
    Model { parts, wants, stock: stock.to_vec(), slot: Duration::from_seconds(420) }
}

#[test]
fn takes_another_version_where_a_thing_is_missing() {
    let choice = plan_choice(&model(&[1, 1])).unwrap();
    assert_eq!((choice.kept(), choice.changes), (4, 1));
    let choice = plan_choice(&model(&[2, 0])).unwrap();
    assert_eq!((choice.kept(), choice.changes, choice.parts[2]), (3, 0, None));
}

#[test]
fn a_warm_up_and_a_cool_down_alone_are_no_session() {
    let mut model = model(&[0, 0]);
    model.parts[1].versions.truncate(1);
    assert_eq!(plan_choice(&model), Err(Unfit));
}

#[test]
fn a_thing_is_not_in_two_hands_at_once() {
    let mut model = model(&[2, 0]);
    // Both steps want the same thing, and the first is still held when the second begins.
    model.wants[1] = want(1, 0);
    model.parts[3].versions[0].uses = vec![0];
    model.parts[1].versions.truncate(1);
    let choice = plan_choice(&model).unwrap();
    assert_eq!(choice.parts[1].is_some(), choice.parts[2].is_none());
}

#[test]
fn lends_the_fewest_that_do() {
    let mut model = model(&[1, 0]);
    model.parts[1].versions.truncate(1);
    let lending = plan_lending(&[model.clone()], &[9, 9]);
    assert_eq!((lending.number(), lending.is_proven), (1, true));
    let lending = plan_lending(&[model], &[0, 0]);
    assert_eq!((lending.number(), lending.possible), (0, vec![false]));
}
