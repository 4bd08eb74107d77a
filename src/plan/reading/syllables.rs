//! A word → how many syllables it has.
//!
//! A word is looked up in a list of those that the rules get wrong; else its ending is taken off and the
//! rest looked up; else the rules count (see `syllable_rules`). The parts of a hyphened word are
//! added, figures and units are counted as they are read aloud.

use std::cell::RefCell;
use std::collections::BTreeMap;

use super::figures::{figure_syllables, unit_syllables};
use super::syllable_list::listed_syllables;
use super::syllable_rules::ruled_syllables;

/// When so many words are known, they are forgotten.
const MOST_KNOWN: usize = 20_000;

thread_local! {
    /// Words that were counted: texts say few words often, and a library has thousands of texts.
    static KNOWN: RefCell<BTreeMap<Box<str>, u32>> = const { RefCell::new(BTreeMap::new()) };
}

/// The syllables of a word as it is written in a text; at least one where there is a letter or figure.
pub fn count_syllables(word: &str) -> u32 {
    KNOWN.with_borrow_mut(|known| {
        if let Some(syllables) = known.get(word) {
            return *syllables;
        }
        if known.len() == MOST_KNOWN {
            known.clear();
        }
        let syllables = count_pieces(word);
        known.insert(word.into(), syllables);
        syllables
    })
}

fn count_pieces(word: &str) -> u32 {
    let (mut syllables, mut rest) = (0, word);
    while let Some(start) = rest.find(char::is_alphanumeric) {
        let piece = &rest[start..];
        let is_figure = piece.starts_with(|c: char| c.is_ascii_digit());
        let end = if is_figure { end_of_figure(piece) } else { end_of_letters(piece) };
        let follows_figure = rest[..start].is_empty() && rest.len() < word.len();
        syllables += match (is_figure, is_ordinal_ending(&piece[..end]) && follows_figure) {
            (true, _) => figure_syllables(&piece[..end]),
            (_, true) => 0,
            _ => letters_syllables(&piece[..end]),
        };
        rest = &piece[end..];
    }
    syllables
}

/// The “th” of “10th” makes no syllable of its own.
fn is_ordinal_ending(letters: &str) -> bool {
    ["st", "nd", "rd", "th"].contains(&letters)
}

fn end_of_figure(text: &str) -> usize {
    let ends = |c: char| !(c.is_ascii_digit() || matches!(c, '.' | ','));
    text.find(ends).unwrap_or(text.len())
}

/// Letters with an apostrophe among them.
fn end_of_letters(text: &str) -> usize {
    let ends = |c: char| c.is_ascii_digit() || !(c.is_alphanumeric() || is_apostrophe(c));
    text.find(ends).unwrap_or(text.len())
}

fn is_apostrophe(sign: char) -> bool {
    matches!(sign, '’' | '\'')
}

fn letters_syllables(letters: &str) -> u32 {
    let mut word = letters.to_lowercase();
    if word.contains('’') {
        word = word.replace('’', "'");
    }
    let word = word.trim_matches('\'');
    let (stem, ending) = word.split_once('\'').unwrap_or((word, ""));
    if ending.is_empty() || ending == "s" {
        return word_syllables(stem) + u32::from(ending == "s" && is_hissed(stem));
    }
    listed_syllables(word).unwrap_or_else(|| word_syllables(stem) + ending_syllables(stem, ending))
}

/// One lower-case word without an apostrophe.
fn word_syllables(word: &str) -> u32 {
    listed_syllables(word)
        .or_else(|| unit_syllables(word))
        .or_else(|| stem_syllables(word))
        .unwrap_or_else(|| ruled_syllables(word))
}

/// The count of a listed word with a regular ending.
fn stem_syllables(word: &str) -> Option<u32> {
    let with = |ending: &str, more: u32| {
        let stem = word.strip_suffix(ending).filter(|stem| stem.len() > 2)?;
        listed_syllables(stem).map(|syllables| syllables + more)
    };
    let hissed = |stem: &str| u32::from(is_hissed(stem));
    let dental = |stem: &str| u32::from(stem.ends_with(['t', 'd']));
    with("s", 0)
        .or_else(|| with("es", hissed(word.strip_suffix("es")?)))
        .or_else(|| with("ed", dental(word.strip_suffix("ed")?)))
        .or_else(|| with("d", dental(word.strip_suffix("ed")?)))
        .or_else(|| with("ing", 1))
        .or_else(|| with("ly", 1))
}

/// Whether an “s” after it needs a syllable of its own.
fn is_hissed(stem: &str) -> bool {
    ["s", "x", "z", "ch", "sh", "ce", "ge", "se", "ze"].iter().any(|end| stem.ends_with(end))
}

/// What “n’t”, “’ll” and the like add: “did-n’t”, “it’ll”, but “don’t” and “they’ll”.
fn ending_syllables(stem: &str, ending: &str) -> u32 {
    let ends_in_vowel = stem.trim_end_matches('n').ends_with(['a', 'e', 'i', 'o', 'u', 'y', 'r']);
    match ending {
        "t" if stem.ends_with('n') => u32::from(!ends_in_vowel),
        "ll" | "ve" | "re" | "d" => u32::from(!ends_in_vowel && !stem.ends_with('w')),
        "m" | "t" => 0,
        other => word_syllables(other),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn listed_words_stems_and_rules_agree_with_speech() {
        let spoken = [
            ("the", 1),
            ("every", 2),
            ("Balance", 2),
            ("balancing", 3),
            ("area", 3),
            ("areas", 3),
            ("jumped", 1),
            ("landed", 2),
            ("handled", 2),
            ("metres", 2),
            ("centimetres", 4),
            ("idea", 3),
            ("ideas", 3),
            ("ready", 2),
            ("safely", 2),
            ("rhythm", 2),
            ("quiet", 2),
            ("easier", 3),
            ("exercise", 3),
            ("exercises", 4),
            ("running", 2),
            ("science", 2),
            ("café", 2),
            ("eye", 1),
            ("eyes", 1),
            ("something", 2),
            ("a", 1),
            ("people", 2),
        ];
        for (word, syllables) in spoken {
            assert_eq!(count_syllables(word), syllables, "{word}");
        }
    }

    #[test]
    fn apostrophes_hyphens_and_figures_are_read_aloud() {
        let spoken = [
            ("don’t", 1),
            ("didn't", 2),
            ("child’s", 1),
            ("coach’s", 2),
            ("they’ll", 1),
            ("it’ll", 2),
            ("warm-up", 2),
            ("3", 1),
            ("30s", 4),
            ("10th", 1),
            ("1.5", 3),
            ("A4", 2),
            ("cm", 4),
            ("50cm", 6),
            ("E.g", 2),
        ];
        for (word, syllables) in spoken {
            assert_eq!(count_syllables(word), syllables, "{word}");
        }
        assert_eq!(count_syllables("–"), 0);
    }
}
