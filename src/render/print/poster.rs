//! The wall poster: the key points – of a session without any, its parts – on one sheet, as large as they fit, to be read
//! from across a room.
//!
//! Type whose capitals subtend ten minutes of arc can be read by an eye of half the usual acuity
//! (ISO 8596: the letter of 6/6 subtends five). At 2 m that is 5.8 mm; the type here is never smaller.

use super::moment_row::{Extent, between};
use super::origin::Origin;
use super::page::{Item, Page};
use super::poster_group::{Group, SIDE, Setting, height_of, lay_group, measure_words, widest_word};
use super::poster_head::lay_poster_head;
use super::poster_margin::Margin;
use super::scale::{MARGIN, Type, paper_size};
use super::shaper::Shaper;
use super::sheets::SheetSource;
use crate::pack::{Part, PartKind};

/// Sizes of the key points in points, largest and smallest.
const LARGEST: u8 = 62;

/// What the words of key points may take of their room in ink, and how much a letter of Andika’s bold face takes of the
/// square of its size (measured on the demo pack’s posters): with the head and the figures, a poster keeps well under
/// the usual budget of 10 %.
const INK_OF_WORDS: f32 = 0.066;
const INK_OF_LETTER: f32 = 0.146;
pub const SMALLEST_POINT: u8 = 25;

/// Statures that are tried, in points: 78 to 22 mm.
const STATURES: [f32; 9] = [220.0, 190.0, 165.0, 142.0, 122.0, 105.0, 90.0, 76.0, 63.0];

/// Figures may cost key points no more of their size: they keep this share.
const LEAST_SHARE: f32 = 0.7;

/// What letters reach below the last line at most, in sizes.
const DEEP: f32 = 0.22;

/// How much of the width words may take, the rest being left for figures beside them.
const SHARES: [f32; 4] = [1.0, 0.7, 0.6, 0.5];

/// Words that are broken into more lines for figures’ sake must be worth it.
const NARROWED: f32 = 0.9;

/// The most room between two parts, in sizes.
const MOST_APART: f32 = 2.2;

/// The line at the foot.
const FOOT: f32 = 22.0;

/// Lays out the poster: of the choices that are tried in turn, the first that fits the sheet.
pub fn lay_poster(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let (width, height) = paper_size(source.paper());
    let inner = (width - 2.0 * MARGIN, height - 2.0 * MARGIN);
    let points = source.session.parts.iter().map(|part| part.key_points.len()).sum();
    let (mut items, top) = lay_poster_head(shaper, inner.0, points, source);
    let room = (inner.0 - SIDE, inner.1 - top - FOOT);
    let (groups, setting) = shaper.try_out(|shaper| choose_groups(shaper, source, room));
    let below = lay_groups(shaper, &groups, setting, room, source);
    items.extend(below.into_iter().map(|item| item.moved(0.0, top)));
    items.extend(lay_foot(shaper, inner, source));
    let items = items.into_iter().map(|item| item.moved(MARGIN, MARGIN)).collect();
    vec![Page { width, height, items }]
}

/// All key points; else those of the practice and the tries; else fewer of each, and at last as many
/// parts as have room. Of each choice first with figures, then without: key points come before them.
fn choose_groups<'s>(
    shaper: &mut Shaper<'_>,
    source: &SheetSource<'s>,
    room: (f32, f32),
) -> (Vec<Group<'s>>, Setting) {
    let all = |_: &Part| true;
    let core = |part: &Part| matches!(part.kind, PartKind::Technique | PartKind::Challenge);
    let choices = [groups_of(source, usize::MAX, all), groups_of(source, usize::MAX, core)];
    let fewer = [12, 9, 7, 5, 4, 3, 2, 1].map(|most| groups_of(source, most, core));
    for groups in choices.into_iter().chain(fewer).filter(|groups| !groups.is_empty()) {
        if let Some(setting) = set_poster(shaper, &groups, room) {
            return (groups, setting);
        }
    }
    let mut groups = groups_of(source, 1, all);
    while groups.len() > 1 && largest_size(shaper, &groups, room).is_none() {
        groups.pop();
    }
    let size = largest_size(shaper, &groups, room);
    (groups, Setting::bare(size.unwrap_or(f32::from(SMALLEST_POINT))))
}

fn groups_of<'s>(
    source: &SheetSource<'s>,
    most: usize,
    is_shown: impl Fn(&Part) -> bool,
) -> Vec<Group<'s>> {
    let parts = source.session.parts.iter();
    let shown = parts.filter(|part| is_shown(part));
    if source.session.parts.iter().all(|part| part.key_points.is_empty()) {
        return shown.map(|part| Group::named(part, source)).collect();
    }
    let shown = shown.filter(|part| !part.key_points.is_empty());
    shown.map(|part| Group::of(part, most, source)).collect()
}

/// Key points and figures, both as large as they go together; else key points alone.
fn set_poster(shaper: &mut Shaper<'_>, groups: &[Group<'_>], room: (f32, f32)) -> Option<Setting> {
    let bare = largest_size(shaper, groups, room)?;
    let least = f32::from(SMALLEST_POINT).max(bare * LEAST_SHARE);
    let mut best = Setting::bare(bare);
    let mut most = 0.0;
    if groups.iter().any(Group::has_figure) {
        let sizes = (SMALLEST_POINT..=LARGEST).map(f32::from);
        let sizes: Vec<f32> = sizes.filter(|size| *size <= bare && *size >= least).collect();
        let widest = widest_of(shaper, groups);
        let tries = SHARES.iter().flat_map(|share| sizes.iter().map(move |size| (*share, *size)));
        for (share, size) in tries.filter(|(share, size)| widest * size <= share * room.0) {
            let words = measure_all(shaper, groups, size, share * room.0);
            let settings = STATURES.map(|stature| Setting { size, stature: Some(stature), share });
            let fitting = settings.iter().find(|one| fits(shaper, groups, &words, (**one, room)));
            let Some(setting) = fitting else { continue };
            // A point more of the words is worth more than one of the figures.
            let worth = size * setting.stature.unwrap_or_default().sqrt();
            let worth = if share < 1.0 { worth * NARROWED } else { worth };
            if worth > most {
                (best, most) = (*setting, worth);
            }
        }
    }
    Some(best)
}

/// The largest size at which the words fit and none is broken.
fn largest_size(shaper: &mut Shaper<'_>, groups: &[Group<'_>], room: (f32, f32)) -> Option<f32> {
    let widest = widest_of(shaper, groups);
    let most = most_inked(groups, room);
    let sizes = (SMALLEST_POINT..=LARGEST).rev().map(f32::from);
    sizes.filter(|size| widest * size <= room.0 && *size <= most).find(|size| {
        let words = measure_all(shaper, groups, *size, room.0);
        fits(shaper, groups, &words, (Setting::bare(*size), room))
    })
}

/// The largest size at which the words keep to their share of the ink; they are never too small to be read for its sake.
fn most_inked(groups: &[Group<'_>], room: (f32, f32)) -> f32 {
    let points = groups.iter().flat_map(|group| &group.points);
    let letters: usize =
        points.map(|point| point.chars().filter(|c| !c.is_whitespace()).count()).sum();
    #[allow(clippy::cast_precision_loss, reason = "a count of letters on a sheet")]
    let letters = letters.max(1) as f32;
    let size = (room.0 * room.1 * INK_OF_WORDS / (INK_OF_LETTER * letters)).sqrt();
    size.max(f32::from(SMALLEST_POINT))
}

/// The width of the widest word at 1 pt.
fn widest_of(shaper: &mut Shaper<'_>, groups: &[Group<'_>]) -> f32 {
    groups.iter().map(|group| widest_word(shaper, group, 1.0)).fold(0.0, f32::max)
}

fn measure_all(
    shaper: &mut Shaper<'_>,
    groups: &[Group<'_>],
    size: f32,
    width: f32,
) -> Vec<Extent> {
    groups.iter().map(|group| measure_words(shaper, group, size, width)).collect()
}

/// Whether parts whose words take so much room fit the sheet.
fn fits(
    shaper: &Shaper<'_>,
    groups: &[Group<'_>],
    words: &[Extent],
    (setting, (width, height)): (Setting, (f32, f32)),
) -> bool {
    let all = groups.iter().zip(words);
    let used: f32 =
        all.map(|(group, words)| height_of(shaper, group, setting, (*words, width))).sum();
    // Letters of some scripts reach far below their line.
    used + gap_at(setting.size) * between(groups.len()) + setting.size * DEEP <= height
}

/// The least room between two parts.
fn gap_at(size: f32) -> f32 {
    size * 0.45
}

/// Places the groups one below another on one line that runs past all of them; what is left is shared out between
/// them.
fn lay_groups(
    shaper: &mut Shaper<'_>,
    groups: &[Group<'_>],
    setting: Setting,
    (width, height): (f32, f32),
    source: &SheetSource<'_>,
) -> Vec<Item> {
    let blocks: Vec<_> =
        groups.iter().map(|group| lay_group(shaper, group, setting, width, source)).collect();
    let used: f32 = blocks.iter().map(|(_, tall, _)| tall).sum();
    let spare = (height - used - setting.size * DEEP).max(0.0);
    let gap = (spare / between(groups.len()).max(1.0)).min(setting.size * MOST_APART);
    let (mut y, last) = (0.0, blocks.len().saturating_sub(1));
    let mut items = Vec::new();
    for (index, (block, tall, stops)) in blocks.into_iter().enumerate() {
        let end = if index < last { tall + gap } else { tall };
        let margin = Margin { kind: groups[index].kind, end, is_last: index == last, stops };
        let all = margin.lay(setting.size).into_iter().chain(block);
        items.extend(all.map(|item| item.moved(0.0, y)));
        y += tall + gap;
    }
    items
}

/// The title stands at the head as large as it can: its edition and maker are enough here.
fn lay_foot(
    shaper: &mut Shaper<'_>,
    (width, height): (f32, f32),
    source: &SheetSource<'_>,
) -> Vec<Item> {
    let y = height - Type::SMALL.leading;
    let origin = Origin { title: String::new(), ..source.origin() };
    let items = origin.lay(shaper, Type::SMALL, width).into_iter();
    items.map(|item| item.moved(0.0, y)).collect()
}
