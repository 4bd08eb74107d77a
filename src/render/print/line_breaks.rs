//! A shaped paragraph → lines no wider than a width: each takes as much as it has room for.

use std::collections::BTreeSet;

use super::atoms::{Paragraph, Placed, Span};
use super::bidi::Setting;
use super::breaks::SOFT_HYPHEN;
use super::page::{BLACK, GlyphRun, PlacedGlyph};
use super::shaper::{SHAPED_AT, ShapedLine, baseline_of, hyphenate};

/// A line: its first atom and the one after its last, and the width of its words.
#[derive(Clone, Copy)]
struct Extent {
    from: usize,
    to: usize,
    width: f32,
}

/// Sets a paragraph in lines. A word that is wider than a line is broken. A line that ends inside a word
/// leaves room for its hyphen: those that do not are broken anew, from the first to the last.
pub fn set_lines(paragraph: &Paragraph, text: &str, setting: &Setting<'_>) -> Vec<ShapedLine> {
    let atoms = &paragraph.placed;
    let scale = setting.kind.size / SHAPED_AT;
    let width = setting.width / scale;
    let hyphen = setting.faces.of_weight(setting.kind.is_bold).hyphen_width * SHAPED_AT;
    let mut narrowed = BTreeSet::new();
    let mut extents = break_paragraph(paragraph, width, hyphen, &narrowed);
    if paragraph.is_softened {
        let is_overlong = |(index, extent): (usize, &Extent), narrowed: &BTreeSet<usize>| {
            extent.width > width - hyphen
                && ends_in_word(atoms, *extent, text)
                && !narrowed.contains(&index)
        };
        while let Some(line) =
            extents.iter().enumerate().position(|line| is_overlong(line, &narrowed))
        {
            narrowed.insert(line);
            extents = break_paragraph(paragraph, width, hyphen, &narrowed);
        }
    }
    extents.into_iter().map(|extent| set_line(paragraph, extent, text, setting)).collect()
}

/// Lines from the first to the last; the narrowed ones are a hyphen shorter.
fn break_paragraph(
    paragraph: &Paragraph,
    width: f32,
    hyphen: f32,
    narrowed: &BTreeSet<usize>,
) -> Vec<Extent> {
    let atoms = &paragraph.placed;
    let mut extents = Vec::with_capacity(4);
    let mut rest = paragraph.spans.as_slice();
    let mut from = 0;
    while from < atoms.len() {
        let room = if narrowed.contains(&extents.len()) { width - hyphen } else { width };
        while rest.first().is_some_and(|span| span.to <= from) {
            rest = &rest[1..];
        }
        let to = end_of_line(atoms, rest, from, room);
        extents.push(Extent { from, to, width: width_of(&atoms[from..to]) });
        from = to;
    }
    extents
}

/// The atom after the last of a line that begins with `from`, in the first of the spans. Spaces hang out of it; where
/// nothing may break, it breaks before what it has no room for.
fn end_of_line(atoms: &[Placed], spans: &[Span], from: usize, room: f32) -> usize {
    let mut x = 0.0;
    let (mut place, mut emergency) = (None, None);
    for span in spans {
        if span.from >= from && x + span.bare <= room {
            // All of it has room.
            place = span.last_break.filter(|at| *at > from).or(place);
            emergency = Some(span.to - 1).filter(|at| *at > from).or(emergency);
            x += span.whole;
            continue;
        }
        for (index, placed) in atoms.iter().enumerate().take(span.to).skip(span.from.max(from)) {
            if x != 0.0 && placed.may_break {
                place = Some(index);
            } else if x != 0.0 {
                emergency = Some(index);
            }
            let next = x + placed.advance;
            if next > room
                && !placed.is_space
                && let Some(end) = place.or(emergency)
            {
                return end;
            }
            x = next;
        }
    }
    atoms.len()
}

/// Without the spaces that end it.
fn width_of(atoms: &[Placed]) -> f32 {
    let words = atoms.iter().rposition(|placed| !placed.is_space).map_or(0, |last| last + 1);
    atoms[..words].iter().map(|placed| placed.advance).sum()
}

fn ends_in_word(atoms: &[Placed], extent: Extent, text: &str) -> bool {
    let end = atoms[extent.to - 1].end;
    end < text.len() && text[..end].ends_with(SOFT_HYPHEN)
}

/// A line at its real size, with the words in the middle of the leading.
fn set_line(
    paragraph: &Paragraph,
    extent: Extent,
    text: &str,
    setting: &Setting<'_>,
) -> ShapedLine {
    let (kind, scale) = (setting.kind, setting.kind.size / SHAPED_AT);
    let atoms = &paragraph.placed;
    let mut line = ShapedLine {
        width: extent.width * scale,
        runs: Vec::new(),
        end: atoms[extent.to - 1].end,
        is_hyphenated: ends_in_word(atoms, extent, text),
    };
    if setting.is_trial {
        if line.is_hyphenated {
            line.width += setting.faces.of_weight(kind.is_bold).hyphen_width * kind.size;
        }
        return line;
    }
    let baseline = baseline_of(setting.faces, kind);
    let mut x = 0.0;
    let alike = |a: &Placed, b: &Placed| (a.face, a.source) == (b.face, b.source);
    for group in atoms[extent.from..extent.to].chunk_by(alike) {
        let start = x;
        let mut glyphs = Vec::with_capacity(group.len());
        for placed in group {
            // One by one: mostly it is one, and to extend by that takes three times as long.
            for glyph in paragraph.glyphs(placed) {
                glyphs.push(PlacedGlyph {
                    id: glyph.id,
                    x: (x - start + glyph.x) * scale,
                    rise: glyph.rise * scale,
                    text: glyph.text.clone(),
                });
            }
            x += placed.advance;
        }
        line.runs.push(GlyphRun {
            face: group[0].face,
            size: kind.size,
            at: (start * scale, baseline),
            grey: BLACK,
            glyphs,
            runs_left: false,
            source: group[0].source,
        });
    }
    if line.is_hyphenated {
        hyphenate(&mut line, setting.faces, kind);
    }
    line
}
