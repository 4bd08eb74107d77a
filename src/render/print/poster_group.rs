//! A part on the wall poster: its mark over a thick line, its title, its key points, and its figure beside or below
//! them, whichever takes less of the sheet.

use super::drawings::{THINNEST, place_marks};
use super::moment_row::{Extent, between, lay_row, measure_row, set_row};
use super::page::{BLACK, Item, Role, WHITE};
use super::poster::SMALLEST_POINT;
use super::scale::Type;
use super::shaper::Shaper;
use super::sheets::{SheetSource, one};
use super::strip::placed;
use crate::drawing::part_mark;
use crate::figure::{Figure, Moment};
use crate::pack::{Part, PartKind};
use crate::prose::{Run, plain_line, read_line};

/// The strip at the left for the marks.
pub const SIDE: f32 = 46.0;

/// The black square of a mark.
const MARK: f32 = 28.0;

/// A part’s title is this much of the size of its key points.
const TITLE_SHARE: f32 = 0.56;

/// Between two moments, and between them and the words.
const APART: f32 = 12.0;

/// From words to the figure under them, in sizes: letters of some scripts reach far down.
const ABOVE: f32 = 0.24;

/// A figure beside tall words may be so much larger than those of the other parts.
const MOST_GROWN: f32 = 1.6;

/// The key points of a part that are shown.
pub struct Group<'s> {
    kind: PartKind,
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
}

impl<'s> Group<'s> {
    pub fn of(part: &'s Part, most: usize, source: &SheetSource<'s>) -> Self {
        let points: Vec<&str> = part.key_points.iter().map(|point| &***point).take(most).collect();
        let (moments, pictured) = shown_moments(&part.figure, points.len());
        let extent = measure_row(&moments, source);
        Self { kind: part.kind, title: plain_line(&part.title), points, moments, extent, pictured }
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
pub fn measure_words(
    shaper: &mut Shaper<'_>,
    group: &Group<'_>,
    (size, is_numbered): (f32, bool),
    width: f32,
) -> Extent {
    let is_numbered = is_numbered && group.has_figure();
    shaper.try_out(|shaper| lay_words(shaper, group, (size, is_numbered), width)).1
}

/// How tall a part is whose words take so much room.
pub fn height_of(
    shaper: &Shaper<'_>,
    group: &Group<'_>,
    setting: Setting,
    (words, width): (Extent, f32),
) -> f32 {
    let placed = place_figure(shaper, group, setting, (words, width));
    placed.map_or(words.tall, |placed| placed.whole).max(MARK)
}

/// Lays a part; and how tall it is.
pub fn lay_group(
    shaper: &mut Shaper<'_>,
    group: &Group<'_>,
    setting: Setting,
    width: f32,
    source: &SheetSource<'_>,
) -> (Vec<Item>, f32) {
    let is_numbered = setting.stature.is_some() && group.has_figure();
    let (mut items, words) = lay_words(shaper, group, (setting.size, is_numbered), width);
    let tall = height_of(shaper, group, setting, (words, width));
    if let Some(Placing { stature, at, .. }) = place_figure(shaper, group, setting, (words, width))
    {
        let row = (group.moments.as_slice(), set_row(&group.moments, stature, source));
        let (figure, _) = lay_row(shaper, row, (0.0, APART), numbers_at(setting.size), source);
        items.extend(figure.into_iter().map(|item| item.moved(at.0, at.1)));
    }
    items.push(Item::rectangle((0.0, 0.0), (MARK, MARK), Some(BLACK), None));
    let inside = place_marks(part_mark(group.kind, (5.0, 5.0), MARK - 10.0), THINNEST);
    items.extend(inside.map(|item| item.shaded(WHITE)));
    let thick = 4.0;
    items.push(Item::rectangle((MARK - thick, MARK), (thick, tall - MARK), Some(BLACK), None));
    (items, tall)
}

/// The title and the key points, each with the number of the moment that shows it; and the room they take.
fn lay_words(
    shaper: &mut Shaper<'_>,
    group: &Group<'_>,
    (size, is_numbered): (f32, bool),
    width: f32,
) -> (Vec<Item>, Extent) {
    let title = Type { is_bold: false, ..Type::key_point(size * TITLE_SHARE) };
    let mut items = Vec::new();
    let (mut y, mut widest) = (0.0, 0.0_f32);
    let mut words = Vec::new();
    for line in shaper.shape(&one(group.title.as_str()), title, width) {
        widest = widest.max(line.width);
        words.extend(placed(line, SIDE).map(|item| item.moved(0.0, y)));
        y += title.leading;
    }
    items.push(Item::group(Role::Heading(2), shaper.next_key(), words));
    let kind = shaper.air.let_in(Type::key_point(size));
    for (point, picture) in group.points.iter().zip(&group.pictured) {
        y += size * 0.12;
        let mut runs = read_line(point);
        if is_numbered && *picture > 0 {
            runs.insert(0, Run::bold(format!("{picture}\u{2002}")));
        }
        let mut words = Vec::new();
        for line in shaper.shape(&runs, kind, width) {
            widest = widest.max(line.width);
            words.extend(placed(line, SIDE).map(|item| item.moved(0.0, y)));
            y += kind.leading;
        }
        items.push(Item::group(Role::Paragraph, shaper.next_key(), words));
    }
    (items, Extent { wide: widest, tall: y })
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
    let numbers = if count > 1 { shaper.leading(numbers_at(setting.size)) } else { 0.0 };
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

/// The numbers under the moments: as the key points, to be read from across the room.
fn numbers_at(size: f32) -> Type {
    Type::key_point((size * 0.7).max(f32::from(SMALLEST_POINT)))
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
