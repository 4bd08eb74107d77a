//! The content of an activity card: a part of the session, as strips that may go on on another card.

use super::card_figure::{figure_strip, moment_beside_points};
use super::card_type::CardType;
use super::drawings::{THINNEST, place_marks};
use super::page::Item;
use super::scale::Type;
use super::sheets::{SheetSource, one};
use super::strip::{Column, Seat, Strip, placed};
use crate::drawing::{effort_steps, effort_width};
use crate::pack::{Fault, Measure, Part, Picture};
use crate::picture::pixels_of;
use crate::prose::{Block, Run, plain_line, read_blocks, read_line};
use crate::render::phrases::{colon, effort_name, measure_sentence, time_pieces};
use crate::render::plan_phrases::points_sentence;
use crate::render::quantities::Said as _;
use crate::words::Words;

/// Key points are no smaller than this: the size of their closest type.
const SMALLEST_POINT: f32 = 14.0;

/// What a card says, in pieces: `front` has what is read first, `either` what may stand below it or on
/// the back.
#[derive(Debug, Default)]
pub struct Said {
    pub front: Vec<Strip>,
    pub either: Vec<Vec<Strip>>,
    /// So many of `either` are best on the front, where there is room for them.
    pub best_on_front: usize,
    /// A drawing on it may grow.
    pub has_drawing: bool,
}

/// A part of the session with what is read of it once for all sizes that are tried.
pub struct PartTold<'s> {
    part: &'s Part,
    how: Vec<Block>,
    time: Option<Told>,
}

/// The time of a part: all of it, and its pieces.
struct Told {
    total: String,
    pieces: String,
}

impl<'s> PartTold<'s> {
    pub fn of(part: &'s Part, words: &Words) -> Self {
        let time = part.time.as_ref().map(|time| Told {
            total: crate::plan::total_of(time).say(words),
            pieces: time_pieces(time, words).join(" · "),
        });
        Self { part, how: read_blocks(&part.how), time }
    }
}

/// Lays out what a card says of a part: the task and its key points, then the rest. What to look for
/// has a card of its own where cards have no backs.
pub fn part_said(
    column: &mut Column<'_, '_>,
    told: &PartTold<'_>,
    source: &SheetSource<'_>,
    kind: CardType,
    has_back: bool,
) -> Said {
    let part = told.part;
    time_and_effort(column, told, source, kind);
    adult(column, part, source, kind);
    throw_rules(column, part, source, kind);
    column.gap(kind.gap(5.0));
    column.blocks(&told.how, kind.words(), Seat::default());
    figure_strip(column, part, source, kind);
    key_points(column, part, source, kind);
    let front = std::mem::take(&mut column.strips);
    let mut either = Vec::new();
    let shown = |column: &mut Column<'_, '_>| {
        pictures(column, &part.pictures, source, kind);
        std::mem::take(&mut column.strips)
    };
    if has_back {
        either.push(shown(column));
    }
    measure(column, part, source, kind);
    either.push(std::mem::take(&mut column.strips));
    easier_harder(column, part, source, kind);
    either.push(std::mem::take(&mut column.strips));
    if has_back {
        either.push(faults(column, part, source, kind));
    } else {
        either.push(shown(column));
    }
    let best_on_front = usize::from(has_back && !either[0].is_empty());
    either.retain(|strips| !strips.is_empty());
    let has_drawing = kind.drawing > 0.0 && !part.figure.moments.is_empty();
    Said { front, either, best_on_front, has_drawing }
}

/// What may be seen of a part, and what to say, for the back of its card.
fn faults(
    column: &mut Column<'_, '_>,
    part: &Part,
    source: &SheetSource<'_>,
    kind: CardType,
) -> Vec<Strip> {
    if !part.faults.is_empty() {
        column.gap(kind.gap(8.0));
        column.label(&source.words.say("cards-look"), kind.label());
        for fault in &part.faults {
            fault_entry(column, fault, kind.words());
        }
    }
    std::mem::take(&mut column.strips)
}

/// “5 min” large, with the effort’s steps and word at the right, and the pieces of the time below.
fn time_and_effort(
    column: &mut Column<'_, '_>,
    PartTold { part, time, .. }: &PartTold<'_>,
    source: &SheetSource<'_>,
    kind: CardType,
) {
    let Some(Told { total, pieces }) = time else { return };
    let scale = kind.scale();
    let small = kind.small();
    let label = kind.label();
    let kind = kind.figure();
    let width = column.width;
    let shaped = column.shaper.shape(&one(total.as_str()), kind, width);
    let mut items: Vec<Item> = shaped.into_iter().flat_map(|l| placed(l, 0.0)).collect();
    if let Some(effort) = &part.effort {
        let name = effort_name(effort.value, source.words);
        if let Some(line) = column.shaper.shape(&one(name), label, width / 2.0).drain(..).next() {
            let left = width - line.width;
            items.extend(placed(line, left).map(|item| item.moved(0.0, 3.0 * scale)));
            let (tall, top) = (13.0 * scale, 1.5 * scale);
            let steps = left - effort_width(tall) - 5.0 * scale;
            items.extend(place_marks(effort_steps(effort.value, (steps, top), tall), THINNEST));
        }
    }
    column.line_of_words(column.shaper.leading(kind), items);
    column.keep_with_next();
    if !pieces.is_empty() {
        column.words(&one(pieces.as_str()), small, Seat::default());
        column.keep_with_next();
    }
}

/// Whether an adult is wanted: the card may be all a family has printed.
fn adult(column: &mut Column<'_, '_>, part: &Part, source: &SheetSource<'_>, kind: CardType) {
    if let Some(adult) = &part.adult {
        let said = source.words.say(&format!("adult-{}", adult.word()));
        column.words(&[Run::bold(said)], kind.small(), Seat::default());
        column.keep_with_next();
    }
}

/// Where things may land and when they are fetched: before anything flies, beside a thick line.
fn throw_rules(column: &mut Column<'_, '_>, part: &Part, source: &SheetSource<'_>, kind: CardType) {
    let Some(rules) = &part.throw else { return };
    let rows =
        [("landing-zone", &rules.landing_zone), ("stop-and-collect", &rules.stop_and_collect)];
    column.gap(kind.gap(5.0));
    for (key, rule) in rows {
        let Some(rule) = rule else { continue };
        let mut runs = vec![Run::bold(format!("{}{}", source.words.say(key), colon(source.words)))];
        runs.extend(read_line(rule));
        column.words(&runs, kind.words(), Seat { indent: 9.0, has_bar: true });
    }
}

fn key_points(column: &mut Column<'_, '_>, part: &Part, source: &SheetSource<'_>, kind: CardType) {
    if part.key_points.is_empty() {
        return;
    }
    column.gap(kind.gap(9.0));
    let from = column.strips.len();
    column.label(&source.words.say("key-points"), kind.label());
    // Numbers name moments of a strip, which pocket cards have no room for.
    let strip = Some(&part.figure).filter(|_| kind.drawing > 0.0);
    let pictured = strip.map_or_else(Vec::new, |figure| figure.pictured(part.key_points.len()));
    let most = pictured.iter().copied().max().unwrap_or_default();
    let size = Type::key_point(kind.key_point);
    let (indent, _) = hang_points(column, size, most);
    let size = size.sized(on_one_line(column, part, (size, column.width - indent)));
    let (indent, beside) = hang_points(column, size, most);
    let seat = Seat { indent, has_bar: true };
    for (index, point) in part.key_points.iter().enumerate() {
        if index > 0 && kind.drawing > 0.0 {
            // The bar beside them breaks too: it shows where one of two lines ends. Pocket cards have no room for it.
            column.gap(kind.gap(3.0));
        }
        let picture = pictured.get(index).filter(|picture| **picture > 0);
        let number = picture.map(ToString::to_string);
        column.hung(number.as_deref(), beside, (&read_line(point), size, seat));
        // A single key point is never left for the next card.
        if index + 2 == part.key_points.len() || index == 0 && part.key_points.len() > 1 {
            column.keep_with_next();
        }
    }
    moment_beside_points(column, from, part, source, kind);
}

/// How far key points are moved in from their bar, and the numbers before them, the largest of which is `most`: those hang
/// at the left of the words, so that these begin below each other. Large words need more room.
fn hang_points(column: &mut Column<'_, '_>, size: Type, most: usize) -> (f32, f32) {
    let beside = 10.0_f32.max(size.size * 0.5);
    let hang =
        if most > 0 { column.width_of(&most.to_string(), size) + size.size * 0.5 } else { 0.0 };
    (beside + hang, beside)
}

/// A key point is read at a glance on one line: type is smaller by as much, if that lets all have one.
const LEAST_ON_ONE_LINE: f32 = 0.85;

/// The size in which all key points of a part have one line in a room; their usual one where it would be too small.
fn on_one_line(column: &mut Column<'_, '_>, part: &Part, (usual, room): (Type, f32)) -> f32 {
    let aired = column.shaper.air.let_in(usual);
    let widths = part.key_points.iter().map(|point| column.width_of(&plain_line(point), aired));
    let widest = widths.fold(0.0, f32::max);
    // Half points are steps enough; a little is left, since widths are rounded.
    let size = (usual.size * room / widest * 1.98).floor() / 2.0;
    if size >= usual.size || size < (usual.size * LEAST_ON_ONE_LINE).max(SMALLEST_POINT) {
        return usual.size;
    }
    size
}

fn measure(column: &mut Column<'_, '_>, part: &Part, source: &SheetSource<'_>, kind: CardType) {
    let body = kind.words();
    let Some(measure) = &part.measure else { return };
    column.gap(kind.gap(8.0));
    column.label(&source.words.say("how-measured"), kind.label());
    column.words(&one(measure_sentence(measure, source.words)), body, Seat::default());
    let at = source.session.parts.iter().position(|other| std::ptr::eq(other, part));
    let marks = at.and_then(|at| source.plans.marks.get(at)?.as_ref());
    if let Some(points) = marks.and_then(|marks| points_sentence(marks, source.words)) {
        column.words(&one(points), body, Seat::default());
    }
    for criterion in &measure.criteria {
        column.entry(&read_line(criterion), body);
    }
    attempt_boxes(column, measure, kind);
}

/// A box to write each attempt in, with the unit in its corner.
fn attempt_boxes(column: &mut Column<'_, '_>, measure: &Measure, kind: CardType) {
    let attempts = measure.attempts.as_ref().map_or(0, |attempts| attempts.value);
    if !(1..=6).contains(&attempts) {
        return;
    }
    column.gap(kind.gap(6.0));
    column.keep_with_next();
    let (gap, scale) = (6.0, kind.scale());
    let (small, tall) = (kind.small(), 30.0 * scale);
    #[allow(clippy::cast_precision_loss, reason = "six boxes at most")]
    let count = attempts as f32;
    let wide = ((column.width - gap * (count - 1.0)) / count).min(70.0 * scale);
    let mut items = Vec::new();
    for attempt in 1..=attempts {
        #[allow(clippy::cast_precision_loss, reason = "six boxes at most")]
        let x = (attempt - 1) as f32 * (wide + gap);
        items.push(Item::rectangle((x, 0.0), (wide, tall), None, Some(0.9)));
        let label = column.shaper.shape(&one(attempt.to_string()), small, tall);
        items.extend(label.into_iter().flat_map(|l| placed(l, x + 3.5)).map(|i| i.moved(0.0, 0.5)));
        let unit = measure.unit.as_ref();
        let unit =
            unit.map(|unit| column.shaper.shape(&read_line(unit), small, wide - 18.0 * scale));
        for line in unit.into_iter().filter(|lines| lines.len() == 1).flatten() {
            let left = x + wide - line.width - 3.5;
            items.extend(placed(line, left).map(|item| item.moved(0.0, 15.0 * scale)));
        }
    }
    column.line_of_words(tall, items);
}

fn easier_harder(
    column: &mut Column<'_, '_>,
    part: &Part,
    source: &SheetSource<'_>,
    kind: CardType,
) {
    let body = kind.words();
    let [easier, harder] = ["easier", "harder"].map(|key| source.words.say(key));
    column.gap(kind.gap(8.0));
    match (&part.easier, &part.harder) {
        (Some(left), Some(right)) => {
            let (left, right) = (read_line(left), read_line(right));
            column.pair((&easier, &left), (&harder, &right), (body, kind.label()));
        }
        (Some(only), None) => labelled(column, &easier, &read_line(only), (body, source)),
        (None, Some(only)) => labelled(column, &harder, &read_line(only), (body, source)),
        (None, None) => {}
    }
}

fn labelled(
    column: &mut Column<'_, '_>,
    label: &str,
    runs: &[Run],
    (body, source): (Type, &SheetSource<'_>),
) {
    let mut all = vec![Run::bold(format!("{label}{}", colon(source.words)))];
    all.extend(runs.iter().cloned());
    column.words(&all, body, Seat::default());
}

/// “The knee is stiff → **Land as if on eggs**”
pub fn fault_entry(column: &mut Column<'_, '_>, fault: &Fault, body: Type) {
    let mut runs = read_line(&fault.see);
    if let Some(last) = runs.last_mut() {
        let bare = last.text.trim_end_matches(['.', ':']).len();
        last.text.truncate(bare);
    }
    runs.push(Run::plain(" → "));
    runs.extend(read_line(&fault.say).into_iter().map(|run| Run { bold: true, ..run }));
    column.entry(&runs, body);
}

/// Pictures, each no wider than the card and no taller than its kind allows.
pub fn pictures(
    column: &mut Column<'_, '_>,
    pictures: &[Picture],
    source: &SheetSource<'_>,
    kind: CardType,
) {
    for picture in pictures {
        let Some(path) = &picture.path else { continue };
        let size = source.pack.pictures.get(path).and_then(|bytes| pixels_of(bytes));
        let Some((wide, tall)) = size.and_then(in_points) else { continue };
        let scale = (column.width / wide).min(column.width * kind.picture / tall);
        let (width, height) = (wide * scale, tall * scale);
        column.gap(kind.gap(8.0));
        let item = Item::Picture { path: path.clone(), at: (0.0, 0.0), width, height };
        let says = picture.alt.as_ref().map(|alt| plain_line(alt)).unwrap_or_default();
        column.figure(height, vec![item], &says);
        if let Some(caption) = &picture.caption {
            column.keep_with_next();
            column.words(&read_line(caption), kind.words(), Seat::default());
        }
    }
}

/// Dots as a measure to reckon with.
fn in_points((wide, tall): (u32, u32)) -> Option<(f32, f32)> {
    let points = |dots: u32| u16::try_from(dots).ok().map(f32::from);
    Some((points(wide)?, points(tall)?))
}
