//! The wall poster: the key points on one sheet, as large as they fit, to be read from across a room.
//!
//! Type whose capitals subtend ten minutes of arc can be read by an eye of half the usual acuity
//! (ISO 8596: the letter of 6/6 subtends five). At 2 m that is 5.8 mm; the type here is never smaller.

use super::moment_row::{Extent, between};
use super::page::{BLACK, Item, Page, Role, WHITE};
use super::poster_group::{Group, SIDE, Setting, height_of, lay_group, measure_words, widest_word};
use super::scale::{MARGIN, Type, paper_size};
use super::shaper::Shaper;
use super::sheets::{SheetSource, fit_line, one};
use super::strip::placed;
use crate::pack::{Part, PartKind};

/// Sizes of the key points in points, largest and smallest.
const LARGEST: u8 = 60;
pub const SMALLEST_POINT: u8 = 25;

/// Statures that are tried, in points: 78 to 22 mm.
const STATURES: [f32; 9] = [220.0, 190.0, 165.0, 142.0, 122.0, 105.0, 90.0, 76.0, 63.0];

/// Figures may cost key points no more of their size: they keep this share.
const LEAST_SHARE: f32 = 0.7;

/// What letters reach below the last line at most, in sizes.
const DEEP: f32 = 0.22;

/// The band at the head and the line at the foot.
const BAND: f32 = 66.0;
const FOOT: f32 = 22.0;

/// Lays out the poster: of the choices that are tried in turn, the first that fits the sheet.
pub fn lay_poster(shaper: &mut Shaper<'_>, source: &SheetSource<'_>) -> Vec<Page> {
    let (width, height) = paper_size(source.paper());
    let inner = (width - 2.0 * MARGIN, height - 2.0 * MARGIN);
    let room = (inner.0 - SIDE, inner.1 - BAND - FOOT);
    let (groups, setting) = choose_groups(shaper, source, room);
    let mut items = lay_band(shaper, inner.0, source);
    items.extend(lay_groups(shaper, &groups, setting, room, source));
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
    let fewer = [3, 2, 1].map(|most| groups_of(source, most, core));
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
    (groups, Setting { size: size.unwrap_or(f32::from(SMALLEST_POINT)), stature: None })
}

fn groups_of<'s>(
    source: &SheetSource<'s>,
    most: usize,
    is_shown: impl Fn(&Part) -> bool,
) -> Vec<Group<'s>> {
    let parts = source.session.parts.iter();
    let shown = parts.filter(|part| !part.key_points.is_empty() && is_shown(part));
    shown.map(|part| Group::of(part, most, source)).collect()
}

/// Key points and figures, both as large as they go together; else key points alone.
fn set_poster(shaper: &mut Shaper<'_>, groups: &[Group<'_>], room: (f32, f32)) -> Option<Setting> {
    let bare = largest_size(shaper, groups, room)?;
    let least = f32::from(SMALLEST_POINT).max(bare * LEAST_SHARE);
    let mut best = Setting { size: bare, stature: None };
    let mut most = 0.0;
    if groups.iter().any(Group::has_figure) {
        let sizes = (SMALLEST_POINT..=LARGEST).map(f32::from);
        for size in sizes.filter(|size| *size <= bare && *size >= least) {
            let words = measure_all(shaper, groups, (size, true), room.0);
            let settings = STATURES.map(|stature| Setting { size, stature: Some(stature) });
            let fitting = settings.iter().find(|one| fits(shaper, groups, &words, (**one, room)));
            let Some(setting) = fitting else { continue };
            // A point more of the words is worth more than one of the figures.
            let worth = size * setting.stature.unwrap_or_default().sqrt();
            if worth > most {
                (best, most) = (*setting, worth);
            }
        }
    }
    Some(best)
}

/// The largest size at which the words fit and none is broken.
fn largest_size(shaper: &mut Shaper<'_>, groups: &[Group<'_>], room: (f32, f32)) -> Option<f32> {
    let words = groups.iter().map(|group| widest_word(shaper, group, 1.0));
    let widest = words.fold(0.0, f32::max);
    let sizes = (SMALLEST_POINT..=LARGEST).rev().map(f32::from);
    sizes.filter(|size| widest * size <= room.0).find(|size| {
        let words = measure_all(shaper, groups, (*size, false), room.0);
        fits(shaper, groups, &words, (Setting { size: *size, stature: None }, room))
    })
}

fn measure_all(
    shaper: &mut Shaper<'_>,
    groups: &[Group<'_>],
    (size, is_numbered): (f32, bool),
    width: f32,
) -> Vec<Extent> {
    let measure = |group| measure_words(shaper, group, (size, is_numbered), width);
    groups.iter().map(measure).collect()
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

/// Places the groups one below another, what is left shared out between them.
fn lay_groups(
    shaper: &mut Shaper<'_>,
    groups: &[Group<'_>],
    setting: Setting,
    (width, height): (f32, f32),
    source: &SheetSource<'_>,
) -> Vec<Item> {
    let blocks: Vec<(Vec<Item>, f32)> =
        groups.iter().map(|group| lay_group(shaper, group, setting, width, source)).collect();
    let used: f32 = blocks.iter().map(|(_, tall)| tall).sum();
    let spare = (height - used - setting.size * DEEP).max(0.0);
    let gap = (spare / between(groups.len()).max(1.0)).min(setting.size * 1.6);
    let mut y = BAND;
    let mut items = Vec::new();
    for (block, tall) in blocks {
        items.extend(block.into_iter().map(|item| item.moved(0.0, y)));
        y += tall + gap;
    }
    items
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
