//! The head of the wall poster: a tab on a thick line as cards have it, and under it the title as large as its line
//! holds, in black on white: a field of black would take more ink than all the words. What stands after a colon is
//! set smaller below.

use super::one_line::fit_line;
use super::page::{BLACK, Corner, Item, Role, WHITE};
use super::scale::Type;
use super::shaper::{ShapedLine, Shaper};
use super::sheets::{SheetSource, one};
use super::strip::placed;

/// The tab, and the thick line that it stands on.
const TAB: f32 = 21.0;
const LINE: f32 = 2.4;

/// A title is no larger where there is much to say below it.
const LARGEST: [(usize, f32); 3] = [(6, 58.0), (9, 50.0), (usize::MAX, 44.0)];

/// A name that is no larger than this on one line is set on two with the rest of the title.
const LEAST_NAME: f32 = 31.0;

/// The title on two lines: largest and smallest.
const TWO_LINES: (u8, u8) = (40, 22);

/// What stands after a colon: its share of the name’s size, and no larger or smaller than this.
const REST_SHARE: f32 = 0.5;
const REST: (f32, f32) = (17.0, 27.0);

/// Between the head and the first part.
const BELOW: f32 = 15.0;

/// Lays the head over so many key points; and how tall it is.
pub fn lay_poster_head(
    shaper: &mut Shaper<'_>,
    width: f32,
    points: usize,
    source: &SheetSource<'_>,
) -> (Vec<Item>, f32) {
    let label = if points > 0 { "key-points" } else { "running-order" };
    let mut items = lay_tab(shaper, width, label, source);
    let mut y = TAB + LINE / 2.0;
    items.push(Item::line((0.0, TAB), (width, TAB), LINE));
    y += 7.0;
    let mut words = Vec::new();
    for (line, kind) in title_lines(shaper, width, points, &source.title()) {
        words.extend(placed(line, 0.0).map(|item| item.moved(0.0, y)));
        y += shaper.leading(kind);
    }
    items.push(Item::group(Role::Heading(1), shaper.next_key(), words));
    (items, y + BELOW)
}

/// “Key points” or what else it shows, white on black, and the school at the other end of the line.
fn lay_tab(
    shaper: &mut Shaper<'_>,
    width: f32,
    about: &str,
    source: &SheetSource<'_>,
) -> Vec<Item> {
    let mut items = Vec::new();
    let label = Type::LABEL.sized(15.0);
    let mut left = 0.0;
    let about = source.words.say(about);
    if let Some(line) = fit_line(shaper, &about, label, width * 0.5) {
        left = 9.0 + line.width + 14.0;
        items.push(tab(left));
        let y = (TAB - label.leading) / 2.0;
        let words = placed(line, 9.0).map(|item| item.moved(0.0, y).shaded(WHITE)).collect();
        items.push(Item::group(Role::Paragraph, shaper.next_key(), words));
    }
    let kind = Type::SMALL.sized(13.0);
    let school = source.letterhead().school;
    if let Some(line) = fit_line(shaper, &school, kind, width - left - 20.0) {
        let (x, y) = (width - line.width, TAB - LINE - kind.leading);
        let words = placed(line, x).map(|item| item.moved(0.0, y)).collect();
        items.push(Item::group(Role::Paragraph, shaper.next_key(), words));
    }
    items
}

/// A black tab with its right shoulder cut off.
fn tab(width: f32) -> Item {
    let cut = TAB / 3.0;
    let points = [(0.0, 0.0), (width - cut, 0.0), (width, cut), (width, TAB), (0.0, TAB)];
    let outline = points.map(|at| Corner { at, is_bent: false }).to_vec();
    Item::Shape { outline, fill: Some(BLACK), stroke: None }
}

/// The lines of the title and how they are set: the name on one line and the rest below, or all on two.
fn title_lines(
    shaper: &mut Shaper<'_>,
    width: f32,
    points: usize,
    title: &str,
) -> Vec<(ShapedLine, Type)> {
    let (name, rest) = split_title(title);
    let most = LARGEST.iter().find(|(count, _)| points <= *count).map_or(44.0, |(_, size)| *size);
    let size = size_in(shaper, name, true, width).min(most);
    let rest_size = size_in(shaper, rest, false, width).min(size * REST_SHARE).min(REST.1);
    let fits = size >= LEAST_NAME && (rest.is_empty() || rest_size >= REST.0);
    if fits {
        let kinds = [(name, name_type(size)), (rest, Type::body(rest_size))];
        let lines = kinds.map(|(text, kind)| {
            fit_line(shaper, text, kind, width)
                .filter(|_| !text.is_empty())
                .map(|line| (line, kind))
        });
        return lines.into_iter().flatten().collect();
    }
    let mut sizes = (TWO_LINES.1..=TWO_LINES.0).rev().map(|size| name_type(f32::from(size)));
    let of_two = sizes.find_map(|kind| {
        let lines = shaper.shape(&one(title), kind, width);
        (lines.len() <= 2).then(|| lines.into_iter().map(|line| (line, kind)).collect())
    });
    let kind = name_type(f32::from(TWO_LINES.1));
    of_two.unwrap_or_else(|| {
        fit_line(shaper, title, kind, width).into_iter().map(|line| (line, kind)).collect()
    })
}

/// “Leap the brook:” and “standing long jump”.
fn split_title(title: &str) -> (&str, &str) {
    title.find(": ").map_or((title, ""), |at| (&title[..=at], title[at + 1..].trim_start()))
}

const fn name_type(size: f32) -> Type {
    Type { size, leading: size * 1.12, is_bold: true }
}

/// How large a text fits a line.
fn size_in(shaper: &mut Shaper<'_>, text: &str, is_bold: bool, width: f32) -> f32 {
    let kind = Type { is_bold, ..Type::body(100.0) };
    let line = shaper.try_out(|shaper| shaper.shape(&one(text), kind, f32::MAX / 4.0));
    let wide = line.first().map_or(0.0, |line| line.width);
    if wide > 0.0 { (width / wide * 100.0).floor() } else { f32::MAX }
}
