//! Looking for whole words in a teacher's text. Marks of emphasis and punctuation are passed over.

use std::collections::BTreeMap;

use crate::pack::Pack;

/// Whether a pack is written in English, for rules that look for English words.
pub(super) fn is_english(pack: &Pack) -> bool {
    pack.is_english()
}

/// The words of a text in lower case, without marks; a hyphen or apostrophe inside a word stays.
pub(super) fn words_of(text: &str) -> Vec<String> {
    each_word(text).map(str::to_lowercase).collect()
}

/// The same, as they are written.
fn each_word(text: &str) -> impl Iterator<Item = &str> {
    text.split(|c: char| !(c.is_alphanumeric() || matches!(c, '-' | '\'' | '’')))
        .map(|word| word.trim_matches(|c: char| !c.is_alphanumeric()))
        .filter(|word| !word.is_empty())
}

/// Names of one or more words to look for.
#[derive(Debug, Default)]
pub(super) struct Names {
    /// How first words begin: most words of a text are passed over by their first two letters.
    beginnings: Beginnings,
    /// By first word: the other words, and the key the name stands for.
    by_first: BTreeMap<String, Vec<(Vec<String>, String)>>,
}

impl Names {
    /// Adds a name that stands for `key`.
    pub(super) fn add(&mut self, name: &str, key: &str) {
        let mut words = words_of(name).into_iter();
        if let Some(first) = words.next() {
            self.beginnings.add(&first);
            self.by_first.entry(first).or_default().push((words.collect(), key.to_owned()));
        }
    }

    /// The keys of the names that stand in a text, in its order. Where names overlap, the longest
    /// counts: “tape measure” holds no “tape”.
    pub(super) fn keys_in(&self, text: &str) -> Vec<&str> {
        // Most texts hold no name: that is seen without a list of their words.
        if !each_word(text).any(|word| self.begins(word)) {
            return Vec::new();
        }
        let words = words_of(text);
        let (mut at, mut keys) = (0, Vec::new());
        while at < words.len() {
            let (length, key) = self.longest_at(&words[at..]).unwrap_or((1, ""));
            if !key.is_empty() {
                keys.push(key);
            }
            at += length;
        }
        keys
    }

    fn begins(&self, word: &str) -> bool {
        if !self.beginnings.may_have(word) {
            return false;
        }
        let is_plain = word.bytes().all(|byte| byte.is_ascii() && !byte.is_ascii_uppercase());
        if is_plain {
            self.by_first.contains_key(word)
        } else {
            self.by_first.contains_key(&word.to_lowercase())
        }
    }

    fn longest_at(&self, words: &[String]) -> Option<(usize, &str)> {
        let (first, rest) = words.split_first()?;
        let candidates = self.by_first.get(first)?.iter();
        let found = candidates.filter(|(others, _)| rest.starts_with(others));
        found.max_by_key(|(others, _)| others.len()).map(|(o, key)| (o.len() + 1, key.as_str()))
    }
}

/// The first two bytes of words, as bits.
#[derive(Debug, Default)]
struct Beginnings {
    bits: Vec<u64>,
}

impl Beginnings {
    fn add(&mut self, word: &str) {
        let (at, bit) = Self::place(word).unwrap_or((0, 0));
        self.bits.resize(1 << 10, 0);
        self.bits[at] |= bit;
    }

    /// Whether a word may be among those that were added; letters beyond ASCII are not told apart.
    fn may_have(&self, word: &str) -> bool {
        Self::place(word)
            .is_none_or(|(at, bit)| self.bits.get(at).is_some_and(|had| had & bit != 0))
    }

    /// Where a word’s bit is, in lower case.
    fn place(word: &str) -> Option<(usize, u64)> {
        let &[first, second] = word.as_bytes().first_chunk::<2>()?;
        let is_ascii = first.is_ascii() && second.is_ascii();
        let lower = [first, second].map(|byte| byte.to_ascii_lowercase());
        let place = usize::from(u16::from_be_bytes(lower));
        is_ascii.then_some((place / 64, 1 << (place % 64)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_word_is_passed_over_by_its_first_letters() {
        let mut beginnings = Beginnings::default();
        beginnings.add("tape");
        assert!(
            beginnings.may_have("Tarp") && beginnings.may_have("x") && beginnings.may_have("é1")
        );
        assert!(!beginnings.may_have("rope"));
    }

    #[test]
    fn the_longest_whole_words_count() {
        let mut names = Names::default();
        for name in ["tape", "tape measure", "marker", "markers"] {
            names.add(name, name);
        }
        let text = "Lay **both markers** out; the tape measure (not tape!) goes between. A bookmarker is none.";
        assert_eq!(names.keys_in(text), ["markers", "tape measure", "tape"]);
    }
}
