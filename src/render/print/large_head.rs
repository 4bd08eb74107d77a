//! The head of the wall poster and of a booklet: a tab on a thick line as cards have it, and under it the title as large
//! as its line holds, in black on white: a field of black would take more ink than all the words. What stands after a
//! colon is set smaller below.

use super::one_line::fit_line;
use super::page::{Item, Role, WHITE};
use super::scale::Type;
use super::shaper::{ShapedLine, Shaper};
use super::sheets::{SheetSource, one, shape_title};
use super::strip::placed;
use super::tab::tab;

/// The tab, and the thick line that it stands on.
const TAB: f32 = 21.0;
const LINE: f32 = 2.4;

/// What stands after a colon: its share of the name’s size.
const REST_SHARE: f32 = 0.5;

/// How large a title may be, in points.
#[derive(Clone, Copy, Debug)]
pub struct TitleSizes {
    pub most: f32,
    /// A name that is no larger than this on one line is set on two with the rest of the title.
    pub least_name: f32,
    /// The title on two lines: largest and smallest. A longer one has more lines, where it may.
    pub two_lines: (u8, u8),
    /// What stands after a colon is no smaller or larger than this.
    pub rest: (f32, f32),
    pub may_have_more_lines: bool,
}

/// Lays the head, with what it is about in the tab; and how tall it is.
pub fn lay_large_head(
    shaper: &mut Shaper<'_>,
    width: f32,
    about: &str,
    sizes: TitleSizes,
    source: &SheetSource<'_>,
) -> (Vec<Item>, f32) {
    let mut items = lay_tab(shaper, width, about, source);
    let mut y = TAB + LINE / 2.0;
    items.push(Item::line((0.0, TAB), (width, TAB), LINE));
    y += 7.0;
    let mut words = Vec::new();
    for (line, kind) in title_lines(shaper, width, sizes, &source.title()) {
        words.extend(placed(line, 0.0).map(|item| item.moved(0.0, y)));
        y += shaper.leading(kind);
    }
    items.push(Item::group(Role::Heading(1), shaper.next_key(), words));
    (items, y)
}

/// What it is about, white on black, and the school at the other end of the line.
fn lay_tab(
    shaper: &mut Shaper<'_>,
    width: f32,
    about: &str,
    source: &SheetSource<'_>,
) -> Vec<Item> {
    let mut items = Vec::new();
    let label = Type::LABEL.sized(15.0);
    let mut left = 0.0;
    if let Some(line) = fit_line(shaper, about, label, width * 0.5) {
        left = 9.0 + line.width + 14.0;
        items.push(tab(left, TAB));
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

/// The lines of the title and how they are set: the name on one line and the rest below, or all on two.
fn title_lines(
    shaper: &mut Shaper<'_>,
    width: f32,
    sizes: TitleSizes,
    title: &str,
) -> Vec<(ShapedLine, Type)> {
    let (name, rest) = split_title(title);
    let size = size_in(shaper, name, true, width).min(sizes.most);
    let rest_size = size_in(shaper, rest, false, width).min(size * REST_SHARE).min(sizes.rest.1);
    let fits = size >= sizes.least_name && (rest.is_empty() || rest_size >= sizes.rest.0);
    if fits {
        let kinds = [(name, name_type(size)), (rest, Type::body(rest_size))];
        let lines = kinds.map(|(text, kind)| {
            fit_line(shaper, text, kind, width)
                .filter(|_| !text.is_empty())
                .map(|line| (line, kind))
        });
        return lines.into_iter().flatten().collect();
    }
    let (largest, smallest) = sizes.two_lines;
    let mut of_two = (smallest..=largest).rev().map(|size| name_type(f32::from(size)));
    let of_two = of_two.find_map(|kind| {
        let lines = shaper.shape(&one(title), kind, width);
        (lines.len() <= 2).then(|| lines.into_iter().map(|line| (line, kind)).collect())
    });
    let kind = name_type(f32::from(smallest));
    of_two.unwrap_or_else(|| {
        let lines = if sizes.may_have_more_lines {
            shape_title(shaper, title, kind, width)
        } else {
            fit_line(shaper, title, kind, width).into_iter().collect()
        };
        lines.into_iter().map(|line| (line, kind)).collect()
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
