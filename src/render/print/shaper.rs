//! Styled words → lines of shaped glyphs that fit a width.

use std::collections::BTreeMap;

use parley::fontique::{Collection, CollectionOptions, FontInfoOverride, SourceCache};
use parley::layout::{Alignment, AlignmentOptions, PositionedLayoutItem};
use parley::style::{FontStyle, FontWeight, OverflowWrap, StyleProperty};
use parley::{FontContext, FontFamily, FontFamilyName, Layout, LayoutContext};

use super::faces::Faces;
use super::page::{BLACK, GlyphRun, PlacedGlyph};
use super::scale::Type;
use crate::prose::Run;
use crate::render::phrases::is_right_to_left;

/// The family of the faces for Latin and Cyrillic letters.
const FAMILY: &str = "paper";

/// The family of the faces for Arabic letters.
const ARABIC_FAMILY: &str = "naskh";

/// The first family has the spaces and the points too, so a language’s own comes first.
const ARABIC_FIRST: &[FontFamilyName<'static>] =
    &[FontFamilyName::named(ARABIC_FAMILY), FontFamilyName::named(FAMILY)];
const ARABIC_LAST: &[FontFamilyName<'static>] =
    &[FontFamilyName::named(FAMILY), FontFamilyName::named(ARABIC_FAMILY)];

/// The mark that says a line runs from right to left (Unicode, UAX 9); it is never drawn.
const FROM_RIGHT: &str = "\u{200f}";

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
    /// The sheets are written from right to left and will be mirrored.
    is_rtl: bool,
}

/// A line of a paragraph; positions count from the line's own top left corner.
#[derive(Clone, Debug)]
pub struct ShapedLine {
    pub width: f32,
    pub runs: Vec<GlyphRun>,
}

impl<'f> Shaper<'f> {
    pub fn new(faces: &'f Faces, language: &str) -> Self {
        let options = CollectionOptions { shared: false, system_fonts: false };
        let mut collection = Collection::new(options);
        for face in &faces.loaded {
            let family = if face.face.is_arabic() { ARABIC_FAMILY } else { FAMILY };
            let name =
                FontInfoOverride { family_name: Some(family), ..FontInfoOverride::default() };
            collection.register_fonts(face.blob.clone(), Some(name));
        }
        Self {
            faces,
            fonts: FontContext { collection, source_cache: SourceCache::default() },
            context: LayoutContext::new(),
            kept: Kept::new(),
            is_rtl: is_right_to_left(language),
        }
    }

    /// Forgets the shaped texts of the last session.
    pub fn begin_session(&mut self) {
        self.kept.clear();
    }

    /// Sets runs of words in lines no wider than `width`. A word that is wider is broken.
    pub fn shape(&mut self, runs: &[Run], kind: Type, width: f32) -> Vec<ShapedLine> {
        let mut runs = runs.to_vec();
        // A sentence in Arabic runs from right to left even where a Latin name begins it.
        if self.is_rtl && runs.iter().any(|run| run.text.contains(is_arabic)) {
            runs.insert(0, Run::plain(FROM_RIGHT));
        }
        let text: String = runs.iter().map(|run| run.text.as_str()).collect();
        if text.is_empty() {
            return Vec::new();
        }
        let key = (runs, kind.is_bold);
        let mut layout = match self.kept.remove(&key) {
            Some(layout) => layout,
            None => self.shape_once(&text, &key.0, kind.is_bold),
        };
        let scale = kind.size / SHAPED_AT;
        layout.break_all_lines(Some(width / scale));
        layout.align(Alignment::Left, AlignmentOptions::default());
        let (faces, is_rtl) = (self.faces, self.is_rtl);
        let lines = layout.lines().map(|line| {
            let shaped = shaped_line(faces, &text, &line, kind, layout.is_rtl());
            if is_rtl { from_right(shaped) } else { shaped }
        });
        let lines = lines.collect();
        self.kept.insert(key, layout);
        lines
    }

    fn shape_once(&mut self, text: &str, runs: &[Run], is_bold: bool) -> Layout<()> {
        let mut builder = self.context.ranged_builder(&mut self.fonts, text, 1.0, false);
        let families = if self.is_rtl { ARABIC_FIRST } else { ARABIC_LAST };
        builder.push_default(FontFamily::List(families.into()));
        builder.push_default(StyleProperty::FontSize(SHAPED_AT));
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
    runs_left: bool,
) -> ShapedLine {
    let metrics = line.metrics();
    let scale = kind.size / SHAPED_AT;
    // The space that ends a line hangs out of it: at the left where the text runs left.
    let hanging = if runs_left { metrics.hanging_advance } else { 0.0 };
    let start = metrics.offset + hanging;
    let baseline = baseline_of(faces, kind);
    let mut runs = Vec::new();
    for item in line.items() {
        let PositionedLayoutItem::GlyphRun(glyph_run) = item else { continue };
        let run = glyph_run.run();
        let Some(face) = faces.by_blob(run.font().data.id()) else { continue };
        runs.push(GlyphRun {
            face: face.face,
            size: kind.size,
            at: ((glyph_run.offset() - start) * scale, baseline),
            grey: BLACK,
            glyphs: placed_glyphs(text, &glyph_run, scale),
        });
    }
    ShapedLine { width: (metrics.advance - metrics.hanging_advance) * scale, runs }
}

/// One baseline for both scripts, with Latin words in the middle of the leading.
fn baseline_of(faces: &Faces, kind: Type) -> f32 {
    let (ascent, descent) = faces.upright_metrics();
    let (ascent, descent) = (ascent * kind.size, descent * kind.size);
    (kind.leading - ascent - descent) / 2.0 + ascent
}

/// The line with its runs counted from its right end, as a mirrored page wants them.
fn from_right(mut line: ShapedLine) -> ShapedLine {
    for run in &mut line.runs {
        run.at.0 = line.width - run.at.0;
    }
    line
}

/// Whether a letter is of the Arabic script (Unicode blocks Arabic, Arabic Supplement and Extended-A).
fn is_arabic(letter: char) -> bool {
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
    glyph_run: &parley::layout::GlyphRun<'_, ()>,
    scale: f32,
) -> Vec<PlacedGlyph> {
    let mut glyphs: Vec<PlacedGlyph> = Vec::new();
    let mut pen = 0.0;
    // From right to left, the letters that go on a ligature come before it: they wait for it.
    let mut waiting = String::new();
    for cluster in glyph_run.run().visual_clusters() {
        let words = &text[cluster.text_range()];
        if cluster.is_ligature_continuation() && cluster.is_rtl() {
            waiting.insert_str(0, words);
            continue;
        }
        if cluster.is_ligature_continuation() {
            if let Some(last) = glyphs.last_mut() {
                last.text = format!("{}{words}", last.text).into();
            }
            continue;
        }
        let whole = format!("{words}{}", std::mem::take(&mut waiting));
        let mut words = whole.as_str();
        for glyph in cluster.glyphs() {
            let id = u16::try_from(glyph.id).unwrap_or(0);
            // Andika has a glyph for every letter of the languages here; a sign that it lacks
            // (an emoji) is left out rather than printed as an empty box.
            if id != 0 && !words.chars().all(is_unseen) {
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
