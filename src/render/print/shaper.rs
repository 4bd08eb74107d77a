//! Styled words → lines of shaped glyphs that fit a width.

use parley::fontique::{Collection, CollectionOptions, SourceCache, FontInfoOverride};
use parley::layout::{Alignment, AlignmentOptions, PositionedLayoutItem};
use parley::style::{FontStyle, FontWeight, LineHeight, OverflowWrap, StyleProperty};
use parley::{FontContext, FontFamily, Layout, LayoutContext};

use super::faces::Faces;
use super::page::{BLACK, GlyphRun, PlacedGlyph};
use super::scale::Type;
use crate::prose::Run;

/// The family every face is registered under.
const FAMILY: &str = "paper";

/// One thread's shaper.
pub struct Shaper<'f> {
    faces: &'f Faces,
    fonts: FontContext,
    context: LayoutContext<()>,
    layout: Layout<()>,
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
            let name = FontInfoOverride { family_name: Some(FAMILY), ..FontInfoOverride::default() };
            collection.register_fonts(face.blob.clone(), Some(name));
        }
        Self {
            faces,
            fonts: FontContext { collection, source_cache: SourceCache::default() },
            context: LayoutContext::new(),
            layout: Layout::new(),
        }
    }

    /// Sets runs of words in lines no wider than `width`. A word that is wider is broken.
    pub fn shape(&mut self, runs: &[Run], kind: Type, width: f32) -> Vec<ShapedLine> {
        let text: String = runs.iter().map(|run| run.text.as_str()).collect();
        if text.is_empty() {
            return Vec::new();
        }
        self.lay_out(&text, runs, kind, width);
        let faces = self.faces;
        self.layout.lines().map(|line| shaped_line(faces, &text, &line)).collect()
    }

    fn lay_out(&mut self, text: &str, runs: &[Run], kind: Type, width: f32) {
        let mut builder = self.context.ranged_builder(&mut self.fonts, text, 1.0, false);
        builder.push_default(FontFamily::from(FAMILY));
        builder.push_default(StyleProperty::FontSize(kind.size));
        builder.push_default(StyleProperty::LineHeight(LineHeight::Absolute(kind.leading)));
        builder.push_default(StyleProperty::OverflowWrap(OverflowWrap::BreakWord));
        let mut start = 0;
        for run in runs {
            let range = start..start + run.text.len();
            start = range.end;
            if run.bold || kind.is_bold {
                builder.push(StyleProperty::FontWeight(FontWeight::BOLD), range);
            } else if run.italic {
                builder.push(StyleProperty::FontStyle(FontStyle::Italic), range);
            }
        }
        builder.build_into(&mut self.layout, text);
        self.layout.break_all_lines(Some(width));
        self.layout.align(Alignment::Start, AlignmentOptions::default());
    }
}

fn shaped_line(faces: &Faces, text: &str, line: &parley::layout::Line<'_, ()>) -> ShapedLine {
    let metrics = line.metrics();
    let top = metrics.block_min_coord;
    let mut runs = Vec::new();
    for item in line.items() {
        let PositionedLayoutItem::GlyphRun(glyph_run) = item else { continue };
        let run = glyph_run.run();
        let Some(face) = faces.by_blob(run.font().data.id()) else { continue };
        let at = (glyph_run.offset(), glyph_run.baseline() - top);
        let glyphs = placed_glyphs(text, &glyph_run);
        runs.push(GlyphRun { face: face.face, size: run.font_size(), at, grey: BLACK, glyphs });
    }
    ShapedLine { width: metrics.advance - metrics.hanging_advance, runs }
}

/// The glyphs of a run from left to right, each with the text of its cluster. A ligature carries the
/// text of all its letters.
fn placed_glyphs(text: &str, glyph_run: &parley::layout::GlyphRun<'_, ()>) -> Vec<PlacedGlyph> {
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
                    x: pen + glyph.x,
                    rise: -glyph.y,
                    text: words.into(),
                });
            }
            pen += glyph.advance;
            words = "";
        }
    }
    glyphs
}
