//! Readability by the published formulas, all for English only, and the reading age they stand for.
//!
//! Counts in, scores out. Each formula sees no more than lengths: none knows whether a text makes sense.

use super::counts::TextCounts;

/// From a school grade of the United States to the age of its pupils: grade 1 begins at six, so
/// that its readers are six in round figures. Common practice.
const GRADE_TO_AGE: f64 = 5.0;

/// The reading age of a beginner; what a formula gives below it says nothing.
const YOUNGEST_READER: f64 = 5.0;

/// The scores of a text. All but Flesch’s are school grades of the United States.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scores {
    /// Reading ease: 100 is very easy, 0 very hard; a very easy text can lie above 100.
    pub flesch: f64,
    /// A grade, from the lengths of sentences and of words in syllables.
    pub flesch_kincaid: f64,
    /// A grade, from words of three and more syllables. Made for samples of 30 sentences: an estimate
    /// for shorter texts (see [`TextCounts::suits_smog`]). It is never below 3.1.
    pub smog: f64,
    /// Automated readability index: a grade, from typed characters.
    pub ari: f64,
    /// Coleman–Liau index: a grade, from letters.
    pub coleman_liau: f64,
}

impl Scores {
    /// The scores of counts; none where there is no word or no sentence.
    pub fn of(counts: &TextCounts) -> Option<Self> {
        (counts.words > 0 && counts.sentences > 0).then(|| Self {
            flesch: flesch(counts),
            flesch_kincaid: flesch_kincaid(counts),
            smog: smog(counts),
            ari: ari(counts),
            coleman_liau: coleman_liau(counts),
        })
    }

    /// The age in years at which such a text is read with ease: the Flesch–Kincaid grade and five
    /// (common practice), and never below five.
    pub fn reading_age(&self) -> f64 {
        (self.flesch_kincaid + GRADE_TO_AGE).max(YOUNGEST_READER)
    }
}

/// Flesch 1948, “A new readability yardstick”, Journal of Applied Psychology 32.
fn flesch(counts: &TextCounts) -> f64 {
    206.835 - 1.015 * sentence_length(counts) - 84.6 * syllables_a_word(counts)
}

/// Kincaid, Fishburne, Rogers and Chissom 1975, Research Branch Report 8-75, US Navy.
fn flesch_kincaid(counts: &TextCounts) -> f64 {
    0.39 * sentence_length(counts) + 11.8 * syllables_a_word(counts) - 15.59
}

/// `McLaughlin` 1969, “SMOG grading – a new readability formula”, Journal of Reading 12.
fn smog(counts: &TextCounts) -> f64 {
    let of_thirty = 30.0 * ratio(counts.polysyllables, counts.sentences);
    1.0430 * of_thirty.sqrt() + 3.1291
}

/// Smith and Senter 1967, “Automated readability index”, AMRL-TR-66-220.
fn ari(counts: &TextCounts) -> f64 {
    4.71 * ratio(counts.characters, counts.words) + 0.5 * sentence_length(counts) - 21.43
}

/// Coleman and Liau 1975, “A computer readability formula designed for machine scoring”, Journal of
/// Applied Psychology 60: letters and sentences in a hundred words.
fn coleman_liau(counts: &TextCounts) -> f64 {
    let letters = 100.0 * ratio(counts.letters, counts.words);
    let sentences = 100.0 * ratio(counts.sentences, counts.words);
    0.0588 * letters - 0.296 * sentences - 15.8
}

fn sentence_length(counts: &TextCounts) -> f64 {
    ratio(counts.words, counts.sentences)
}

fn syllables_a_word(counts: &TextCounts) -> f64 {
    ratio(counts.syllables, counts.words)
}

fn ratio(part: u32, of: u32) -> f64 {
    f64::from(part) / f64::from(of)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// “The cat sat on the mat.”, as computed in `textstat`: 116.145 and −1.45.
    const CAT: TextCounts = TextCounts {
        sentences: 1,
        words: 6,
        letters: 17,
        characters: 18,
        syllables: 6,
        polysyllables: 0,
    };

    #[test]
    fn the_formulas_give_the_known_values() {
        let scores = Scores::of(&CAT).unwrap();
        let known = [
            (scores.flesch, 116.145),
            (scores.flesch_kincaid, -1.45),
            (scores.smog, 3.1291),
            (scores.ari, -4.3),
            (scores.coleman_liau, 0.0588 * 1700.0 / 6.0 - 29.6 / 6.0 - 15.8),
        ];
        for (ours, theirs) in known {
            assert!((ours - theirs).abs() < 1e-9, "{ours} {theirs}");
        }
    }

    #[test]
    fn no_words_have_no_scores_and_beginners_are_five() {
        assert_eq!(Scores::of(&TextCounts::default()), None);
        assert!((Scores::of(&CAT).unwrap().reading_age() - 5.0).abs() < 1e-9);
        let harder = TextCounts { syllables: 10, ..CAT };
        let scores = Scores::of(&harder).unwrap();
        assert!((scores.reading_age() - scores.flesch_kincaid - 5.0).abs() < 1e-9);
    }
}
