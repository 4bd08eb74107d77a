//! The reading plan: how hard the texts are that a child reads. English only.
//!
//! Plain words go in, without CommonMark marks, one text a paragraph, heading, list entry or key point;
//! counts, scores by published formulas, a reading age, long words and long sentences come out. The end
//! of a text ends its sentence, so that a key point needs no full stop. Everything is pure.
//!
//! The formulas and their sources stand in `scores`, the counting in `sentences`, `words` and `syllables`.

mod counts;
mod cues;
mod figures;
mod long;
mod scores;
mod sentences;
mod syllable_list;
mod syllable_rules;
mod syllables;
mod words;

pub use counts::TextCounts;
pub use cues::{CueLoad, MOST_CUES, plan_cues};
pub use long::{LONG_SENTENCE, LongSentence, LongWord};
pub use scores::Scores;
pub use sentences::sentences_of;
pub use syllables::count_syllables;
pub use words::{Word, words_of};

use std::ops::Range;

use long::LongWords;

/// How hard some texts are to read.
#[derive(Clone, Debug, PartialEq)]
pub struct ReadingReport {
    pub counts: TextCounts,
    /// None where there are no words.
    pub scores: Option<Scores>,
    /// In years (see [`Scores::reading_age`]); none where there are no words.
    pub reading_age: Option<f64>,
    /// Words of three and more syllables, each once, in the order they are met.
    pub long_words: Vec<LongWord>,
    /// Sentences of more than [`LONG_SENTENCE`] words, in their order.
    pub long_sentences: Vec<LongSentence>,
}

impl ReadingReport {
    /// How many words are long, each as often as it stands.
    pub fn long_word_count(&self) -> u32 {
        self.long_words.iter().map(|word| word.count).sum()
    }
}

/// One text, counted: what any sum of texts starts from.
#[derive(Clone, Debug, PartialEq)]
pub struct CountedText {
    counts: TextCounts,
    /// Words of three and more syllables in lower case, where each begins, and its syllables.
    long_words: Vec<(String, usize, u32)>,
    /// Where each long sentence stands, and its words.
    long_sentences: Vec<(Range<usize>, u32)>,
}

/// Counts and judges texts, which are taken as English.
pub fn plan_reading(texts: &[&str]) -> ReadingReport {
    let counted: Vec<CountedText> = texts.iter().map(|text| count_text(text)).collect();
    sum_up(&counted)
}

/// Judges texts that have been counted.
pub fn sum_up<'c>(texts: impl IntoIterator<Item = &'c CountedText>) -> ReadingReport {
    let mut counts = TextCounts::default();
    let (mut long_words, mut long_sentences) = (LongWords::default(), Vec::new());
    for (at, text) in texts.into_iter().enumerate() {
        counts += text.counts;
        for (word, start, syllables) in &text.long_words {
            long_words.add(word, (at, *start), *syllables);
        }
        let sentences = text.long_sentences.iter().cloned();
        long_sentences.extend(sentences.map(|(range, words)| LongSentence {
            text: at,
            range,
            words,
        }));
    }
    let scores = Scores::of(&counts);
    let reading_age = scores.map(|scores| scores.reading_age());
    ReadingReport { counts, scores, reading_age, long_words: long_words.listed(), long_sentences }
}

/// Counts one text.
pub fn count_text(text: &str) -> CountedText {
    let (mut counts, long_words) = count_words(text);
    let sentences = sentences_of(text);
    counts.sentences = size(sentences.len());
    let mut long_sentences = Vec::new();
    // A text can hold a long sentence only where it is as long itself.
    if counts.words > LONG_SENTENCE {
        long_sentences.extend(sentences.into_iter().filter_map(|range| {
            let words = size(words_of(&text[range.clone()]).count());
            (words > LONG_SENTENCE).then_some((range, words))
        }));
    }
    CountedText { counts, long_words, long_sentences }
}

/// Counts all but the sentences.
fn count_words(text: &str) -> (TextCounts, Vec<(String, usize, u32)>) {
    let (mut counts, mut long_words) = (TextCounts::default(), Vec::new());
    for word in words_of(text) {
        let syllables = count_syllables(word.text);
        counts.words += 1;
        counts.syllables += syllables;
        counts.letters += size(word.text.chars().filter(|c| c.is_alphanumeric()).count());
        if syllables >= long::LONG_WORD {
            counts.polysyllables += 1;
            if long::is_spelt_out(word.text) {
                long_words.push((word.text.to_lowercase(), word.start, syllables));
            }
        }
    }
    counts.characters = size(text.chars().filter(|c| !c.is_whitespace()).count());
    (counts, long_words)
}

fn size(count: usize) -> u32 {
    u32::try_from(count).unwrap_or(u32::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_sentence_known_from_the_literature() {
        let report = plan_reading(&["The cat sat on the mat."]);
        let counts = TextCounts {
            sentences: 1,
            words: 6,
            letters: 17,
            characters: 18,
            syllables: 6,
            polysyllables: 0,
        };
        assert_eq!(report.counts, counts);
        assert!((report.scores.unwrap().flesch - 116.145).abs() < 1e-9);
    }

    #[test]
    fn each_text_ends_its_sentence() {
        let report = plan_reading(&["Five hops", "- Bend your knee", "Eyes up", "Go. Stop", "–"]);
        assert_eq!((report.counts.sentences, report.counts.words), (5, 9));
    }

    #[test]
    fn long_words_and_sentences_are_found_at_their_place() {
        let long = "one two three four five six seven eight nine ten eleven";
        let twice = format!("Go! One, {long} and {long}, now");
        let texts = ["“Balancing” area of 27 cm.", &twice, "Areas and area, BALANCING"];
        let report = plan_reading(&texts);
        let words: Vec<_> =
            report.long_words.iter().map(|w| (w.word.as_str(), w.text, w.start, w.count)).collect();
        let found =
            [("balancing", 0, 3, 2), ("area", 0, 16, 2), ("eleven", 1, 58, 2), ("areas", 2, 0, 1)];
        assert_eq!(words, found);
        assert_eq!(report.long_word_count(), 7);
        // 27 (“twen-ty-se-ven”) and cm are read aloud as long words, but no child spells them out.
        assert_eq!(report.counts.polysyllables, 9);
        assert_eq!(report.long_sentences.len(), 1);
        let sentence = &report.long_sentences[0];
        assert_eq!((sentence.text, sentence.words), (1, 25));
        assert!(twice[sentence.range.clone()].starts_with("One, one two"));
    }

    #[test]
    fn nothing_to_read_has_no_score() {
        for texts in [&[][..], &["", " … "]] {
            let report = plan_reading(texts);
            assert_eq!((report.scores, report.reading_age), (None, None));
            assert_eq!(report.counts.words, 0);
        }
    }
}
