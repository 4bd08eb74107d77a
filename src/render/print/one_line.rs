//! Words on one line: how wide they are, and how they are shortened where they have no room. Only what stands elsewhere in
//! full is ever cut.

use std::borrow::Cow;

use super::scale::Type;
use super::shaper::{ShapedLine, Shaper};
use super::sheets::one;

/// Between two things of one line.
pub const DOT: &str = " · ";

/// Cuts a line with “…” where it is wider than the room for it; only for what stands elsewhere in full.
pub fn fit_line(shaper: &mut Shaper<'_>, text: &str, kind: Type, width: f32) -> Option<ShapedLine> {
    let line = whole_line(shaper, text, kind)?;
    if line.width <= width {
        return Some(line);
    }
    let text = cut_text(shaper, text, kind, width)?;
    whole_line(shaper, &text, kind)
}

/// A text that is no wider than the room for it, cut with “…” where it must be; nothing where there is no room even
/// for that.
pub fn cut_text<'t>(
    shaper: &mut Shaper<'_>,
    text: &'t str,
    kind: Type,
    width: f32,
) -> Option<Cow<'t, str>> {
    let whole = width_of(shaper, text, kind);
    if whole <= width {
        return Some(Cow::Borrowed(text));
    }
    // As many letters as there is room for: the share of the width is a good guess, then one more or less
    // at a time.
    let letters: Vec<char> = text.chars().collect();
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        clippy::cast_precision_loss,
        reason = "a count of letters of one line"
    )]
    let guess = (letters.len() as f32 * width / whole) as usize;
    let cut = |shaper: &mut Shaper<'_>, count: usize| {
        let shown: String = letters[..count].iter().collect();
        let text = format!("{}…", shown.trim_end());
        (width_of(shaper, &text, kind) <= width).then_some(text)
    };
    let mut fitting = (0..=guess.min(letters.len() - 1))
        .rev()
        .find_map(|count| cut(shaper, count).map(|text| (count, text)))?;
    while fitting.0 < letters.len()
        && let Some(longer) = cut(shaper, fitting.0 + 1)
    {
        fitting = (fitting.0 + 1, longer);
    }
    Some(Cow::Owned(fitting.1))
}

/// A text on one line, however long.
pub fn whole_line(shaper: &mut Shaper<'_>, text: &str, kind: Type) -> Option<ShapedLine> {
    shaper.shape(&one(text), kind, f32::MAX / 4.0).into_iter().next()
}

/// A title that is too long for its room is called by what stands before its colon.
pub fn short_title<'t>(shaper: &mut Shaper<'_>, title: &'t str, kind: Type, room: f32) -> &'t str {
    match title.split_once(':') {
        Some((name, _)) if width_of(shaper, title, kind) > room => name,
        _ => title,
    }
}

/// How wide a text is on one line; its glyphs need no places for that.
pub fn width_of(shaper: &mut Shaper<'_>, text: &str, kind: Type) -> f32 {
    let line = shaper.try_out(|shaper| whole_line(shaper, text, kind));
    line.map_or(0.0, |line| line.width)
}
