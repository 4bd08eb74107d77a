//! The content of one activity card: a part of the session, as strips that may go on on another card.

use super::drawings::place_marks;
use super::page::Item;
use super::scale::Type;
use super::scan::scan_codes;
use super::sheets::{SheetSource, one};
use super::strip::{Column, Seat, Strip, placed};
use crate::drawing::{effort_steps, effort_width};
use crate::pack::{Fault, Measure, Part, PartKind, Picture};
use crate::picture::pixels_of;
use crate::prose::{Block, Run, plain_line, read_blocks, read_line};
use crate::render::phrases::{effort_name, measure_sentence, time_pieces};
use crate::render::plan_phrases::{points_sentence, slot_name, slot_sentence};
use crate::render::quantities::Said;
use crate::words::Filling;

/// The sizes that the words of a card are tried in, largest first: running text and key points.
pub const SIZES: [(f32, f32); 5] =
    [(13.0, 20.0), (12.5, 19.0), (12.0, 18.0), (11.5, 17.0), (11.0, 16.0)];

/// The room a picture may take on a card, in points.
const TALLEST_PICTURE: f32 = 150.0;

/// Lays out what a card says of a part.
pub fn part_strips(
    column: &mut Column<'_, '_>,
    part: &Part,
    source: &SheetSource<'_>,
    sizes: (f32, f32),
) -> Vec<Strip> {
    let body = Type::body(sizes.0);
    time_and_effort(column, part, source);
    adult(column, part, source);
    throw_rules(column, part, source, body);
    column.gap(5.0);
    column.blocks(&read_blocks(&part.how), body, Seat::default());
    key_points(column, part, source, sizes.1);
    measure(column, part, source, body);
    easier_harder(column, part, source, body);
    pictures(column, &part.pictures, source, body);
    std::mem::take(&mut column.strips)
}

/// “5 min” large, with the effort’s steps and word at the right, and the pieces of the time below.
fn time_and_effort(column: &mut Column<'_, '_>, part: &Part, source: &SheetSource<'_>) {
    let Some(time) = &part.time else { return };
    let total = crate::plan::total_of(time).say(source.words);
    let kind = Type::FIGURE;
    let width = column.width;
    let shaped = column.shaper.shape(&one(total), kind, width);
    let mut items: Vec<Item> = shaped.into_iter().flat_map(|l| placed(l, 0.0)).collect();
    if let Some(effort) = &part.effort {
        let name = effort_name(effort.value, source.words);
        if let Some(line) =
            column.shaper.shape(&one(name), Type::LABEL, width / 2.0).drain(..).next()
        {
            let left = width - line.width;
            items.extend(placed(line, left).map(|item| item.moved(0.0, 3.0)));
            let steps = left - effort_width(13.0) - 5.0;
            items.extend(place_marks(effort_steps(effort.value, (steps, 1.5), 13.0)));
        }
    }
    column.line_of_words(column.shaper.leading(kind), items);
    column.keep_with_next();
    let pieces = time_pieces(time, source.words);
    if !pieces.is_empty() {
        column.words(&one(pieces.join(" · ")), Type::SMALL, Seat::default());
        column.keep_with_next();
    }
}

/// Whether an adult is wanted: the card may be all a family has printed.
fn adult(column: &mut Column<'_, '_>, part: &Part, source: &SheetSource<'_>) {
    if let Some(adult) = &part.adult {
        let said = source.words.say(&format!("adult-{}", adult.word()));
        column.words(&[Run::bold(said)], Type::SMALL, Seat::default());
        column.keep_with_next();
    }
}

/// Where things may land and when they are fetched: before anything flies, beside a thick line.
fn throw_rules(column: &mut Column<'_, '_>, part: &Part, source: &SheetSource<'_>, body: Type) {
    let Some(rules) = &part.throw else { return };
    let rows =
        [("landing-zone", &rules.landing_zone), ("stop-and-collect", &rules.stop_and_collect)];
    column.gap(5.0);
    for (key, rule) in rows {
        let Some(rule) = rule else { continue };
        let mut runs = vec![Run::bold(format!("{}: ", source.words.say(key)))];
        runs.extend(read_line(rule));
        column.words(&runs, body, Seat { indent: 9.0, has_bar: true });
    }
}

fn key_points(column: &mut Column<'_, '_>, part: &Part, source: &SheetSource<'_>, size: f32) {
    if part.key_points.is_empty() {
        return;
    }
    column.gap(9.0);
    column.label(&source.words.say("key-points"), Type::LABEL);
    for (index, point) in part.key_points.iter().enumerate() {
        column.words(
            &read_line(point),
            Type::key_point(size),
            Seat { indent: 10.0, has_bar: true },
        );
        // A single key point is never left for the next card.
        if index + 2 == part.key_points.len() || index == 0 && part.key_points.len() > 1 {
            column.keep_with_next();
        }
    }
}

fn measure(column: &mut Column<'_, '_>, part: &Part, source: &SheetSource<'_>, body: Type) {
    let Some(measure) = &part.measure else { return };
    column.gap(8.0);
    column.label(&source.words.say("how-measured"), Type::LABEL);
    column.words(&one(measure_sentence(measure, source.words)), body, Seat::default());
    let at = source.session.parts.iter().position(|other| std::ptr::eq(other, part));
    let marks = at.and_then(|at| source.plans.marks.get(at)?.as_ref());
    if let Some(points) = marks.and_then(|marks| points_sentence(marks, source.words)) {
        column.words(&one(points), body, Seat::default());
    }
    for criterion in &measure.criteria {
        column.entry(&read_line(criterion), body);
    }
    attempt_boxes(column, measure);
}

/// A box to write each attempt in, with the unit in its corner.
fn attempt_boxes(column: &mut Column<'_, '_>, measure: &Measure) {
    let attempts = measure.attempts.as_ref().map_or(0, |attempts| attempts.value);
    if !(1..=6).contains(&attempts) {
        return;
    }
    column.gap(6.0);
    column.keep_with_next();
    let gap = 6.0;
    #[allow(clippy::cast_precision_loss, reason = "six boxes at most")]
    let count = attempts as f32;
    let wide = ((column.width - gap * (count - 1.0)) / count).min(70.0);
    let mut items = Vec::new();
    for attempt in 1..=attempts {
        #[allow(clippy::cast_precision_loss, reason = "six boxes at most")]
        let x = (attempt - 1) as f32 * (wide + gap);
        items.push(Item::rectangle((x, 0.0), (wide, 30.0), None, Some(0.9)));
        let label = column.shaper.shape(&one(attempt.to_string()), Type::SMALL, 30.0);
        items.extend(label.into_iter().flat_map(|l| placed(l, x + 3.5)).map(|i| i.moved(0.0, 0.5)));
        let unit = measure.unit.as_ref();
        let unit = unit.map(|unit| column.shaper.shape(&read_line(unit), Type::SMALL, wide - 18.0));
        for line in unit.into_iter().filter(|lines| lines.len() == 1).flatten() {
            let left = x + wide - line.width - 3.5;
            items.extend(placed(line, left).map(|item| item.moved(0.0, 15.0)));
        }
    }
    column.line_of_words(30.0, items);
}

fn easier_harder(column: &mut Column<'_, '_>, part: &Part, source: &SheetSource<'_>, body: Type) {
    let [easier, harder] = ["easier", "harder"].map(|key| source.words.say(key));
    column.gap(8.0);
    match (&part.easier, &part.harder) {
        (Some(left), Some(right)) => {
            let (left, right) = (read_line(left), read_line(right));
            column.pair((&easier, &left), (&harder, &right), body);
        }
        (Some(only), None) => labelled(column, &easier, &read_line(only), body),
        (None, Some(only)) => labelled(column, &harder, &read_line(only), body),
        (None, None) => {}
    }
}

fn labelled(column: &mut Column<'_, '_>, label: &str, runs: &[Run], body: Type) {
    let mut all = vec![Run::bold(format!("{label}: "))];
    all.extend(runs.iter().cloned());
    column.words(&all, body, Seat::default());
}

/// The card for whoever watches: what may be seen at each step, and what to say.
pub fn helper_strips(
    column: &mut Column<'_, '_>,
    source: &SheetSource<'_>,
    sizes: (f32, f32),
) -> Vec<Strip> {
    let body = Type::body(sizes.0);
    let see = source.words.say("cards-look-how");
    column.words(&one(see), body, Seat::default());
    for part in source.session.parts.iter().filter(|part| !part.faults.is_empty()) {
        column.gap(7.0);
        column.label(&plain_line(&part.title), Type::LABEL);
        for fault in &part.faults {
            fault_entry(column, fault, body);
        }
    }
    std::mem::take(&mut column.strips)
}

/// “The knee is stiff → **Land as if on eggs**”
fn fault_entry(column: &mut Column<'_, '_>, fault: &Fault, body: Type) {
    let mut runs = read_line(&fault.see);
    if let Some(last) = runs.last_mut() {
        let bare = last.text.trim_end_matches(['.', ':']).len();
        last.text.truncate(bare);
    }
    runs.push(Run::plain(" → "));
    runs.extend(read_line(&fault.say).into_iter().map(|run| Run { bold: true, ..run }));
    column.entry(&runs, body);
}

/// Pictures, each no wider than the card and no taller than half of it.
fn pictures(
    column: &mut Column<'_, '_>,
    pictures: &[Picture],
    source: &SheetSource<'_>,
    body: Type,
) {
    for picture in pictures {
        let Some(path) = &picture.path else { continue };
        let size = source.pack.pictures.get(path).and_then(|bytes| pixels_of(bytes));
        let Some((wide, tall)) = size.and_then(in_points) else { continue };
        let scale = (column.width / wide).min(TALLEST_PICTURE / tall);
        let (width, height) = (wide * scale, tall * scale);
        column.gap(8.0);
        let item = Item::Picture { path: path.clone(), at: (0.0, 0.0), width, height };
        let says = picture.alt.as_ref().map(|alt| plain_line(alt)).unwrap_or_default();
        column.figure(height, vec![item], &says);
        if let Some(caption) = &picture.caption {
            column.keep_with_next();
            column.words(&read_line(caption), body, Seat::default());
        }
    }
}

/// Dots as a measure to reckon with.
fn in_points((wide, tall): (u32, u32)) -> Option<(f32, f32)> {
    let points = |dots: u32| u16::try_from(dots).ok().map(f32::from);
    Some((points(wide)?, points(tall)?))
}

/// The card that comes first: what the session is, what to gather and what to take care of.
pub fn opening_strips(
    column: &mut Column<'_, '_>,
    source: &SheetSource<'_>,
    sizes: (f32, f32),
) -> Vec<Strip> {
    let body = Type::body(sizes.0);
    let session = source.session;
    column.words(&read_line(&session.summary), body, Seat::default());
    // Before what may go on on the next card.
    scan_codes(column, source);
    if !session.success.is_empty() {
        column.gap(8.0);
        column.label(&source.words.say("success"), Type::LABEL);
        for line in &session.success {
            column.entry(&read_line(line), body);
        }
    }
    if !session.needs.is_empty() {
        column.gap(8.0);
        column.label(&source.words.say("things"), Type::LABEL);
        for need in &session.needs {
            let name = crate::render::phrases::need_name(need, source.words);
            column.entry(&one(name), body);
        }
    }
    let cautions: Vec<Block> = session.safety.iter().flat_map(|text| read_blocks(text)).collect();
    if !cautions.is_empty() {
        column.gap(8.0);
        column.label(&source.words.say("cautions"), Type::LABEL);
        for block in &cautions {
            column.entry(&block.runs, body);
        }
    }
    pictures(column, &session.pictures, source, body);
    column.gap(6.0);
    column.words(&one(source.words.say("cards-see-guide")), body, Seat::default());
    std::mem::take(&mut column.strips)
}

/// The card that comes last: how to make the session fit another home or child.
pub fn adaptation_strips(
    column: &mut Column<'_, '_>,
    source: &SheetSource<'_>,
    sizes: (f32, f32),
) -> Vec<Strip> {
    let body = Type::body(sizes.0);
    other_slots(column, source, body);
    for (key, text) in source.session.adaptations.each() {
        column.gap(7.0);
        column.label(&source.words.say(&format!("adapt-{key}")), Type::LABEL);
        column.blocks(&read_blocks(text), body, Seat::default());
    }
    std::mem::take(&mut column.strips)
}

/// What to leave out or shorten where there is another time.
fn other_slots(column: &mut Column<'_, '_>, source: &SheetSource<'_>, body: Type) {
    if source.plans.other_slots.is_empty() {
        return;
    }
    column.label(&source.words.say("slots"), Type::LABEL);
    for other in &source.plans.other_slots {
        let slot = slot_name(other.slot, source.words);
        let slot = source.words.say_with("slot-in", &[("time", Filling::Text(&slot))]);
        let said = slot_sentence(other, source.session, source.words);
        column.gap(1.5);
        column.entry(&[Run::bold(format!("{slot}: ")), Run::plain(said)], body);
    }
}

/// What a card is about, for its head.
#[derive(Clone, Debug)]
pub struct CardHead {
    pub kind: Option<PartKind>,
    pub label: String,
    pub title: String,
}
