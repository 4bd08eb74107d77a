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
    /// By first word: the other words, and the key the name stands for.
    by_first: BTreeMap<String, Vec<(Vec<String>, String)>>,
}

impl Names {
    /// Adds a name that stands for `key`.
    pub(super) fn add(&mut self, name: &str, key: &str) {
        let mut words = words_of(name).into_iter();
        if let Some(first) = words.next() {
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

#[cfg(test)]
mod tests {
    use super::*;

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
