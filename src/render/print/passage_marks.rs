//! Passages in another language than their sheet’s → marked as such in the pages that were laid out (ISO 32000-1, 14.9.2).

use std::collections::BTreeMap;

use super::alike::fold;
use super::breaks::SOFT_HYPHEN;
use super::page::{GlyphRun, GlyphText, Item, Key, Page, PlacedGlyph, Role};
use super::passages::{Passages, Verdict};
use super::shaper::Shaper;

impl Passages {
    /// Says of all passages on pages what language they are in.
    pub fn mark(&self, pages: &mut [Page], shaper: &mut Shaper<'_>) {
        if self.are_none() {
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

    /// The passage that a run of words is part of.
    fn find_run(&self, run: &GlyphRun) -> Option<usize> {
        self.find(words_of(run))
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
    let glyphs = &run.glyphs[range];
    let left = glyphs.iter().map(|glyph| glyph.x).fold(f32::MAX, f32::min);
    let glyphs = glyphs.iter().map(|glyph| PlacedGlyph { x: glyph.x - left, ..glyph.clone() });
    GlyphRun { at: (run.at.0 + left, run.at.1), glyphs: glyphs.collect(), ..run.clone() }
}

fn has_letters(run: &GlyphRun) -> bool {
    words_of(run).contains(char::is_alphabetic)
}

fn words_of(run: &GlyphRun) -> String {
    let mut words = String::new();
    run.glyphs.iter().for_each(|glyph| glyph.text.write_to(&mut words));
    fold(&words)
}
