//! Styled words → lines of shaped glyphs that fit a width.

use std::collections::BTreeMap;

use parley::fontique::{Collection, CollectionOptions, FontInfoOverride, SourceCache};
use parley::layout::{Alignment, AlignmentOptions, PositionedLayoutItem};
use parley::style::{FontStyle, FontWeight, OverflowWrap, StyleProperty};
use parley::{FontContext, FontFamily, Layout, LayoutContext};

use super::faces::Faces;
use super::page::{BLACK, GlyphRun, PlacedGlyph};
use super::scale::{Air, Type};
use crate::prose::Run;

/// The family every face is registered under.
const FAMILY: &str = "paper";

/// Words are shaped once at this size. Outlines aren’t hinted, so every other size is the same
/// shape, larger or smaller: only the lines are broken anew.
const SHAPED_AT: f32 = 100.0;

/// Shaped texts are kept while a session is laid out in several sizes and on several sheets.
type Kept = BTreeMap<(Vec<Run>, bool), Layout<()>>;

/// One thread's shaper.
pub struct Shaper<'f> {
    faces: &'f Faces,
    fonts: FontContext,
    context: LayoutContext<()>,
    kept: Kept,
    /// How far apart its letters, words and lines stand.
    pub air: Air,
}

/// A line of a paragraph; positions count from the line's own top left corner.
#[derive(Clone, Debug)]
pub struct ShapedLine {
    pub width: f32,
    pub runs: Vec<GlyphRun>,
}

impl<'f> Shaper<'f> {
    pub fn new(faces: &'f Faces, air: Air) -> Self {
        let options = CollectionOptions { shared: false, system_fonts: false };
        let mut collection = Collection::new(options);
        for face in &faces.loaded {
            let name =
                FontInfoOverride { family_name: Some(FAMILY), ..FontInfoOverride::default() };
            collection.register_fonts(face.blob.clone(), Some(name));
        }
        Self {
            faces,
            fonts: FontContext { collection, source_cache: SourceCache::default() },
            context: LayoutContext::new(),
            kept: Kept::new(),
            air,
        }
    }

    /// Forgets the shaped texts of the last session.
    pub fn begin_session(&mut self) {
        self.kept.clear();
    }

    /// Sets runs of words in lines no wider than `width`. A word that is wider is broken.
    pub fn shape(&mut self, runs: &[Run], kind: Type, width: f32) -> Vec<ShapedLine> {
        let text: String = runs.iter().map(|run| run.text.as_str()).collect();
        if text.is_empty() {
            return Vec::new();
        }
        let key = (runs.to_vec(), kind.is_bold);
        let mut layout = match self.kept.remove(&key) {
            Some(layout) => layout,
            None => self.shape_once(&text, runs, kind.is_bold),
        };
        let scale = kind.size / SHAPED_AT;
        layout.break_all_lines(Some(width / scale));
        layout.align(Alignment::Start, AlignmentOptions::default());
        let faces = self.faces;
        let lines = layout.lines().map(|line| shaped_line(faces, &text, &line, kind)).collect();
        self.kept.insert(key, layout);
        lines
    }

    fn shape_once(&mut self, text: &str, runs: &[Run], is_bold: bool) -> Layout<()> {
        let mut builder = self.context.ranged_builder(&mut self.fonts, text, 1.0, false);
        builder.push_default(FontFamily::from(FAMILY));
        builder.push_default(StyleProperty::FontSize(SHAPED_AT));
        builder.push_default(StyleProperty::LetterSpacing(SHAPED_AT * self.air.letters));
        builder.push_default(StyleProperty::WordSpacing(SHAPED_AT * self.air.words));
        builder.push_default(StyleProperty::OverflowWrap(OverflowWrap::BreakWord));
        let mut start = 0;
        for run in runs {
            let range = start..start + run.text.len();
            start = range.end;
            if run.bold || is_bold {
                builder.push(StyleProperty::FontWeight(FontWeight::BOLD), range);
            } else if run.italic {
                builder.push(StyleProperty::FontStyle(FontStyle::Italic), range);
            }
        }
        builder.build(text)
    }
}

/// A line at its real size, with the words in the middle of the leading.
fn shaped_line(
    faces: &Faces,
    text: &str,
    line: &parley::layout::Line<'_, ()>,
    kind: Type,
) -> ShapedLine {
    let metrics = line.metrics();
    let scale = kind.size / SHAPED_AT;
    let mut runs = Vec::new();
    for item in line.items() {
        let PositionedLayoutItem::GlyphRun(glyph_run) = item else { continue };
        let run = glyph_run.run();
        let Some(face) = faces.by_blob(run.font().data.id()) else { continue };
        let font = run.font_metrics();
        let (ascent, descent) = (font.ascent * scale, font.descent.abs() * scale);
        let baseline = (kind.leading - ascent - descent) / 2.0 + ascent;
        runs.push(GlyphRun {
            face: face.face,
            size: kind.size,
            at: (glyph_run.offset() * scale, baseline),
            grey: BLACK,
            glyphs: placed_glyphs(text, &glyph_run, scale),
        });
    }
    ShapedLine { width: (metrics.advance - metrics.hanging_advance) * scale, runs }
}

/// The glyphs of a run from left to right, each with the text of its cluster. A ligature carries the
/// text of all its letters.
fn placed_glyphs(
    text: &str,
    glyph_run: &parley::layout::GlyphRun<'_, ()>,
    scale: f32,
) -> Vec<PlacedGlyph> {
    let mut glyphs: Vec<PlacedGlyph> = Vec::new();
    let mut pen = 0.0;
    for cluster in glyph_run.run().visual_clusters() {
        let words = &text[cluster.text_range()];
        if cluster.is_ligature_continuation() {
            if let Some(last) = glyphs.last_mut() {
                last.text = format!("{}{words}", last.text).into();
            }
            continue;
        }
        let mut words = words;
        for glyph in cluster.glyphs() {
            let id = u16::try_from(glyph.id).unwrap_or(0);
            // Andika has a glyph for every letter of the languages here; a sign that it lacks
            // (an emoji) is left out rather than printed as an empty box.
            if id != 0 && !words.chars().all(char::is_control) {
                glyphs.push(PlacedGlyph {
                    id,
                    x: (pen + glyph.x) * scale,
                    rise: -glyph.y * scale,
                    text: words.into(),
                });
            }
            pen += glyph.advance;
            words = "";
        }
    }
    glyphs
}
