//! Styled words → lines of shaped glyphs that fit a width.

use std::collections::{BTreeMap, BTreeSet};

use hypher::Lang;
use parley::fontique::{Collection, CollectionOptions, FontInfoOverride, SourceCache};
use parley::layout::{Alignment, AlignmentOptions, PositionedLayoutItem};
use parley::style::{FontStyle, FontWeight, OverflowWrap, StyleProperty};
use parley::{FontContext, FontFamily, FontFamilyName, Layout, LayoutContext};

use super::breaks::{SOFT_HYPHEN, language_of};
use super::faces::{Face, Faces};
use super::page::{BLACK, GlyphRun, GlyphText, Key, PlacedGlyph};
use super::scale::{Air, Type};
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

/// Arabic letters are small for their size: so much larger, they look as large as the Latin ones beside.
const ARABIC_SIZE: f32 = 1.15;

/// So much more room a line of Arabic gets.
const ARABIC_LEADING: f32 = 1.2;

/// Shaped texts are kept while a session is laid out in several sizes and on several sheets.
type Kept = BTreeMap<(Vec<Run>, bool, bool), Layout<Source>>;

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
    /// Set for the figures of drawings, which have their own room: no more air than usual.
    pub is_tight: bool,
    /// The sheets are written from right to left and will be mirrored.
    is_rtl: bool,
    /// The language that words are broken in.
    pub hyphens: Option<Lang>,
    /// How far apart its letters, words and lines stand.
    pub air: Air,
}

/// A line of a paragraph; positions count from the line's own top left corner.
#[derive(Clone, Debug)]
pub struct ShapedLine {
    pub width: f32,
    pub runs: Vec<GlyphRun>,
    /// Where the next line begins in the text.
    pub end: usize,
    /// It ends in the middle of a word, with a hyphen.
    pub is_hyphenated: bool,
}

impl<'f> Shaper<'f> {
    /// A shaper for a language, named by its BCP 47 tag.
    pub fn new(faces: &'f Faces, language: &str, air: Air) -> Self {
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
            last_key: 0,
            is_trial: false,
            is_tight: false,
            is_rtl: is_right_to_left(language),
            hyphens: language_of(language),
            air,
        }
    }

    /// From one line to the next. Arabic letters reach further below and above the line.
    pub fn leading(&self, kind: Type) -> f32 {
        if self.is_rtl { kind.leading * ARABIC_LEADING } else { kind.leading }
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
        let mut runs = runs.to_vec();
        // A sentence in Arabic runs from right to left even where a Latin name begins it.
        let (mut added, mut added_bytes) = (0, 0);
        if self.is_rtl && runs.iter().any(|run| run.text.contains(is_arabic)) {
            runs.insert(0, Run::plain(FROM_RIGHT));
            (added, added_bytes) = (1, FROM_RIGHT.len());
        }
        let text: String = runs.iter().map(|run| run.text.as_str()).collect();
        if text.is_empty() {
            return Vec::new();
        }
        let key = (runs, kind.is_bold, self.is_tight);
        let mut layout = match self.kept.remove(&key) {
            Some(layout) => layout,
            None => self.shape_once(&text, &key.0, kind.is_bold),
        };
        let scale = kind.size / SHAPED_AT;
        let (faces, is_rtl, is_trial) = (self.faces, self.is_rtl, self.is_trial);
        let face = if kind.is_bold { Face::Bold } else { Face::Regular };
        let hyphen = faces.get(face).hyphen_width;
        break_lines(&mut layout, &text, width / scale, hyphen * SHAPED_AT);
        layout.align(Alignment::Left, AlignmentOptions::default());
        let lines = layout.lines().map(|line| {
            let mut shaped = if is_trial {
                measured_line(&text, &line, kind, hyphen)
            } else {
                shaped_line(faces, &text, &line, kind, layout.is_rtl())
            };
            shaped.end = shaped.end.saturating_sub(added_bytes);
            for run in &mut shaped.runs {
                run.source = run.source.saturating_sub(added);
            }
            if is_rtl { from_right(shaped) } else { shaped }
        });
        let lines = lines.collect();
        self.kept.insert(key, layout);
        lines
    }

    fn shape_once(&mut self, text: &str, runs: &[Run], is_bold: bool) -> Layout<Source> {
        let mut builder = self.context.ranged_builder(&mut self.fonts, text, 1.0, false);
        let is_arabic_text = text.contains(is_arabic) && self.is_rtl;
        let families = if is_arabic_text { ARABIC_FIRST } else { ARABIC_LAST };
        builder.push_default(FontFamily::List(families.into()));
        let size = if is_arabic_text { SHAPED_AT * ARABIC_SIZE } else { SHAPED_AT };
        builder.push_default(StyleProperty::FontSize(size));
        // Letters that join are not set apart.
        let letters = if is_arabic_text { 0.0 } else { self.air.letters };
        let (letters, words) = if self.is_tight { (0.0, 0.0) } else { (letters, self.air.words) };
        builder.push_default(StyleProperty::LetterSpacing(SHAPED_AT * letters));
        builder.push_default(StyleProperty::WordSpacing(SHAPED_AT * words));
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
        runs.push(GlyphRun {
            face: face.face,
            size: run.font_size() * scale,
            at: ((glyph_run.offset() - start) * scale, baseline),
            grey: BLACK,
            glyphs: placed_glyphs(text, &glyph_run, scale),
            source: glyph_run.style().brush,
        });
    }
    let mut width = width_of(line, kind);
    let is_hyphenated = ends_in_word(text, line);
    if is_hyphenated && let Some(last) = runs.last_mut() {
        let face = faces.get(last.face);
        let x = width - last.at.0;
        let text = GlyphText::Letter(SOFT_HYPHEN);
        last.glyphs.push(PlacedGlyph { id: face.hyphen, x, rise: 0.0, text });
        width += face.hyphen_width * kind.size;
    }
    ShapedLine { width, runs, end: line.text_range().end, is_hyphenated }
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
    glyph_run: &parley::layout::GlyphRun<'_, Source>,
    scale: f32,
) -> Vec<PlacedGlyph> {
    let mut glyphs: Vec<PlacedGlyph> = Vec::new();
    let mut pen = 0.0;
    // From right to left, the letters that go on a ligature come before it: they wait for it.
    let mut waiting = String::new();
    // A shaped run can hold several of ours: only the clusters of this one.
    let own = glyph_run.style_index();
    for cluster in glyph_run.run().visual_clusters().filter(|c| c.style_index() == own) {
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
