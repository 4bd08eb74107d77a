//! What is counted in a text, and what readability formulas start from.

use std::iter::Sum;
use std::ops::{Add, AddAssign};

/// Sentences, words and what words are made of. Counts of several texts are added.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct TextCounts {
    /// What ends with a full stop, question or exclamation mark, or with its paragraph.
    pub sentences: u32,
    /// What stands between spaces, dashes or slashes and has a letter or a figure; a hyphen inside
    /// does not part a word.
    pub words: u32,
    /// Letters and figures (Coleman & Liau 1975).
    pub letters: u32,
    /// All that is typed except spaces: letters, figures and punctuation (the strokes of Smith &
    /// Senter 1967). Where only letters and figures are counted, the index is about one grade lower.
    pub characters: u32,
    /// As they are read aloud, figures too (Flesch 1948).
    pub syllables: u32,
    /// Words of three and more syllables (`McLaughlin` 1969), figures and units as they are read aloud.
    pub polysyllables: u32,
}

impl TextCounts {
    /// SMOG was made for samples of this many sentences; with fewer it is an estimate.
    pub const SMOG_SENTENCES: u32 = 30;

    /// Whether there are sentences enough for SMOG to be more than an estimate.
    pub fn suits_smog(&self) -> bool {
        self.sentences >= Self::SMOG_SENTENCES
    }
}

impl Add for TextCounts {
    type Output = Self;

    fn add(self, other: Self) -> Self {
        Self {
            sentences: self.sentences + other.sentences,
            words: self.words + other.words,
            letters: self.letters + other.letters,
            characters: self.characters + other.characters,
            syllables: self.syllables + other.syllables,
            polysyllables: self.polysyllables + other.polysyllables,
        }
    }
}

impl AddAssign for TextCounts {
    fn add_assign(&mut self, other: Self) {
        *self = *self + other;
    }
}

impl Sum for TextCounts {
    fn sum<I: Iterator<Item = Self>>(all: I) -> Self {
        all.fold(Self::default(), Self::add)
    }
}
