//! Lines of a text in which scripts run in both directions, as parley lays them out: its glyphs go from left
//! to right in the order they are seen in, which is not that of the text.

use std::collections::BTreeSet;

use parley::Layout;
use parley::layout::{Alignment, AlignmentOptions, PositionedLayoutItem};

use super::breaks::SOFT_HYPHEN;
use super::faces::Faces;
use super::page::{BLACK, GlyphRun, GlyphText, PlacedGlyph};
use super::scale::Type;
use super::shaper::{SHAPED_AT, ShapedLine, Source, baseline_of, hyphenate};

/// How lines are to be set.
pub struct Setting<'f> {
    pub faces: &'f Faces,
    pub kind: Type,
    pub width: f32,
    /// Only the measures are wanted.
    pub is_trial: bool,
}

/// The lines of a text that was shaped.
pub fn lay_lines(
    layout: &mut Layout<Source>,
    text: &str,
    setting: &Setting<'_>,
) -> Vec<ShapedLine> {
    let (kind, faces) = (setting.kind, setting.faces);
    let scale = kind.size / SHAPED_AT;
    let hyphen = faces.of_weight(kind.is_bold).hyphen_width;
    break_lines(layout, text, setting.width / scale, hyphen * SHAPED_AT);
    layout.align(Alignment::Left, AlignmentOptions::default());
    let lines = layout.lines().map(|line| {
        if setting.is_trial {
            measured_line(text, &line, kind, hyphen)
        } else {
            shaped_line(faces, text, &line, kind, layout.is_rtl())
        }
    });
    lines.collect()
}

/// Breaks a text into lines; one that ends inside a word leaves room for its hyphen. Lines that do not
/// are broken anew, narrower by a hyphen, from the first to the last.
fn break_lines(layout: &mut Layout<Source>, text: &str, width: f32, hyphen: f32) {
    layout.break_all_lines(Some(width));
    if !text.contains(SOFT_HYPHEN) {
        return;
    }
    let mut narrowed = BTreeSet::new();
    while let Some(line) = first_overlong(layout, text, width - hyphen, &narrowed) {
        narrowed.insert(line);
        let mut breaker = layout.break_lines();
        breaker.state_mut().set_layout_max_advance(width);
        let mut line = 0;
        loop {
            let room = if narrowed.contains(&line) { width - hyphen } else { width };
            breaker.state_mut().set_line_max_advance(room);
            if breaker.break_next().is_none() {
                break;
            }
            line += 1;
        }
        breaker.finish();
    }
}

/// The first line that ends inside a word with no room for a hyphen.
fn first_overlong(
    layout: &Layout<Source>,
    text: &str,
    room: f32,
    narrowed: &BTreeSet<usize>,
) -> Option<usize> {
    layout.lines().enumerate().position(|(index, line)| {
        let advance = line.metrics().advance;
        advance > room && ends_in_word(text, &line) && !narrowed.contains(&index)
    })
}

fn ends_in_word(text: &str, line: &parley::layout::Line<'_, Source>) -> bool {
    let range = line.text_range();
    range.end < text.len() && text[range].ends_with(SOFT_HYPHEN)
}

/// A line at its real size, with the words in the middle of the leading.
fn shaped_line(
    faces: &Faces,
    text: &str,
    line: &parley::layout::Line<'_, Source>,
    kind: Type,
    runs_left: bool,
) -> ShapedLine {
    let (metrics, scale) = (line.metrics(), kind.size / SHAPED_AT);
    // The space that ends a line hangs out of it: at the left where the text runs left.
    let hanging = if runs_left { metrics.hanging_advance } else { 0.0 };
    let start = metrics.offset + hanging;
    let baseline = baseline_of(faces, kind);
    let mut runs = Vec::new();
    for item in line.items() {
        let PositionedLayoutItem::GlyphRun(glyph_run) = item else { continue };
        let run = glyph_run.run();
        let Some(face) = faces.by_blob(run.font().data.id()) else { continue };
        let runs_left = run.is_rtl();
        let mut glyphs = placed_glyphs(text, &glyph_run, scale);
        if runs_left {
            glyphs.reverse();
        }
        let run = GlyphRun {
            face: face.face,
            size: run.font_size() * scale,
            at: ((glyph_run.offset() - start) * scale, baseline),
            grey: BLACK,
            glyphs,
            runs_left,
            source: glyph_run.style().brush,
        };
        runs.push((start_of(&glyph_run), run));
    }
    // Runs come as they stand from left to right; they are read in the order of the text.
    runs.sort_by_key(|(start, _)| *start);
    let mut shaped = ShapedLine {
        width: width_of(line, kind),
        runs: runs.into_iter().map(|(_, run)| run).collect(),
        end: line.text_range().end,
        is_hyphenated: false,
    };
    if ends_in_word(text, line) {
        hyphenate(&mut shaped, faces, kind);
    }
    shaped
}

/// Where in the text the words of a run begin.
fn start_of(glyph_run: &parley::layout::GlyphRun<'_, Source>) -> usize {
    own_clusters(glyph_run).map(|cluster| cluster.text_range().start).min().unwrap_or(0)
}

/// The clusters of a run from left to right: a shaped run can hold several of ours.
fn own_clusters<'r>(
    glyph_run: &'r parley::layout::GlyphRun<'r, Source>,
) -> impl Iterator<Item = parley::layout::Cluster<'r, Source>> {
    let own = glyph_run.style_index();
    glyph_run.run().visual_clusters().filter(move |cluster| cluster.style_index() == own)
}

/// The line’s measures alone.
fn measured_line(
    text: &str,
    line: &parley::layout::Line<'_, Source>,
    kind: Type,
    hyphen: f32,
) -> ShapedLine {
    let is_hyphenated = ends_in_word(text, line);
    let more = if is_hyphenated { hyphen * kind.size } else { 0.0 };
    let (width, end) = (width_of(line, kind) + more, line.text_range().end);
    ShapedLine { width, runs: Vec::new(), end, is_hyphenated }
}

fn width_of(line: &parley::layout::Line<'_, Source>, kind: Type) -> f32 {
    let metrics = line.metrics();
    (metrics.advance - metrics.hanging_advance) * kind.size / SHAPED_AT
}

/// What each glyph of a cluster stands for. A reader of the file knows one text for each glyph, so an alef
/// that carries a hamza must not be called by both: letter and marks are told apart where as many marks
/// are drawn as written, else the first glyph that takes room has all.
fn spell_glyphs(whole: &str, cluster: &parley::layout::Cluster<'_, Source>) -> Vec<String> {
    let is_mark = |advance: f32| advance.abs() < 0.01;
    let drawn: Vec<bool> = cluster.glyphs().map(|glyph| is_mark(glyph.advance)).collect();
    let apart: String = whole.chars().flat_map(take_apart).collect();
    let mut marks: Vec<char> = apart.chars().filter(|letter| is_arabic_mark(*letter)).collect();
    let is_told_apart = marks.len() == drawn.iter().filter(|is_mark| **is_mark).count();
    let mut letters = if is_told_apart {
        apart.chars().filter(|letter| !is_arabic_mark(*letter)).collect()
    } else {
        marks.clear();
        whole.to_owned()
    };
    let mut marks = marks.into_iter();
    let no_letter = drawn.iter().all(|is_mark| *is_mark);
    let spell = |is_mark| {
        if is_mark && !no_letter {
            marks.next().map_or_else(String::new, |mark| mark.to_string())
        } else {
            std::mem::take(&mut letters)
        }
    };
    drawn.into_iter().map(spell).collect()
}

/// Letters that fonts draw as a letter and a mark (Unicode, canonical decompositions).
fn take_apart(letter: char) -> impl Iterator<Item = char> {
    let (base, mark) = match letter {
        '\u{622}' => ('\u{627}', Some('\u{653}')),
        '\u{623}' => ('\u{627}', Some('\u{654}')),
        '\u{624}' => ('\u{648}', Some('\u{654}')),
        '\u{625}' => ('\u{627}', Some('\u{655}')),
        '\u{626}' => ('\u{64a}', Some('\u{654}')),
        '\u{6c0}' => ('\u{6d5}', Some('\u{654}')),
        '\u{6c2}' => ('\u{6c1}', Some('\u{654}')),
        '\u{6d3}' => ('\u{6d2}', Some('\u{654}')),
        other => (other, None),
    };
    std::iter::once(base).chain(mark)
}

/// Vowel marks, hamzas and the like (Unicode, general category Mn in the Arabic block).
fn is_arabic_mark(letter: char) -> bool {
    matches!(letter, '\u{64b}'..='\u{65f}' | '\u{670}')
}

/// Whether a letter is of the Arabic script (Unicode blocks Arabic, Arabic Supplement and Extended-A).
pub fn is_arabic(letter: char) -> bool {
    matches!(letter, '\u{600}'..='\u{6ff}' | '\u{750}'..='\u{77f}' | '\u{8a0}'..='\u{8ff}')
}

/// Signs that steer the text and are never drawn.
fn is_unseen(letter: char) -> bool {
    letter.is_control() || matches!(letter, '\u{200e}' | '\u{200f}')
}

/// The glyphs of a run from left to right, each with the text of its cluster. A ligature carries the
/// text of all its letters.
fn placed_glyphs(
    text: &str,
    glyph_run: &parley::layout::GlyphRun<'_, Source>,
    scale: f32,
) -> Vec<PlacedGlyph> {
    let mut glyphs: Vec<PlacedGlyph> = Vec::new();
    let mut pen = 0.0;
    // From right to left, the letters that go on a ligature come before it: they wait for it.
    let mut waiting = String::new();
    for cluster in own_clusters(glyph_run) {
        // A soft hyphen is seen only where a line ends with it.
        let words = &text[cluster.text_range()].replace(SOFT_HYPHEN, "");
        if cluster.is_ligature_continuation() && cluster.is_rtl() {
            waiting.insert_str(0, words);
            continue;
        }
        if cluster.is_ligature_continuation() {
            if let Some(last) = glyphs.last_mut() {
                last.text = GlyphText::of(&format!("{}{words}", last.text));
            }
            continue;
        }
        let whole = format!("{words}{}", std::mem::take(&mut waiting));
        let said = spell_glyphs(&whole, &cluster);
        for (glyph, text) in cluster.glyphs().zip(said) {
            let id = u16::try_from(glyph.id).unwrap_or(0);
            // A sign that the faces lack (an emoji) is left out rather than printed as an empty box.
            if id != 0 && !whole.chars().all(is_unseen) {
                glyphs.push(PlacedGlyph {
                    id,
                    x: (pen + glyph.x) * scale,
                    rise: -glyph.y * scale,
                    text: GlyphText::of(&text),
                });
            }
            pen += glyph.advance;
        }
    }
    glyphs
}
