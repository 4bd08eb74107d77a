//! Words → shaped paragraphs. Plain text, which runs from left to right with spaces between its words, is
//! shaped word by word, each word once: the pieces are put together for every paragraph that has them.
//!
//! Where a line may break is said for the whole paragraph by the rules of Unicode (UAX 14), as ICU4X has
//! them. Texts in which scripts run in both directions are left to parley ([`super::bidi`]).

use std::collections::BTreeMap;
use std::rc::Rc;

use icu_segmenter::options::{LineBreakOptions, LineBreakStrictness, LineBreakWordOption};
use icu_segmenter::{LineSegmenter, LineSegmenterBorrowed};
use parley::Layout;
use parley::layout::PositionedLayoutItem;

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
    /// Its glyphs; `x` counts from its own start.
    pub glyphs: Vec<PlacedGlyph>,
    /// It hangs out of the line that it ends.
    pub is_space: bool,
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
    words: Vec<Rc<[Atom]>>,
    /// In the order of the text.
    pub placed: Vec<Placed>,
}

impl Paragraph {
    /// The glyphs of a placed atom.
    pub fn glyphs(&self, placed: &Placed) -> &[PlacedGlyph] {
        &self.words[placed.word][placed.atom].glyphs
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

/// When so many words are kept, a new case is begun.
const MOST_WORDS: usize = 20_000;

/// The words that were shaped.
#[derive(Debug, Default)]
pub struct WordCase {
    shaped: [BTreeMap<Box<str>, Rc<[Atom]>>; 3],
}

/// Whether a character is of a script that runs from left to right and needs none of its neighbours
/// across a space: Latin, Greek and Cyrillic letters, figures, signs.
pub fn is_plain(letter: char) -> bool {
    let is_steering = matches!(letter, '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2060}'..='\u{206f}');
    let is_other_space = letter.is_whitespace() && !matches!(letter, ' ' | '\u{a0}' | '\u{202f}');
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
        let mut breaks = breaks_of(text).into_iter().peekable();
        let mut paragraph = Paragraph { words: Vec::new(), placed: Vec::with_capacity(text.len()) };
        let mut start = 0;
        for (source, run) in runs.iter().enumerate() {
            let style = style_of(run, is_bold);
            for word in words_of(&run.text) {
                let atoms = self.word(word, style, shape);
                for (index, atom) in atoms.iter().enumerate() {
                    while breaks.next_if(|place| *place < start).is_some() {}
                    let (may_break, end) = (breaks.peek() == Some(&start), start + atom.length);
                    paragraph.placed.push(Placed {
                        word: paragraph.words.len(),
                        atom: index,
                        advance: atom.advance,
                        face: atom.face,
                        is_space: atom.is_space,
                        source,
                        may_break,
                        end,
                    });
                    start = end;
                }
                paragraph.words.push(atoms);
            }
        }
        paragraph
    }

    fn word(&mut self, word: &str, style: Style, shape: &mut ShapeWord<'_>) -> Rc<[Atom]> {
        let kept = &mut self.shaped[style as usize];
        if let Some(atoms) = kept.get(word) {
            return Rc::clone(atoms);
        }
        if kept.len() == MOST_WORDS {
            kept.clear();
        }
        let atoms: Rc<[Atom]> = shape(word, style).into();
        kept.insert(word.into(), Rc::clone(&atoms));
        atoms
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

fn breaks_of(text: &str) -> Vec<usize> {
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
            let mut atom = Atom { length: 0, glyphs, advance, face, is_space: false };
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
