//! Words → shaped paragraphs. Plain text, which runs from left to right with spaces between its words, is
//! shaped word by word, each word once: the pieces are put together for every paragraph that has them.
//!
//! Where a line may break is said for the whole paragraph by the rules of Unicode (UAX 14), as ICU4X has
//! them. Texts in which scripts run in both directions are left to parley ([`super::bidi`]).

use std::hash::{Hash, Hasher};
use std::iter::Peekable;
use std::sync::Arc;

use hashbrown::HashTable;
use icu_segmenter::options::{LineBreakOptions, LineBreakStrictness, LineBreakWordOption};
use icu_segmenter::{LineSegmenter, LineSegmenterBorrowed};
use parley::Layout;
use parley::layout::PositionedLayoutItem;
use rustc_hash::FxHasher;
use smallvec::SmallVec;

use super::breaks::SOFT_HYPHEN;
use super::faces::{Face, Faces};
use super::page::{GlyphText, PlacedGlyph};
use super::shaper::Source;
use crate::prose::Run;

/// What is never taken apart: a letter with its marks, or a ligature. Measures at the size it was shaped in.
#[derive(Clone, Debug)]
pub struct Atom {
    /// Bytes of the text.
    pub length: usize,
    pub advance: f32,
    pub face: Face,
    /// Its glyphs, mostly one; `x` counts from its own start.
    pub glyphs: SmallVec<[PlacedGlyph; 1]>,
    /// It hangs out of the line that it ends.
    pub is_space: bool,
    /// A line may end before it, within its word.
    pub may_break: bool,
}

/// An atom where it stands in a paragraph.
#[derive(Clone, Copy, Debug)]
pub struct Placed {
    /// Which word of the paragraph it belongs to, and which of its atoms it is.
    word: usize,
    atom: usize,
    pub advance: f32,
    pub face: Face,
    pub is_space: bool,
    /// Which run of the text.
    pub source: Source,
    /// A line may end before it.
    pub may_break: bool,
    /// Where it ends in the text.
    pub end: usize,
}

/// A paragraph of shaped words.
#[derive(Clone, Debug)]
pub struct Paragraph {
    words: Vec<Arc<Word>>,
    /// In the order of the text.
    pub placed: Vec<Placed>,
    /// The same word by word.
    pub spans: Vec<Span>,
    /// It has places where a word may be broken.
    pub is_softened: bool,
}

/// The atoms of a word with the spaces after it.
#[derive(Clone, Copy, Debug)]
pub struct Span {
    pub from: usize,
    pub to: usize,
    /// Its width, and that without the spaces.
    pub whole: f32,
    pub bare: f32,
    /// The last of its atoms that a line may end before.
    pub last_break: Option<usize>,
}

impl Span {
    fn of(placed: &[Placed], from: usize) -> Self {
        let atoms = &placed[from..];
        let words = atoms.iter().rposition(|atom| !atom.is_space).map_or(0, |last| last + 1);
        let width = |atoms: &[Placed]| atoms.iter().map(|atom| atom.advance).sum::<f32>();
        let bare = width(&atoms[..words]);
        let last_break = atoms.iter().rposition(|atom| atom.may_break).map(|last| from + last);
        Self { from, to: placed.len(), whole: bare + width(&atoms[words..]), bare, last_break }
    }
}

impl Paragraph {
    /// The glyphs of a placed atom.
    pub fn glyphs(&self, placed: &Placed) -> &[PlacedGlyph] {
        &self.words[placed.word].atoms[placed.atom].glyphs
    }
}

/// The styles of the type family.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Style {
    Regular,
    Bold,
    Italic,
}

/// Shapes a word in a style.
pub type ShapeWord<'s> = dyn FnMut(&str, Style) -> Vec<Atom> + 's;

/// A shaped word with the spaces after it.
#[derive(Debug)]
struct Word {
    text: Box<str>,
    atoms: Vec<Atom>,
    /// It begins with a letter or figure.
    opens_plainly: bool,
    /// It ends with a letter, figure or point and then a space.
    closes_plainly: bool,
}

/// When so many words are kept, a new case is begun.
const MOST_WORDS: usize = 20_000;

/// The words that were shaped, to be found by their hash: nothing ever goes through them in their order.
#[derive(Debug, Default)]
pub struct WordCase {
    shaped: [HashTable<Arc<Word>>; 3],
}

/// Whether a character is of a script that runs from left to right and needs none of its neighbours
/// across a space: Latin, Greek and Cyrillic letters, figures, signs.
pub fn is_plain(letter: char) -> bool {
    let is_steering = matches!(letter, '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2060}'..='\u{206f}');
    let is_other_space =
        letter.is_whitespace() && !matches!(letter, ' ' | '\u{a0}' | '\u{2002}' | '\u{202f}');
    let is_known = matches!(letter, ' '..='\u{58f}' | '\u{1e00}'..='\u{2bff}');
    is_known && !is_steering && !is_other_space && !letter.is_control()
}

impl WordCase {
    /// Puts a paragraph together; `shape` shapes a word that is not yet kept.
    pub fn put_together(
        &mut self,
        text: &str,
        runs: &[Run],
        is_bold: bool,
        shape: &mut ShapeWord<'_>,
    ) -> Paragraph {
        let mut words = Vec::new();
        let mut sources = Vec::new();
        for (source, run) in runs.iter().enumerate() {
            let style = style_of(run, is_bold);
            words.extend(words_of(&run.text).map(|word| self.word(word, style, shape)));
            sources.resize(words.len(), source);
        }
        let mut breaks = Breaks::of(text, &words);
        let mut placed = Vec::with_capacity(text.len());
        let mut spans = Vec::with_capacity(words.len());
        let mut start = 0;
        for (word, (kept, source)) in words.iter().zip(sources).enumerate() {
            let from = placed.len();
            for (atom, shaped) in kept.atoms.iter().enumerate() {
                let (may_break, end) =
                    (breaks.may_break(start, shaped, atom), start + shaped.length);
                let Atom { advance, face, is_space, .. } = *shaped;
                placed.push(Placed { word, atom, advance, face, is_space, source, may_break, end });
                start = end;
            }
            spans.push(Span::of(&placed, from));
        }
        Paragraph { words, placed, spans, is_softened: text.contains(SOFT_HYPHEN) }
    }

    fn word(&mut self, word: &str, style: Style, shape: &mut ShapeWord<'_>) -> Arc<Word> {
        let kept = &mut self.shaped[style as usize];
        if kept.len() == MOST_WORDS {
            kept.clear();
        }
        let hash = hash_of(word);
        if let Some(known) = kept.find(hash, |kept| *kept.text == *word) {
            return Arc::clone(known);
        }
        let shaped = Arc::new(Word::of(word, shape(word, style)));
        kept.insert_unique(hash, Arc::clone(&shaped), |kept| hash_of(&kept.text));
        shaped
    }
}

/// The same on every run and every thread.
fn hash_of(word: &str) -> u64 {
    let mut hasher = FxHasher::default();
    word.hash(&mut hasher);
    hasher.finish()
}

impl Word {
    fn of(text: &str, mut atoms: Vec<Atom>) -> Self {
        let mut breaks = breaks_of(text).into_iter().peekable();
        let mut start = 0;
        for atom in &mut atoms {
            while breaks.next_if(|place| *place < start).is_some() {}
            atom.may_break = breaks.peek() == Some(&start);
            start += atom.length;
        }
        let bare = text.trim_end_matches(' ');
        let ends = |c: char| c.is_alphanumeric() || ",.;:!?)’”…–—%".contains(c);
        Self {
            text: text.into(),
            atoms,
            opens_plainly: text.starts_with(char::is_alphanumeric),
            closes_plainly: bare.len() < text.len() && bare.ends_with(ends),
        }
    }
}

/// Where the lines of a paragraph may break.
enum Breaks {
    /// Before every word and wherever a word of its own may: between a letter, figure or point, a space, and a letter or
    /// figure the rules of Unicode always allow it (UAX 14, LB18, to which LB14 to LB17 make no exception there), and
    /// what is inside of a word so bounded they judge by that word alone.
    Plain,
    /// These places of the whole text.
    At(Peekable<std::vec::IntoIter<usize>>),
}

impl Breaks {
    fn of(text: &str, words: &[Arc<Word>]) -> Self {
        let is_plain = |pair: &[Arc<Word>]| pair[0].closes_plainly && pair[1].opens_plainly;
        if words.windows(2).all(is_plain) {
            return Self::Plain;
        }
        Self::At(breaks_of(text).into_iter().peekable())
    }

    /// Whether a line may break before an atom that begins at a place and is the so-manieth of its word.
    fn may_break(&mut self, start: usize, atom: &Atom, index: usize) -> bool {
        match self {
            Self::Plain => start > 0 && (index == 0 || atom.may_break),
            Self::At(places) => {
                while places.next_if(|place| *place < start).is_some() {}
                places.peek() == Some(&start)
            }
        }
    }
}

fn style_of(run: &Run, is_bold: bool) -> Style {
    match run {
        run if run.bold || is_bold => Style::Bold,
        run if run.italic => Style::Italic,
        _ => Style::Regular,
    }
}

/// Pieces of a text, each a word with the spaces after it.
fn words_of(text: &str) -> impl Iterator<Item = &str> {
    let mut rest = text;
    std::iter::from_fn(move || {
        let word = rest.find(' ').unwrap_or(rest.len());
        let length = rest[word..].find(|c| c != ' ').map_or(rest.len(), |spaces| word + spaces);
        let (piece, after) = rest.split_at(length);
        rest = after;
        (!piece.is_empty()).then_some(piece)
    })
}

/// Where a line may break in a text, by the rules of Unicode.
pub fn breaks_of(text: &str) -> Vec<usize> {
    let segmenter: LineSegmenterBorrowed<'static> = {
        let mut options = LineBreakOptions::default();
        options.strictness = Some(LineBreakStrictness::Strict);
        options.word_option = Some(LineBreakWordOption::Normal);
        LineSegmenter::new_for_non_complex_scripts(options)
    };
    segmenter.segment_str(text).filter(|at| (1..text.len()).contains(at)).collect()
}

impl Atom {
    /// Says which letters it stands for: its first glyph has them as its text.
    pub fn tell(&mut self, letters: &str) {
        self.length = letters.len();
        self.is_space = letters == " ";
        if letters == "\u{ad}" {
            // A soft hyphen is seen only where a line ends with it.
            self.glyphs.clear();
        } else if let Some(first) = self.glyphs.first_mut() {
            first.text = GlyphText::of(letters);
        }
    }
}

/// The atoms of a word that parley has laid out.
pub fn atoms_of(mut layout: Layout<Source>, word: &str, faces: &Faces) -> Vec<Atom> {
    layout.break_all_lines(None);
    let mut atoms: Vec<Atom> = Vec::new();
    for item in layout.lines().flat_map(|line| line.items().collect::<Vec<_>>()) {
        let PositionedLayoutItem::GlyphRun(run) = item else { continue };
        let Some(face) = faces.by_blob(run.run().font().data.id()) else { continue };
        for cluster in run.run().visual_clusters() {
            let letters = &word[cluster.text_range()];
            if cluster.is_ligature_continuation()
                && let Some(last) = atoms.last_mut()
            {
                go_on(last, letters, cluster.advance());
                continue;
            }
            let mut pen = 0.0;
            let glyphs = cluster.glyphs().filter_map(|glyph| {
                let x = pen + glyph.x;
                pen += glyph.advance;
                // A sign that the faces lack (an emoji) is left out rather than printed as an empty box.
                let id = u16::try_from(glyph.id).ok().filter(|id| *id != 0)?;
                Some(PlacedGlyph { id, x, rise: -glyph.y, text: GlyphText::Nothing })
            });
            let glyphs = glyphs.collect();
            let (advance, face) = (cluster.advance(), face.face);
            let mut atom =
                Atom { length: 0, glyphs, advance, face, is_space: false, may_break: false };
            atom.tell(letters);
            atoms.push(atom);
        }
    }
    atoms
}

/// A ligature carries the text of all its letters.
fn go_on(ligature: &mut Atom, letters: &str, advance: f32) {
    ligature.length += letters.len();
    ligature.advance += advance;
    if let Some(glyph) = ligature.glyphs.first_mut() {
        glyph.text = GlyphText::of(&format!("{}{letters}", glyph.text));
    }
}
