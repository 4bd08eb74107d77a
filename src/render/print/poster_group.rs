//! A part on the wall poster: its title, its key points, and its figure beside or below them, whichever takes less of
//! the sheet. What stands in the margin beside it is [`poster_margin`](super::poster_margin)’s.

use super::even_lines::even_lines;
use super::moment_row::{Extent, between, lay_row, measure_row, set_row};
use super::page::{Item, Role};
use super::plate::Impression;
use super::poster_margin::{CENTRE, NUMBER, RING_ROOM, Stop, mark_size, ring};
use super::scale::Type;
use super::shaper::Shaper;
use super::sheets::{SheetSource, one};
use super::strip::placed;
use crate::figure::{Figure, Moment};
use crate::pack::{Part, PartKind};
use crate::prose::{Run, plain_line, read_line};

/// Where the words begin, right of the margin.
pub const SIDE: f32 = 46.0;

/// A part’s title is this much of the size of its key points.
const TITLE_SHARE: f32 = 0.56;

/// Half the height of a capital of Andika’s bold face, in sizes.
const HALF_CAPITAL: f32 = 0.365;

/// Between two moments, and between them and the words.
const APART: f32 = 16.0;

/// From words to the figure under them, in sizes: letters of some scripts reach far down.
const ABOVE: f32 = 0.24;

/// Between one key point and the next, in sizes.
const BELOW: f32 = 0.12;

/// A figure beside tall words may be so much larger than those of the other parts.
const MOST_GROWN: f32 = 1.6;

/// The key points of a part that are shown.
pub struct Group<'s> {
    pub kind: PartKind,
    title: String,
    pub points: Vec<&'s str>,
    moments: Vec<Moment>,
    extent: Extent,
    /// The moment that shows each key point, from 1; 0 for none.
    pictured: Vec<usize>,
}

/// How large a poster is set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Setting {
    /// Of the key points, in points.
    pub size: f32,
    /// Of the figures, where there are any.
    pub stature: Option<f32>,
    /// How much of the width words may take.
    pub share: f32,
}

impl Setting {
    /// Words alone.
    pub const fn bare(size: f32) -> Self {
        Self { size, stature: None, share: 1.0 }
    }
}

impl<'s> Group<'s> {
    pub fn of(part: &'s Part, most: usize, source: &SheetSource<'s>) -> Self {
        let points: Vec<&str> = part.key_points.iter().map(|point| &***point).take(most).collect();
        let (moments, pictured) = shown_moments(&part.figure, points.len());
        let extent = measure_row(&moments, source);
        Self { kind: part.kind, title: plain_line(&part.title), points, moments, extent, pictured }
    }

    /// A part by its title alone, in the size of key points: for a session that has none.
    pub fn named(part: &'s Part, source: &SheetSource<'s>) -> Self {
        let (points, title) = (vec![&**part.title], String::new());
        Self { points, title, pictured: vec![0], ..Self::of(part, 0, source) }
    }

    pub const fn has_figure(&self) -> bool {
        !self.moments.is_empty()
    }
}

/// The moments that show a key point, numbered anew, and which of them each key point has; else the one that stands
/// for the whole.
fn shown_moments(figure: &Figure, points: usize) -> (Vec<Moment>, Vec<usize>) {
    let pictured = figure.pictured(points);
    let shown: Vec<usize> =
        (1..=figure.moments.len()).filter(|number| pictured.contains(number)).collect();
    if shown.is_empty() {
        let chief = figure.by_weight().into_iter().take(1).cloned();
        return (chief.collect(), vec![0; points]);
    }
    let anew = |number: &usize| shown.iter().position(|one| one == number).map_or(0, |at| at + 1);
    let numbers = pictured.iter().map(anew);
    let numbers = if shown.len() > 1 { numbers.collect() } else { vec![0; points] };
    (shown.iter().filter_map(|number| figure.moments.get(number - 1).cloned()).collect(), numbers)
}

/// Measures the title and the key points, in points.
pub fn measure_words(shaper: &mut Shaper<'_>, group: &Group<'_>, size: f32, width: f32) -> Extent {
    shaper.try_out(|shaper| lay_words(shaper, group, (size, false), width)).extent
}

/// How tall a part is whose words take so much room.
pub fn height_of(
    shaper: &Shaper<'_>,
    group: &Group<'_>,
    setting: Setting,
    (words, width): (Extent, f32),
) -> f32 {
    let placed = place_figure(shaper, group, setting, (words, width));
    placed.map_or(words.tall, |placed| placed.whole).max(mark_size(setting.size))
}

/// Lays a part; how tall it is, and where the margin has a stop for each of its key points.
pub fn lay_group(
    shaper: &mut Shaper<'_>,
    group: &Group<'_>,
    setting: Setting,
    width: f32,
    source: &SheetSource<'_>,
) -> (Vec<Item>, f32, Vec<Stop>) {
    let is_numbered = setting.stature.is_some() && group.has_figure();
    let LaidWords { mut items, extent, stops } =
        lay_words(shaper, group, (setting.size, is_numbered), width * setting.share);
    let tall = height_of(shaper, group, setting, (extent, width));
    if let Some(Placing { stature, at, .. }) = place_figure(shaper, group, setting, (extent, width))
    {
        let frames = set_row(&group.moments, stature, source);
        let highest = frames.iter().map(Impression::height).fold(0.0, f32::max);
        // The ring under a thin figure is wider than that: it keeps to the room of the sheet too.
        let last = frames.last().filter(|_| frames.len() > 1);
        let over = last.map_or(0.0, |frame| (RING_ROOM - frame.width() / 2.0).max(0.0));
        let at = (at.0 - over, at.1);
        let mut x = at.0;
        for frame in frames.iter().filter(|_| frames.len() > 1) {
            let middle = at.1 + highest - 1.0 + middle_of(shaper, NUMBER, NUMBER.size);
            items.push(ring((x + frame.width() / 2.0, middle)));
            x += frame.width() + APART;
        }
        let row = (group.moments.as_slice(), frames);
        let (figure, _) = lay_row(shaper, row, (0.0, APART), NUMBER, source);
        items.extend(figure.into_iter().map(|item| item.moved(at.0, at.1)));
    }
    (items, tall, stops)
}

/// The words of a part.
struct LaidWords {
    items: Vec<Item>,
    extent: Extent,
    stops: Vec<Stop>,
}

/// The title and the key points, each with the number of the moment that shows it; and the room they take.
fn lay_words(
    shaper: &mut Shaper<'_>,
    group: &Group<'_>,
    (size, is_numbered): (f32, bool),
    width: f32,
) -> LaidWords {
    let title = Type { is_bold: false, ..Type::key_point(size * TITLE_SHARE) };
    let mut items = Vec::new();
    let mut stops = Vec::new();
    let (mut y, mut widest) = (0.0, 0.0_f32);
    let mut words = Vec::new();
    for line in shaper.shape(&one(group.title.as_str()), title, width) {
        widest = widest.max(line.width);
        words.extend(placed(line, SIDE).map(|item| item.moved(0.0, y)));
        y += title.leading;
    }
    let kind = shaper.air.let_in(Type::key_point(size));
    let mut role = Role::Paragraph;
    if group.title.is_empty() {
        // The middle of the part’s mark is the middle of its title.
        y = mark_size(size) / 2.0 - middle_of(shaper, kind, size) - size * BELOW;
        role = Role::Heading(2);
    } else {
        items.push(Item::group(Role::Heading(2), shaper.next_key(), words));
    }
    for (point, picture) in group.points.iter().zip(&group.pictured) {
        y += size * BELOW;
        let middle = y + middle_of(shaper, kind, size);
        let is_pictured = is_numbered && *picture > 0;
        if is_pictured {
            items.push(lay_number(shaper, *picture, middle));
        }
        let mut words = Vec::new();
        if !group.title.is_empty() {
            stops.push(Stop { y: middle, is_pictured });
        }
        for line in even_lines(shaper, &read_line(point), kind, width) {
            widest = widest.max(line.width);
            words.extend(placed(line, SIDE).map(|item| item.moved(0.0, y)));
            y += kind.leading;
        }
        items.push(Item::group(role.clone(), shaper.next_key(), words));
    }
    LaidWords { items, extent: Extent { wide: widest, tall: y }, stops }
}

/// The number of a moment in the margin, before the key point that it shows.
fn lay_number(shaper: &mut Shaper<'_>, number: usize, middle: f32) -> Item {
    let lines = shaper.shape(&[Run::bold(number.to_string())], NUMBER, 200.0).into_iter();
    let top = middle - middle_of(shaper, NUMBER, NUMBER.size);
    let words = lines.flat_map(|line| {
        let left = CENTRE - line.width / 2.0;
        placed(line, left)
    });
    let words = words.map(|item| item.moved(0.0, top)).collect();
    Item::group(Role::Paragraph, shaper.next_key(), words)
}

/// How far below the top of its line the middle of a capital is.
fn middle_of(shaper: &Shaper<'_>, kind: Type, size: f32) -> f32 {
    shaper.baseline(kind) - size * HALF_CAPITAL
}

/// Where the figure of a part stands, how large it is, and how tall the part is with it.
struct Placing {
    stature: f32,
    at: (f32, f32),
    whole: f32,
}

/// The figure at the right of the words, where none of their lines is in its way; else under them.
fn place_figure(
    shaper: &Shaper<'_>,
    group: &Group<'_>,
    setting: Setting,
    (words, width): (Extent, f32),
) -> Option<Placing> {
    let stature = setting.stature.filter(|_| group.has_figure())?;
    let (extent, count) = (group.extent, group.moments.len());
    let gaps = APART * between(count);
    let numbers = if count > 1 { shaper.leading(NUMBER) } else { 0.0 };
    let stature = stature.min((width - gaps) / extent.wide);
    let row = |stature: f32| extent.wide * stature + gaps;
    let tall = |stature: f32| extent.tall * stature + numbers;
    let left = width - words.wide - APART;
    let above = setting.size * ABOVE;
    let whole = words.tall + above + tall(stature);
    if row(stature) > left || words.tall.max(tall(stature)) >= whole {
        return Some(Placing { stature, at: (SIDE, words.tall + above), whole });
    }
    // Where there is room, it is as tall as the words.
    let most = ((left - gaps) / extent.wide).min((words.tall - numbers) / extent.tall);
    let stature = stature.max(most.min(stature * MOST_GROWN));
    let down = ((words.tall - tall(stature)) / 2.0).max(0.0);
    let at = (SIDE + width - row(stature), down);
    Some(Placing { stature, at, whole: words.tall.max(tall(stature)) })
}

/// The width of the widest word of the key points.
pub fn widest_word(shaper: &mut Shaper<'_>, group: &Group<'_>, size: f32) -> f32 {
    let kind = Type::key_point(100.0);
    let words = group.points.iter().flat_map(|point| point.split_whitespace());
    let mut width = |word: &str| {
        let lines = shaper.shape(&[Run::bold(word)], kind, f32::MAX / 4.0);
        lines.iter().map(|line| line.width).fold(0.0, f32::max) / 100.0
    };
    words.map(&mut width).fold(0.0, f32::max) * size
}
