//! Styled words → lines of shaped glyphs that fit a width.

use std::collections::BTreeMap;

use parley::fontique::{Collection, CollectionOptions, FontInfoOverride, SourceCache};
use parley::layout::{Alignment, AlignmentOptions, PositionedLayoutItem};
use parley::style::{FontStyle, FontWeight, OverflowWrap, StyleProperty};
use parley::{FontContext, FontFamily, Layout, LayoutContext};

use super::faces::Faces;
use super::page::{BLACK, GlyphRun, GlyphText, Key, PlacedGlyph};
use super::scale::Type;
use crate::prose::Run;

/// The family every face is registered under.
const FAMILY: &str = "paper";

/// Words are shaped once at this size. Outlines aren’t hinted, so every other size is the same
/// shape, larger or smaller: only the lines are broken anew.
const SHAPED_AT: f32 = 100.0;

/// Shaped texts are kept while a session is laid out in several sizes and on several sheets.
type Kept = BTreeMap<(Vec<Run>, bool), Layout<Source>>;

/// Which run of the given words a glyph belongs to.
type Source = usize;

/// One thread's shaper.
pub struct Shaper<'f> {
    faces: &'f Faces,
    fonts: FontContext,
    context: LayoutContext<Source>,
    kept: Kept,
    last_key: Key,
    is_trial: bool,
}

/// A line of a paragraph; positions count from the line's own top left corner.
#[derive(Clone, Debug)]
pub struct ShapedLine {
    pub width: f32,
    pub runs: Vec<GlyphRun>,
}

impl<'f> Shaper<'f> {
    pub fn new(faces: &'f Faces) -> Self {
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
            last_key: 0,
            is_trial: false,
        }
    }

    /// Forgets the shaped texts of the last session.
    pub fn begin_session(&mut self) {
        self.kept.clear();
        self.last_key = 0;
    }

    /// Does something for its measures alone: lines are broken, but no glyph is placed, which is most of
    /// the work. Content is tried in several sizes this way before it is laid in one.
    pub fn try_out<T>(&mut self, trial: impl FnOnce(&mut Self) -> T) -> T {
        let was = std::mem::replace(&mut self.is_trial, true);
        let outcome = trial(self);
        self.is_trial = was;
        outcome
    }

    /// A key that no other thing of the document has.
    pub fn next_key(&mut self) -> Key {
        self.last_key += 1;
        self.last_key
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
        let is_trial = self.is_trial;
        let lines = layout.lines().map(|line| match is_trial {
            true => ShapedLine { width: width_of(&line, kind), runs: Vec::new() },
            false => shaped_line(faces, &text, &line, kind),
        });
        let lines = lines.collect();
        self.kept.insert(key, layout);
        lines
    }

    fn shape_once(&mut self, text: &str, runs: &[Run], is_bold: bool) -> Layout<Source> {
        let mut builder = self.context.ranged_builder(&mut self.fonts, text, 1.0, false);
        builder.push_default(FontFamily::from(FAMILY));
        builder.push_default(StyleProperty::FontSize(SHAPED_AT));
        builder.push_default(StyleProperty::OverflowWrap(OverflowWrap::BreakWord));
        let mut start = 0;
        for (source, run) in runs.iter().enumerate() {
            let range = start..start + run.text.len();
            start = range.end;
            builder.push(StyleProperty::Brush(source), range.clone());
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
    line: &parley::layout::Line<'_, Source>,
    kind: Type,
) -> ShapedLine {
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
            source: glyph_run.style().brush,
        });
    }
    ShapedLine { width: width_of(line, kind), runs }
}

fn width_of(line: &parley::layout::Line<'_, Source>, kind: Type) -> f32 {
    let metrics = line.metrics();
    (metrics.advance - metrics.hanging_advance) * kind.size / SHAPED_AT
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
    // A shaped run can hold several of ours: only the clusters of this one.
    let own = glyph_run.style_index();
    for cluster in glyph_run.run().visual_clusters().filter(|c| c.style_index() == own) {
        let words = &text[cluster.text_range()];
        if cluster.is_ligature_continuation() {
            if let Some(last) = glyphs.last_mut() {
                last.text = GlyphText::of(&format!("{}{words}", last.text));
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
                    text: GlyphText::of(words),
                });
            }
            pen += glyph.advance;
            words = "";
        }
    }
    glyphs
}
