//! Words and sentences that are long, and where they stand.

use std::collections::BTreeMap;
use std::ops::Range;

/// A word of so many syllables is long (`McLaughlin` 1969).
pub(super) const LONG_WORD: u32 = 3;

/// A sentence of more words than this is long: the Plain English Campaign asks for 15 to 20.
pub const LONG_SENTENCE: u32 = 20;

/// A word of three and more syllables that is written in letters.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LongWord {
    /// In lower case.
    pub word: String,
    pub syllables: u32,
    /// How often it stands in all texts.
    pub count: u32,
    /// The text it stands in first, by its index, and where there, in bytes.
    pub text: usize,
    pub start: usize,
}

/// A sentence of more than [`LONG_SENTENCE`] words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LongSentence {
    /// The text it stands in, by its index.
    pub text: usize,
    /// Where it stands there, in bytes.
    pub range: Range<usize>,
    pub words: u32,
}

/// Long words as they are met.
#[derive(Debug, Default)]
pub(super) struct LongWords {
    words: Vec<LongWord>,
    by_word: BTreeMap<String, usize>,
}

impl LongWords {
    /// Adds a word in lower case, with the index of its text and where it begins there.
    pub(super) fn add(&mut self, word: &str, (text, start): (usize, usize), syllables: u32) {
        if let Some(known) = self.by_word.get(word) {
            self.words[*known].count += 1;
            return;
        }
        self.by_word.insert(word.to_owned(), self.words.len());
        self.words.push(LongWord { word: word.to_owned(), syllables, count: 1, text, start });
    }

    pub(super) fn listed(self) -> Vec<LongWord> {
        self.words
    }
}

/// A child reads “27 cm” at a glance, however many syllables it has.
pub(super) fn is_spelt_out(word: &str) -> bool {
    word.len() > 2 && !word.contains(|c: char| c.is_ascii_digit())
}
