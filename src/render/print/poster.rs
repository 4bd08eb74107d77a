//! The wall poster: the key points on one sheet, as large as they fit, to be read from across a room.
//!
//! Type whose capitals subtend ten minutes of arc can be read by an eye of half the usual acuity
//! (ISO 8596: the letter of 6/6 subtends five). At 2 m that is 5.8 mm; the type here is never smaller.

use super::drawings::{THINNEST, place_marks};
use super::page::{BLACK, Item, Page, Role, WHITE};
use super::scale::{MARGIN, Type, paper_size};
use super::shaper::Shaper;
use super::sheets::{SheetSource, fit_line, one};
use super::strip::placed;
use crate::drawing::part_mark;
use crate::pack::{Part, PartKind};
use crate::prose::{Run, plain_line, read_line};

/// Sizes of the key points in points, largest and smallest.
const LARGEST: u8 = 60;
pub const SMALLEST_POINT: u8 = 25;

/// The band at the head, the line at the foot, and the strip at the left for the marks.
const BAND: f32 = 66.0;
const FOOT: f32 = 22.0;
const SIDE: f32 = 46.0;

/// A part’s title is this much of the size of its key points.
const TITLE_SHARE: f32 = 0.56;

/// The key points of a part that are shown.
struct Group<'s> {
    kind: PartKind,
    title: String,
    points: Vec<&'s str>,
}

/// Lays out the poster: of the choices that are tried in turn, the first that fits the sheet.
pub fn lay_poster(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let (width, height) = paper_size(source.paper());
    let inner = (width - 2.0 * MARGIN, height - 2.0 * MARGIN);
    let room = (inner.0 - SIDE, inner.1 - BAND - FOOT);
    let (groups, size) = choose_groups(shaper, source, room);
    let mut items = lay_band(shaper, inner.0, source);
    items.extend(lay_groups(shaper, &groups, size, room));
    items.extend(lay_foot(shaper, inner, source));
    let items = items.into_iter().map(|item| item.moved(MARGIN, MARGIN)).collect();
    vec![Page { width, height, items }]
}

/// All key points; else those of the practice and the tries; else fewer of each, and at last as many
/// parts as have room.
fn choose_groups<'s>(
    shaper: &mut Shaper<'_>,
    source: &SheetSource<'s>,
    room: (f32, f32),
) -> (Vec<Group<'s>>, f32) {
    let all = |_: &Part| true;
    let core = |part: &Part| matches!(part.kind, PartKind::Technique | PartKind::Challenge);
    let choices = [groups_of(source, usize::MAX, all), groups_of(source, usize::MAX, core)];
    let fewer = [3, 2, 1].map(|most| groups_of(source, most, core));
    for groups in choices.into_iter().chain(fewer) {
        if let Some(size) = largest_size(shaper, &groups, room).filter(|_| !groups.is_empty()) {
            return (groups, size);
        }
    }
    let mut groups = groups_of(source, 1, all);
    while groups.len() > 1 && largest_size(shaper, &groups, room).is_none() {
        groups.pop();
    }
    let size = largest_size(shaper, &groups, room);
    (groups, size.unwrap_or(f32::from(SMALLEST_POINT)))
}

fn groups_of<'s>(
    source: &SheetSource<'s>,
    most: usize,
    is_shown: impl Fn(&Part) -> bool,
) -> Vec<Group<'s>> {
    let parts = source.session.parts.iter();
    parts
        .filter(|part| !part.key_points.is_empty() && is_shown(part))
        .map(|part| Group {
            kind: part.kind,
            title: plain_line(&part.title),
            points: part.key_points.iter().map(|point| &***point).take(most).collect(),
        })
        .collect()
}

/// The largest size at which everything fits and no word is broken.
fn largest_size(
    shaper: &mut Shaper<'_>,
    groups: &[Group<'_>],
    (width, height): (f32, f32),
) -> Option<f32> {
    let widest = widest_word(shaper, groups);
    let sizes = (SMALLEST_POINT..=LARGEST).rev().map(f32::from);
    sizes.filter(|size| widest * size <= width).find(|size| {
        let blocks = groups.iter().map(|group| lay_group(shaper, group, *size, width).1);
        blocks.sum::<f32>() + gap_at(*size) * least_gaps(groups) <= height
    })
}

/// The width of the widest word, in parts of the size of the type.
fn widest_word(shaper: &mut Shaper<'_>, groups: &[Group<'_>]) -> f32 {
    let kind = Type::key_point(100.0);
    let points = groups.iter().flat_map(|group| &group.points);
    let words = points.flat_map(|point| point.split_whitespace());
    let mut width = |word: &str| {
        let lines = shaper.shape(&[Run::bold(word)], kind, f32::MAX / 4.0);
        lines.iter().map(|line| line.width).fold(0.0, f32::max) / 100.0
    };
    words.map(&mut width).fold(0.0, f32::max)
}

/// The least room between two parts.
fn gap_at(size: f32) -> f32 {
    size * 0.45
}

#[allow(clippy::cast_precision_loss, reason = "a session has a few dozen parts at most")]
const fn least_gaps(groups: &[Group<'_>]) -> f32 {
    groups.len().saturating_sub(1) as f32
}

/// Places the groups one below another, what is left shared out between them.
fn lay_groups(
    shaper: &mut Shaper<'_>,
    groups: &[Group<'_>],
    size: f32,
    (width, height): (f32, f32),
) -> Vec<Item> {
    let blocks: Vec<(Vec<Item>, f32)> =
        groups.iter().map(|group| lay_group(shaper, group, size, width)).collect();
    let used: f32 = blocks.iter().map(|(_, tall)| tall).sum();
    let spare = (height - used).max(0.0);
    let gap = (spare / least_gaps(groups).max(1.0)).min(size * 1.6);
    let mut y = BAND;
    let mut items = Vec::new();
    for (block, tall) in blocks {
        items.extend(block.into_iter().map(|item| item.moved(0.0, y)));
        y += tall + gap;
    }
    items
}

/// A part: its mark at the left over a thick line, its title, its key points.
fn lay_group(
    shaper: &mut Shaper<'_>,
    group: &Group<'_>,
    size: f32,
    width: f32,
) -> (Vec<Item>, f32) {
    let title = Type { is_bold: false, ..Type::key_point(size * TITLE_SHARE) };
    let mut items = Vec::new();
    let mut y = 0.0;
    let mut words = Vec::new();
    for line in shaper.shape(&one(group.title.as_str()), title, width) {
        words.extend(placed(line, SIDE).map(|item| item.moved(0.0, y)));
        y += title.leading;
    }
    items.push(Item::group(Role::Heading(2), shaper.next_key(), words));
    let kind = shaper.air.let_in(Type::key_point(size));
    for point in &group.points {
        y += size * 0.12;
        let mut words = Vec::new();
        for line in shaper.shape(&read_line(point), kind, width) {
            words.extend(placed(line, SIDE).map(|item| item.moved(0.0, y)));
            y += kind.leading;
        }
        items.push(Item::group(Role::Paragraph, shaper.next_key(), words));
    }
    let mark = 28.0;
    items.push(Item::rectangle((0.0, 0.0), (mark, mark), Some(BLACK), None));
    let inside = place_marks(part_mark(group.kind, (5.0, 5.0), mark - 10.0), THINNEST);
    items.extend(inside.map(|item| item.shaded(WHITE)));
    let thick = 4.0;
    let below = (y - mark).max(0.0);
    items.push(Item::rectangle((mark - thick, mark), (thick, below), Some(BLACK), None));
    (items, y.max(mark))
}

/// The session’s title white on black, as large as one line holds.
fn lay_band(shaper: &mut Shaper<'_>, width: f32, source: &SheetSource<'_>) -> Vec<Item> {
    let tall = BAND - 18.0;
    let mut items = vec![Item::rectangle((0.0, 0.0), (width, tall), Some(BLACK), None)];
    let title = source.title();
    let mut sizes = (16..=34_u8).rev().map(|size| Type::SHEET_TITLE.sized(f32::from(size)));
    let fitting =
        sizes.find(|kind| shaper.shape(&one(title.as_str()), *kind, width - 24.0).len() == 1);
    let kind = fitting.unwrap_or(Type::SHEET_TITLE.sized(16.0));
    if let Some(line) = fit_line(shaper, &title, kind, width - 24.0) {
        let y = (tall - kind.leading) / 2.0;
        let words = placed(line, 12.0).map(|item| item.moved(0.0, y).shaded(WHITE)).collect();
        items.push(Item::group(Role::Heading(1), shaper.next_key(), words));
    }
    items
}

fn lay_foot(
    shaper: &mut Shaper<'_>,
    (width, height): (f32, f32),
    source: &SheetSource<'_>,
) -> Vec<Item> {
    let y = height - Type::SMALL.leading;
    let mut items = Vec::new();
    let school = source.letterhead().school;
    let mut right = width;
    if let Some(line) = fit_line(shaper, &school, Type::SMALL, width * 0.5) {
        right = width - line.width;
        items.extend(placed(line, right));
    }
    let origin = fit_line(shaper, &source.origin(), Type::SMALL, right - 12.0);
    items.extend(origin.into_iter().flat_map(|line| placed(line, 0.0)));
    items.into_iter().map(|item| item.moved(0.0, y)).collect()
}
