//! The cover of a booklet: the title, what the session is with a figure beside it, and what is on which page.

use super::booklet::{FOOT, lay_foot};
use super::card_fit::{Card, Cell};
use super::drawings::{THINNEST, place_marks};
use super::flow::{break_frames, place_frames};
use super::large_head::{TitleSizes, lay_large_head};
use super::moment_row::measure_row;
use super::origin::Origin;
use super::page::{Item, Role};
use super::plate::Impression;
use super::scale::{SMALLEST, Type};
use super::shaper::Shaper;
use super::sheets::SheetSource;
use super::strip::{Column, Seat, Strip, placed};
use crate::drawing::part_mark;
use crate::figure::Moment;
use crate::pack::PartKind;
use crate::prose::{Run, read_line};
use crate::render::phrases::{colon, floor_size};
use crate::render::quantities::Said as _;

/// The title of a half page.
const TITLE: TitleSizes = TitleSizes {
    most: 42.0,
    least_name: 24.0,
    two_lines: (30, 19),
    rest: (14.0, 21.0),
    may_have_more_lines: true,
};

/// Between the title and what stands below it.
const BELOW: f32 = 12.0;

/// The figure’s share of the width, how far the words stand from it, and how tall it is at most, in sizes of the words.
const FIGURE: f32 = 0.36;
const APART: f32 = 14.0;
const TALLEST: f32 = 8.0;

/// Sizes of the summary and of the list of pages, tried until the cover is one page; the last are
/// there for the lists that go on on a second or third.
const COVER_SIZES: [(f32, f32); 8] = [
    (15.0, 13.0),
    (14.0, 12.5),
    (13.5, 12.0),
    (13.0, 11.5),
    (13.0, SMALLEST),
    (SMALLEST, SMALLEST),
    (SMALLEST, SMALLEST),
    (SMALLEST, SMALLEST),
];

/// Lays the cover, and the pages that its list goes on on.
pub fn lay_cover(
    shaper: &mut Shaper<'_>,
    cell: Cell,
    cards: &[Card],
    source: &SheetSource<'_>,
) -> Vec<Vec<Item>> {
    let about = source.words.say(&format!("activity-{}", source.session.activity.word()));
    let (head, tall) = lay_large_head(shaper, cell.width, &about, TITLE, source);
    let tall = tall + BELOW;
    // Where the list of pages itself needs pages, that moves on what it lists.
    let mut covers = 1;
    let mut frames = Vec::new();
    for (summary, line) in COVER_SIZES {
        let strips = cover_strips(shaper, (cell, summary, line), (cards, covers), source);
        let room = |frame: usize| cell.height - FOOT - if frame == 0 { tall } else { 0.0 };
        let starts = break_frames(&strips, room);
        let is_settled = starts.len() == covers;
        frames = place_frames(strips, &starts);
        if is_settled {
            break;
        }
        if line <= SMALLEST {
            covers = frames.len();
        }
    }
    let mut pages: Vec<Vec<Item>> = frames.into_iter().map(|frame| frame.items).collect();
    for (page, number) in pages.iter_mut().zip(1..).skip(1) {
        page.extend(lay_foot(shaper, cell, number, &source.title()));
    }
    if let Some(first) = pages.first_mut() {
        let moved = std::mem::take(first).into_iter().map(|item| item.moved(0.0, tall));
        *first = head.into_iter().chain(moved).collect();
        let y = cell.height - Type::SMALL.leading;
        // The title stands above in full.
        let origin = Origin { title: String::new(), ..source.origin() };
        let origin = origin.lay(shaper, Type::SMALL, cell.width).into_iter();
        first.extend(origin.map(|item| item.moved(0.0, y)));
    }
    pages
}

fn cover_strips(
    shaper: &mut Shaper<'_>,
    (cell, summary, line): (Cell, f32, f32),
    (cards, covers): (&[Card], usize),
    source: &SheetSource<'_>,
) -> Vec<Strip> {
    let mut column = Column::new(shaper, cell.width);
    column.strips = what_it_is(column.shaper, cell.width, summary, source);
    column.gap(summary);
    column.label(&source.words.say("booklet-inside"), Type::LABEL);
    for (index, card) in cards.iter().enumerate().filter(|(_, card)| card.turn == 0) {
        column.gap(line * 0.8 - 7.4);
        let page = index + covers + 1;
        contents_line(&mut column, card, (page, source), Type::body(line));
    }
    column.strips
}

/// The summary and the facts, and beside them the figure that stands for the session, where there is one and the words
/// are few.
fn what_it_is(
    shaper: &mut Shaper<'_>,
    width: f32,
    size: f32,
    source: &SheetSource<'_>,
) -> Vec<Strip> {
    let beside = chief_moment(source).and_then(|moment| {
        let strips = told(shaper, width * (1.0 - FIGURE) - APART, size, source);
        let frame = place_frames(strips, &[0]).pop().unwrap_or_default();
        let extent = measure_row(std::slice::from_ref(moment), source);
        let stature = (TALLEST * size / extent.tall).min(width * FIGURE / extent.wide);
        let tall = frame.used.max(extent.tall * stature);
        (frame.used <= TALLEST * size * 1.4).then_some((moment, frame, stature, tall))
    });
    let Some((moment, frame, stature, tall)) = beside else {
        return told(shaper, width, size, source);
    };
    let set = source.figures.set(moment, stature);
    let at = (width - width * FIGURE / 2.0 - set.width() / 2.0, tall - set.height());
    let role = Role::Figure(source.figures.says(moment).to_owned());
    let mut items: Vec<Item> = frame.items;
    items.push(Item::group(role, shaper.next_key(), vec![Item::Plate(Impression { at, ..set })]));
    vec![Strip { height: tall, items, ..Strip::default() }]
}

/// What the session is, and for whom.
fn told(shaper: &mut Shaper<'_>, width: f32, size: f32, source: &SheetSource<'_>) -> Vec<Strip> {
    let mut column = Column::new(shaper, width);
    column.words(&read_line(&source.session.summary), Type::body(size), Seat::default());
    column.gap(8.0);
    column.words(&[Run::bold(facts(source))], Type::body(12.0), Seat::default());
    column.strips
}

/// The moment that stands for the session: of its first step that has a figure, else of any part.
fn chief_moment<'s>(source: &SheetSource<'s>) -> Option<&'s Moment> {
    let parts = &source.session.parts;
    let steps = parts.iter().filter(|part| part.kind == PartKind::Technique);
    steps.chain(parts).find_map(|part| part.figure.by_weight().into_iter().next())
}

/// “8-11 · 30 min · 3 m × 2 m”
fn facts(source: &SheetSource<'_>) -> String {
    let space = source.session.space.as_ref().map(|space| floor_size(space, source.words));
    let ages = format!("{} {}", source.words.say("fact-ages"), source.session.ages.value);
    let time = source.plans.time.slot.say(source.words);
    [Some(ages), Some(time), space].into_iter().flatten().collect::<Vec<_>>().join(" · ")
}

/// The mark of the part, what it is called, and its page at the right.
fn contents_line(
    column: &mut Column<'_, '_>,
    card: &Card,
    (page, source): (usize, &SheetSource<'_>),
    kind: Type,
) {
    let (left, width) = (22.0, column.width);
    let mut items: Vec<Item> = Vec::new();
    if let Some(part) = card.head.kind {
        items.extend(place_marks(part_mark(part, (1.0, 2.0), 13.0), THINNEST));
    }
    let (label, title) = (&card.head.label, &card.head.title);
    // The opening’s own title stands above.
    let runs = if card.is_opening(&source.title()) {
        vec![Run::bold(label.as_str())]
    } else {
        vec![Run::plain(format!("{label}{}", colon(source.words))), Run::bold(title.as_str())]
    };
    let mut y = 0.0;
    let mut words = Vec::new();
    for line in column.shaper.shape(&runs, kind, width - left - 34.0) {
        words.extend(placed(line, left).map(|item| item.moved(0.0, y)));
        y += kind.leading;
    }
    let number = column.shaper.shape(&[Run::bold(page.to_string())], kind, 40.0);
    for line in number {
        let x = width - line.width;
        words.extend(placed(line, x));
    }
    items.push(Item::group(Role::Paragraph, column.shaper.next_key(), words));
    items.push(Item::Line {
        from: (0.0, y + 1.5),
        to: (width, y + 1.5),
        thickness: 0.5,
        dash: None,
        grey: 0.6,
    });
    column.drawing(y + 2.0, items);
}
