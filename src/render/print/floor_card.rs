//! The card with a floor plan, and how it is set out with a tape.

use super::card::Said;
use super::card_type::CardType;
use super::drawings::place_drawing;
use super::sheets::{SheetSource, one};
use super::strip::{Column, Seat};
use crate::drawing::{Room, draw_floor_plan};
use crate::plan::SharedFloor;
use crate::prose::{Block, Marker, Run, plain_line};
use crate::render::phrases::comma;
use crate::render::plan_phrases::tape_sentence;
use crate::render::quantities::Said as _;
use crate::words::Filling;

/// What a floor’s card says: the plan, the parts it is for, the headroom, the steps with the tape.
pub fn floor_said(
    column: &mut Column<'_, '_>,
    shared: &SharedFloor<'_>,
    source: &SheetSource<'_>,
    kind: CardType,
) -> Said {
    let body = kind.words();
    let words = source.words;
    let floor = source.plans.space.floor.as_ref();
    // The smaller the words, the smaller the drawing: what matters is that all stays on one card.
    let tallest = column.width * kind.drawing * kind.growth;
    let room = Room { tallest, words: kind.small, ..source.room(column.width) };
    let drawing = draw_floor_plan(shared.floor, floor, words, room);
    if kind.drawing > 0.0 {
        let items = place_drawing(column.shaper, &drawing);
        column.figure(drawing.height, items, &drawing.says);
    } else {
        column.words(&one(drawing.says.as_str()), body, Seat::default());
    }
    column.gap(5.0);
    parts_of(column, shared, source, kind);
    for sentence in remarks(shared, source) {
        column.words(&[Run::bold(sentence)], body, Seat::default());
    }
    let front = std::mem::take(&mut column.strips);
    if !shared.floor.setting_out.is_empty() {
        column.gap(7.0);
        column.label(&words.say("setting-out"), kind.label());
        column.blocks(&steps(shared, source), body, Seat::default());
    }
    let either = vec![std::mem::take(&mut column.strips)];
    Said { front, either, best_on_front: 1, has_drawing: kind.drawing > 0.0 }
}

/// The parts that a plan is for, where they are several: the card’s own title names the first.
fn parts_of(
    column: &mut Column<'_, '_>,
    shared: &SharedFloor<'_>,
    source: &SheetSource<'_>,
    kind: CardType,
) {
    let titles = shared.parts.iter().filter_map(|part| source.session.parts.get(*part));
    let titles: Vec<String> = titles.map(|part| plain_line(&part.title)).collect();
    if titles.len() > 1 {
        let parts = titles.join(comma(source.words));
        let said = source.words.say_with("plan-for", &[("parts", Filling::Text(&parts))]);
        column.words(&one(said), kind.small(), Seat::default());
        column.gap(6.0);
    }
}

/// The headroom, and whether it lies askew or doesn’t fit.
fn remarks(shared: &SharedFloor<'_>, source: &SheetSource<'_>) -> Vec<String> {
    let words = source.words;
    let mut said = Vec::new();
    if let Some(height) = shared.floor.footprint.headroom {
        let height = height.say(source.words);
        said.push(words.say_with("plan-headroom", &[("height", Filling::Text(&height))]));
    }
    match shared.floor.placement {
        Some(placement) if placement.is_askew() => said.push(words.say("plan-askew")),
        None if source.plans.space.floor.is_some() => said.push(words.say("plan-unfit")),
        _ => {}
    }
    said
}

fn steps(shared: &SharedFloor<'_>, source: &SheetSource<'_>) -> Vec<Block> {
    let sentences = shared.floor.setting_out.iter().map(|step| tape_sentence(step, source.words));
    let blocks = sentences.zip(1..).map(|(sentence, number)| Block {
        marker: Marker::Number(number),
        depth: 1,
        is_heading: false,
        runs: one(sentence),
    });
    blocks.collect()
}
