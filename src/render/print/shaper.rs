//! Styled words → lines of shaped glyphs that fit a width.

use std::hash::{Hash, Hasher};

use hashbrown::HashTable;
use parley::fontique::{Collection, CollectionOptions, FontInfoOverride, SourceCache};
use parley::style::{FontStyle, FontWeight, OverflowWrap, StyleProperty};
use parley::{FontContext, FontFamily, FontFamilyName, Layout, LayoutContext};
use rustc_hash::FxHasher;

use super::atoms::{Paragraph, Style, WordCase, atoms_of, is_plain};
use super::bidi::{Setting, is_arabic, lay_lines};
use super::breaks::{Hyphens, SOFT_HYPHEN};
use super::faces::Faces;
use super::line_breaks::set_lines;
use super::page::{GlyphRun, GlyphText, Key, PlacedGlyph};
use super::passages::Passages;
use super::scale::{Air, Type};
use super::word_shaper::WordShaper;
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
pub const SHAPED_AT: f32 = 100.0;

/// Arabic letters are small for their size: so much larger, they look as large as the Latin ones beside.
const ARABIC_SIZE: f32 = 1.15;

/// So much more room a line of Arabic gets.
const ARABIC_LEADING: f32 = 1.2;

/// Shaped texts are kept while a session is laid out in several sizes and on several sheets, by the hash of
/// their runs: nothing ever goes through them in their order.
type Kept = HashTable<KeptText>;

/// A text as it was put together from its runs, and shaped.
struct KeptText {
    runs: Vec<Run>,
    text: String,
    shaped: Shaped,
}

/// Which run of the given words a glyph belongs to.
pub type Source = usize;

/// A shaped text, whose lines can be broken for any width.
enum Shaped {
    /// Put together from shaped words.
    Plain(Paragraph),
    /// Scripts run in both directions, or letters stand apart: parley lays it out.
    Bidi(Box<Layout<Source>>),
}

/// One thread's shaper.
pub struct Shaper<'f> {
    faces: &'f Faces,
    fonts: FontContext,
    context: LayoutContext<Source>,
    /// By weight, and whether it has no more air than usual.
    kept: [[Kept; 2]; 2],
    /// The words that were shaped, kept from session to session.
    words: WordCase,
    engine: WordShaper<'f>,
    last_key: Key,
    is_trial: bool,
    /// Set for the figures of drawings, which have their own room: no more air than usual.
    pub is_tight: bool,
    /// The sheets are written from right to left and will be mirrored.
    is_rtl: bool,
    /// What is not in the sheets’ language.
    pub passages: Passages,
    /// What words are broken by.
    pub hyphens: Option<Hyphens>,
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
            kept: Default::default(),
            words: WordCase::default(),
            engine: WordShaper::new(faces),
            last_key: 0,
            is_trial: false,
            is_tight: false,
            is_rtl: is_right_to_left(language),
            passages: Passages::default(),
            hyphens: Hyphens::of(language),
            air,
        }
    }

    /// From one line to the next. Arabic letters reach further below and above the line.
    pub fn leading(&self, kind: Type) -> f32 {
        if self.is_rtl { kind.leading * ARABIC_LEADING } else { kind.leading }
    }

    /// How far below the top of its line words of a kind stand.
    pub fn baseline(&self, kind: Type) -> f32 {
        baseline_of(self.faces, kind)
    }

    /// Forgets the shaped texts of the last session.
    pub fn begin_session(&mut self) {
        self.kept = Default::default();
        self.passages = Passages::default();
        self.last_key = 0;
    }

    /// What it shapes with.
    pub const fn faces(&self) -> &'f Faces {
        self.faces
    }

    /// Whether its words run from right to left.
    pub const fn is_rtl(&self) -> bool {
        self.is_rtl
    }

    /// Does something for its measures alone: lines are broken, but no glyph is placed, which is most of
    /// the work. Content is tried in several sizes this way before it is laid in one.
    pub fn try_out<T>(&mut self, trial: impl FnOnce(&mut Self) -> T) -> T {
        let was = std::mem::replace(&mut self.is_trial, true);
        let outcome = trial(self);
        self.is_trial = was;
        outcome
    }

    /// Whether only measures are wanted.
    pub const fn is_trial(&self) -> bool {
        self.is_trial
    }

    /// A key that no other thing of the document has.
    pub fn next_key(&mut self) -> Key {
        self.last_key += 1;
        self.last_key
    }

    /// Sets runs of words in lines no wider than `width`. A word that is wider is broken.
    pub fn shape(&mut self, runs: &[Run], kind: Type, width: f32) -> Vec<ShapedLine> {
        let mut lines = self.set(runs, kind, width);
        if self.is_rtl {
            lines.iter_mut().for_each(from_right);
        }
        lines
    }

    fn set(&mut self, runs: &[Run], kind: Type, width: f32) -> Vec<ShapedLine> {
        let setting = Setting { faces: self.faces, kind, width, is_trial: self.is_trial };
        let (bold, tight) = (usize::from(kind.is_bold), usize::from(self.is_tight));
        let mut kept_texts = std::mem::take(&mut self.kept[bold][tight]);
        let (is_alike, hash) =
            (|kept: &KeptText| kept.runs == runs, |kept: &KeptText| hash_of(&kept.runs));
        let mut entry = kept_texts.entry(hash_of(runs), is_alike, hash).or_insert_with(|| {
            let text = self.text_of(runs);
            let shaped = self.shape_text(&text, runs, kind.is_bold);
            KeptText { runs: runs.to_vec(), text, shaped }
        });
        let kept = entry.get_mut();
        let lines = match &mut kept.shaped {
            Shaped::Plain(paragraph) => set_lines(paragraph, &kept.text, &setting),
            Shaped::Bidi(layout) => {
                let mut lines = lay_lines(layout, &kept.text, &setting);
                if kept.text.starts_with(FROM_RIGHT) {
                    for line in &mut lines {
                        line.end -= FROM_RIGHT.len();
                    }
                }
                lines
            }
        };
        self.kept[bold][tight] = kept_texts;
        lines
    }

    /// The text of runs. A sentence in Arabic runs from right to left even where a Latin name begins it.
    fn text_of(&self, runs: &[Run]) -> String {
        let has_arabic = || runs.iter().any(|run| run.text.contains(is_arabic));
        let mark = if self.is_rtl && has_arabic() { FROM_RIGHT } else { "" };
        std::iter::once(mark).chain(runs.iter().map(|run| run.text.as_str())).collect()
    }

    fn shape_text(&mut self, text: &str, runs: &[Run], is_bold: bool) -> Shaped {
        let has_air = !self.is_tight && (self.air.letters > 0.0 || self.air.words > 0.0);
        if self.is_rtl || has_air || !text.chars().all(is_plain) {
            return Shaped::Bidi(Box::new(self.shape_once(text, runs, is_bold)));
        }
        let mut words = std::mem::take(&mut self.words);
        let paragraph = words.put_together(text, runs, is_bold, &mut |word, style| {
            if let Some(atoms) = self.engine.shape(word, style) {
                return atoms;
            }
            let run = Run {
                bold: style == Style::Bold,
                italic: style == Style::Italic,
                ..Run::plain(word)
            };
            atoms_of(self.shape_once(word, &[run], false), word, self.faces)
        });
        self.words = words;
        Shaped::Plain(paragraph)
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
        let mut start = if text.starts_with(FROM_RIGHT) { FROM_RIGHT.len() } else { 0 };
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

/// The same on every run and every thread.
fn hash_of(runs: &[Run]) -> u64 {
    let mut hasher = FxHasher::default();
    runs.hash(&mut hasher);
    hasher.finish()
}

/// One baseline for both scripts, with Latin words in the middle of the leading.
pub fn baseline_of(faces: &Faces, kind: Type) -> f32 {
    let (ascent, descent) = faces.upright_metrics();
    let (ascent, descent) = (ascent * kind.size, descent * kind.size);
    (kind.leading - ascent - descent) / 2.0 + ascent
}

/// Counts the runs of a line from its right end, as a mirrored page wants them.
fn from_right(line: &mut ShapedLine) {
    for run in &mut line.runs {
        run.at.0 = line.width - run.at.0;
    }
}

/// Puts the hyphen behind a line that ends inside a word.
pub fn hyphenate(line: &mut ShapedLine, faces: &Faces, kind: Type) {
    line.is_hyphenated = true;
    let furthest = line.runs.iter_mut().max_by(|a, b| a.at.0.total_cmp(&b.at.0));
    let Some(last) = furthest.filter(|run| !run.runs_left) else { return };
    let face = faces.get(last.face);
    let text = GlyphText::Letter(SOFT_HYPHEN);
    last.glyphs.push(PlacedGlyph { id: face.hyphen, x: line.width - last.at.0, rise: 0.0, text });
    line.width += face.hyphen_width * kind.size;
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use super::super::atoms::breaks_of;
    use super::*;
    use crate::render::house::House;

    /// Lines of the demo pack’s files, in the languages that run from left to right.
    fn texts() -> Vec<String> {
        let files = walkdir::WalkDir::new(concat!(env!("CARGO_MANIFEST_DIR"), "/sessions"));
        let files = files.sort_by_file_name().into_iter().map(Result::unwrap);
        let read = files.filter_map(|file| std::fs::read_to_string(file.path()).ok());
        let lines = read
            .flat_map(|text| text.lines().map(str::trim).map(str::to_owned).collect::<Vec<_>>());
        let mut texts: Vec<String> = lines.filter(|line| line.len() > 20).collect();
        texts.extend(
            [
                "« Saute ! » dit-il : 3 m / 4 m (ou plus) – c’est tout…",
                "ex\u{ad}ten\u{ad}sive and im\u{ad}pos\u{ad}si\u{ad}bly narrow co\u{ad}lumns",
                "https://example.org/a/very/long/address?that=goes&on=and-on Donaudampfschifffahrt",
                "Київ: стрибок у довжину з місця — офіцер",
                "a  b   c    two and more spaces here",
                "9:40\u{2002}Technique 2: The kite · 2\u{a0}min 30\u{a0}s",
                "3\u{2002}Hold for “three” (or more), then – slowly – breathe out: done! “Well held?” 5 % up",
            ]
            .map(str::to_owned),
        );
        texts
    }

    /// The lines of words put together are those that parley lays out for the whole text.
    #[test]
    fn words_put_together_are_set_as_parley_sets_the_text() {
        let own = BTreeMap::new();
        let house = House::new(&own);
        let faces = Faces::load(&house).unwrap();
        let mut shaper =
            Shaper::new(&faces, "en-GB", Air::of(crate::read::print_choices::Spacing::Usual));
        let mut compared = 0;
        for text in texts().iter().filter(|text| text.chars().all(is_plain)) {
            // Words that stand together in two runs of one style are not drawn closer: a run ends at a space.
            let half = text.len() - text.len() / 2;
            let half = text.char_indices().find(|(at, c)| *at >= half && *c == ' ');
            let half = half.map_or(text.len(), |(at, _)| at + 1);
            let runs = [Run::plain(&text[..half]), Run::bold(&text[half..])];
            for (kind, width) in
                [(Type::body(12.5), 90.0), (Type::LABEL, 160.0), (Type::body(11.0), 410.0)]
            {
                let setting = Setting { faces: &faces, kind, width, is_trial: false };
                let Shaped::Plain(paragraph) = shaper.shape_text(text, &runs, kind.is_bold) else {
                    panic!("{text} is plain")
                };
                // Words know where they may break: as the rules of Unicode have it for the whole text (ICU4X).
                let starts = paragraph.placed.iter().skip(1).zip(&paragraph.placed);
                let ours = starts.filter(|(next, _)| next.may_break).map(|(_, before)| before.end);
                let breaks: Vec<usize> = ours.collect();
                assert_eq!(breaks, breaks_of(text), "{text}");
                let ours = set_lines(&paragraph, text, &setting);
                let mut whole = shaper.shape_once(text, &runs, kind.is_bold);
                let theirs = lay_lines(&mut whole, text, &setting);
                assert_eq!(ours.len(), theirs.len(), "{text} at {width}");
                for (our, their) in ours.iter().zip(&theirs) {
                    assert_eq!(
                        (our.end, our.is_hyphenated),
                        (their.end, their.is_hyphenated),
                        "{text}"
                    );
                    assert!(
                        (our.width - their.width).abs() < 0.01,
                        "{text}: {} {}",
                        our.width,
                        their.width
                    );
                    assert_eq!(glyphs_of(our), glyphs_of(their), "{text}");
                    compared += 1;
                }
            }
        }
        assert!(compared > 3_000, "{compared} lines");
    }

    /// Each glyph with its face, source, text and place in tenths of a point.
    fn glyphs_of(line: &ShapedLine) -> Vec<(u16, usize, String, String)> {
        let runs =
            line.runs.iter().flat_map(|run| run.glyphs.iter().map(move |glyph| (run, glyph)));
        runs.map(|(run, glyph)| {
            // Nothing added makes a plain nought of a negative one.
            let place = format!("{:.1} {:.2}", (run.at.0 + glyph.x).abs(), glyph.rise + 0.0);
            (glyph.id, run.source, format!("{:?} {}", run.face, glyph.text), place)
        })
        .collect()
    }
}
