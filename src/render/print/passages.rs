//! Passages in another language than their sheet’s: the texts of a session that is not translated, on a sheet whose
//! labels are. They are found in the laid-out pages by their words, so that nothing that lays a sheet need know of
//! them, and say what language they are in (ISO 32000-1, 14.9.2); a long word of theirs is broken as theirs.

use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use super::breaks::{FROM_LEFT, FROM_RIGHT, Hyphens, SOFT_HYPHEN};
use super::page::{GlyphRun, GlyphText, Item, Key, Page, PlacedGlyph, Role};
use super::shaper::Shaper;
use crate::pack::{Pack, Session, Unit};
use crate::prose::{Run, plain_line, read_blocks};

/// A shorter text is a passage only where it stands between other words there, not inside one.
const SHORT: usize = 12;

/// What is not in the sheet’s language.
#[derive(Debug, Default)]
pub struct Passages {
    all: Vec<Passage>,
    /// What was asked before: content is tried in several sizes.
    asked: RefCell<BTreeMap<String, Option<usize>>>,
}

/// All that is in one language.
#[derive(Clone, Debug)]
struct Passage {
    language: Arc<str>,
    hyphens: Option<Hyphens>,
    /// Every text as it reads on paper, one after the other.
    said: String,
    /// Titles and things that stand inside sentences of the sheet’s own, the longest first.
    names: Vec<String>,
}

/// The texts of one language as they are gathered.
#[derive(Debug, Default)]
struct Gathered {
    said: String,
    names: BTreeSet<String>,
}

impl Gathered {
    fn add(&mut self, text: &str) {
        for block in read_blocks(text) {
            let words: String = block.runs.iter().map(|run| run.text.as_str()).collect();
            self.said.push_str(&fold(&words));
            self.said.push('\n');
        }
    }

    fn name(&mut self, name: &str) {
        let name = fold(&plain_line(name));
        self.said.push_str(&name);
        self.said.push('\n');
        self.names.insert(name);
    }

    fn add_session(&mut self, session: &Session, pack: &Pack) {
        session.texts().iter().for_each(|text| self.add(text));
        self.name(&session.title);
        session.parts.iter().for_each(|part| self.name(&part.title));
        for need in &session.needs {
            let others = need.substitutes.iter().map(|other| (&other.thing, &other.plural));
            for (name, plural) in others.chain([(&need.name, &need.plural)]) {
                // Things may have their names in the sheet’s language though the session has not.
                if !pack.called.has(name) {
                    self.name(name);
                    self.name(plural);
                }
            }
        }
    }
}

impl Passages {
    /// Those of sheets about sessions of a pack, and a unit of them.
    pub fn of<'s>(
        pack: &Pack,
        sessions: impl Iterator<Item = &'s Session>,
        unit: Option<&Unit>,
    ) -> Self {
        let mut gathered: BTreeMap<&str, Gathered> = BTreeMap::new();
        if let Some((language, texts)) = &pack.untranslated {
            let all = gathered.entry(language).or_default();
            for text in texts {
                all.add(text);
            }
        }
        for session in sessions.filter(|session| session.language != pack.language.value) {
            gathered.entry(&session.language).or_default().add_session(session, pack);
        }
        if let Some(unit) = unit.filter(|unit| unit.language != pack.language.value) {
            let all = gathered.entry(&unit.language).or_default();
            all.name(&unit.title);
            unit.summary.iter().for_each(|text| all.add(text));
        }
        let passage = |(language, Gathered { said, names }): (&str, Gathered)| {
            let mut names: Vec<String> = names.into_iter().collect();
            names.sort_by_key(|name| std::cmp::Reverse(name.len()));
            let hyphens = Hyphens::of(language);
            Passage { language: language.into(), hyphens, said, names }
        };
        Self { all: gathered.into_iter().map(passage).collect(), ..Self::default() }
    }

    /// What the words of a paragraph are broken by: those of a passage as its language, others as is usual.
    pub fn hyphens_of(&self, runs: &[Run], usual: Option<Hyphens>) -> Option<Hyphens> {
        if self.all.is_empty() {
            return usual;
        }
        let mut known = Verdict::Open;
        for run in runs.iter().filter(|run| run.text.contains(char::is_alphabetic)) {
            known.add(|| self.find(fold(&run.text)));
        }
        let passage = known.passage().and_then(|index| self.all.get(index));
        passage.map_or(usual, |passage| passage.hyphens)
    }

    /// The passage that a text is part of.
    fn find(&self, text: String) -> Option<usize> {
        let known = self.asked.borrow().get(&text).copied();
        known.unwrap_or_else(|| {
            let found = self.all.iter().position(|passage| holds(&passage.said, &text));
            self.asked.borrow_mut().insert(text, found);
            found
        })
    }

    /// The passage that a run of words is part of, whichever way it runs.
    fn find_run(&self, run: &GlyphRun) -> Option<usize> {
        let onward = words_in_order(run.glyphs.iter());
        let is_arabic = onward.contains(|c| matches!(c, '\u{600}'..='\u{6ff}'));
        let backward = || self.find(words_in_order(run.glyphs.iter().rev()));
        self.find(onward).or_else(|| is_arabic.then(backward).flatten())
    }

    /// Says of all passages on pages what language they are in.
    pub fn mark(&self, pages: &mut [Page], shaper: &mut Shaper<'_>) {
        if self.all.is_empty() {
            return;
        }
        let mut things = Things::new();
        for page in pages.iter() {
            self.judge(&page.items, None, &mut things);
        }
        for thing in things.values_mut().filter(|thing| thing.verdict == Verdict::Mixed) {
            thing.names = self.find_names(&thing.words);
        }
        for page in pages {
            let items = std::mem::take(&mut page.items);
            page.items = self.mark_items(items, &mut things, shaper);
        }
    }

    /// Finds for each thing whether all of its words are of one passage: it may stand on several lines and pages.
    fn judge(&self, items: &[Item], within: Option<Key>, things: &mut Things) {
        for item in items {
            match (item, within) {
                (Item::Group { tag, items }, _) => {
                    if let Role::Figure(says) = &tag.role {
                        things.entry(tag.key).or_default().verdict.add(|| self.find(fold(says)));
                    } else if tag.role != Role::Decoration {
                        self.judge(items, Some(tag.key), things);
                    }
                }
                (Item::Glyphs(run), Some(key)) => {
                    let thing = things.entry(key).or_default();
                    run.glyphs.iter().for_each(|glyph| write_glyph(glyph, &mut thing.words));
                    if has_letters(run) {
                        thing.verdict.add(|| self.find_run(run));
                    }
                }
                _ => {}
            }
        }
    }

    fn mark_items(
        &self,
        items: Vec<Item>,
        things: &mut Things,
        shaper: &mut Shaper<'_>,
    ) -> Vec<Item> {
        let mut marked = Vec::with_capacity(items.len());
        for item in items {
            let Item::Group { mut tag, items } = item else {
                marked.push(item);
                continue;
            };
            let verdict = things.get(&tag.key).map_or(Verdict::Open, |thing| thing.verdict);
            let items = match (&tag.role, verdict) {
                (Role::Decoration, _) => items,
                (Role::Figure(_), verdict) => {
                    tag.language = self.language_of(verdict.passage());
                    items
                }
                (_, Verdict::One(index)) => {
                    tag.language = self.language_of(Some(index));
                    items
                }
                (_, Verdict::Mixed) => self.mark_words(items, tag.key, things, shaper),
                (_, Verdict::Open) => self.mark_items(items, things, shaper),
            };
            marked.push(Item::Group { tag, items });
        }
        marked
    }

    fn language_of(&self, passage: Option<usize>) -> Option<Arc<str>> {
        self.all.get(passage?).map(|passage| passage.language.clone())
    }

    /// Passages inside other words, each as a thing of its own.
    fn mark_words(
        &self,
        items: Vec<Item>,
        key: Key,
        things: &mut Things,
        shaper: &mut Shaper<'_>,
    ) -> Vec<Item> {
        let mut marked = Vec::new();
        for item in items {
            let Item::Glyphs(run) = item else {
                marked.extend(self.mark_items(vec![item], things, shaper));
                continue;
            };
            let Some(thing) = things.get_mut(&key) else { continue };
            let from = thing.done;
            thing.done += width_in_text(&run);
            let whole = Some(&run).filter(|run| has_letters(run));
            let pieces = match whole.and_then(|run| self.find_run(run)) {
                Some(index) => vec![(run, Some(index))],
                None => split_at_names(&run, from, &thing.names),
            };
            for (piece, passage) in pieces {
                let piece = Item::Glyphs(piece);
                marked.push(match passage {
                    Some(index) => self.span(vec![piece], index, shaper),
                    None => piece,
                });
            }
        }
        marked
    }

    fn span(&self, items: Vec<Item>, passage: usize, shaper: &mut Shaper<'_>) -> Item {
        let language = self.language_of(Some(passage));
        Item::group(Role::Span, shaper.next_key(), items).in_language(language)
    }

    /// Where names stand in words, the longest first taken, in their order.
    fn find_names(&self, words: &str) -> Vec<(usize, usize, usize)> {
        let mut found: Vec<(usize, usize, usize)> = Vec::new();
        for (index, passage) in self.all.iter().enumerate() {
            for name in &passage.names {
                let places =
                    words.match_indices(name.as_str()).map(|(at, _)| (at, at + name.len()));
                for (from, to) in places.filter(|(from, to)| stands_alone(words, *from, *to)) {
                    if found.iter().all(|(begin, end, _)| to <= *begin || from >= *end) {
                        found.push((from, to, index));
                    }
                }
            }
        }
        found.sort_unstable();
        found
    }
}

/// What is known of the things of a document, by their keys.
type Things = BTreeMap<Key, Thing>;

/// A thing that words may stand in, on several lines and pages.
#[derive(Debug, Default)]
struct Thing {
    verdict: Verdict,
    /// All its words, line after line.
    words: String,
    /// Where in them names stand, and of which passage.
    names: Vec<(usize, usize, usize)>,
    /// So much of its words is marked.
    done: usize,
}

/// Which passage all words so far are of.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum Verdict {
    #[default]
    Open,
    One(usize),
    Mixed,
}

impl Verdict {
    fn add(&mut self, find: impl FnOnce() -> Option<usize>) {
        *self = match (*self, find()) {
            (Self::Open, Some(index)) => Self::One(index),
            (Self::One(known), Some(index)) if known == index => *self,
            _ => Self::Mixed,
        };
    }

    const fn passage(self) -> Option<usize> {
        match self {
            Self::One(index) => Some(index),
            _ => None,
        }
    }
}

/// Adds the text of a glyph as it is compared: a hyphen at the end of a line is none of its own.
fn write_glyph(glyph: &PlacedGlyph, words: &mut String) {
    match &glyph.text {
        GlyphText::Letter(SOFT_HYPHEN) => {}
        GlyphText::Letter('\u{a0}') => words.push(' '),
        text => text.write_to(words),
    }
}

/// How long the text of a run is.
fn width_in_text(run: &GlyphRun) -> usize {
    let mut words = String::new();
    run.glyphs.iter().for_each(|glyph| write_glyph(glyph, &mut words));
    words.len()
}

/// A run that begins at a place of its thing’s words, in pieces: the names of a passage, and what stands between them.
fn split_at_names(
    run: &GlyphRun,
    start: usize,
    names: &[(usize, usize, usize)],
) -> Vec<(GlyphRun, Option<usize>)> {
    let mut words = String::new();
    let mut pieces: Vec<(std::ops::Range<usize>, Option<usize>)> = Vec::new();
    for (index, glyph) in run.glyphs.iter().enumerate() {
        let at = start + words.len();
        write_glyph(glyph, &mut words);
        let name = names.iter().find(|(from, to, _)| (*from..*to).contains(&at));
        let passage = name.map(|(_, _, passage)| *passage);
        match pieces.last_mut() {
            Some((range, known)) if *known == passage => range.end = index + 1,
            _ => pieces.push((index..index + 1, passage)),
        }
    }
    pieces.into_iter().map(|(range, passage)| (cut_run(run, range), passage)).collect()
}

/// So many glyphs of a run as one of their own.
fn cut_run(run: &GlyphRun, range: std::ops::Range<usize>) -> GlyphRun {
    let left = run.glyphs[range.start].x;
    let glyphs = run.glyphs[range].iter();
    let glyphs = glyphs.map(|glyph| PlacedGlyph { x: glyph.x - left, ..glyph.clone() });
    GlyphRun { at: (run.at.0 + left, run.at.1), glyphs: glyphs.collect(), ..run.clone() }
}

fn has_letters(run: &GlyphRun) -> bool {
    words_in_order(run.glyphs.iter()).contains(char::is_alphabetic)
}

fn words_in_order<'g>(glyphs: impl Iterator<Item = &'g PlacedGlyph>) -> String {
    let mut words = String::new();
    glyphs.for_each(|glyph| glyph.text.write_to(&mut words));
    fold(&words)
}

/// A text as it is compared: spaces alike, without hyphens of lines and the marks of Arabic, which fonts place in an
/// order of their own.
fn fold(text: &str) -> String {
    let kept: String = text.chars().filter_map(fold_letter).collect();
    kept.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// A letter without its marks, also where Unicode has both as one (its canonical decompositions).
const fn fold_letter(letter: char) -> Option<char> {
    match letter {
        SOFT_HYPHEN
        | FROM_LEFT
        | FROM_RIGHT
        | '\u{64b}'..='\u{65f}'
        | '\u{670}'
        | '\u{6d6}'..='\u{6ed}' => None,
        'آ' | 'أ' | 'إ' => Some('ا'),
        'ؤ' => Some('و'),
        'ئ' => Some('ي'),
        'ۂ' => Some('ہ'),
        'ۓ' => Some('ے'),
        _ => Some(letter),
    }
}

/// Whether a text is among what is said.
fn holds(said: &str, text: &str) -> bool {
    if text.len() >= SHORT {
        return said.contains(text);
    }
    let mut places = said.match_indices(text).map(|(at, _)| at);
    !text.is_empty() && places.any(|at| stands_alone(said, at, at + text.len()))
}

/// Whether what stands in a text from one place to another is no piece of a word.
fn stands_alone(text: &str, from: usize, to: usize) -> bool {
    let before = text[..from].chars().next_back();
    let after = text[to..].chars().next();
    [before, after].into_iter().flatten().all(|c| !c.is_alphanumeric())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn passages() -> Passages {
        let mut gathered = Gathered::default();
        gathered.add("Bend your knees as you land, *softly*.\n\n- Look ahead");
        gathered.name("gym mat");
        let Gathered { said, names } = gathered;
        let names = names.into_iter().collect();
        let passage = Passage { language: "en-GB".into(), hyphens: None, said, names };
        Passages { all: vec![passage], ..Passages::default() }
    }

    #[test]
    fn a_line_of_a_passage_is_found_and_a_label_is_not() {
        let all = passages();
        for text in ["Bend your knees", "land, softly.", "Look ahead", "you"] {
            assert_eq!(all.find(text.to_owned()), Some(0), "{text}");
        }
        for text in ["Objets à réunir", "oft", "ook ahea"] {
            assert_eq!(all.find(text.to_owned()), None, "{text}");
        }
    }

    #[test]
    fn names_are_found_inside_a_sentence() {
        assert_eq!(passages().find_names("à la place de gym mat, gym mats"), [(15, 22, 0)]);
    }
}
