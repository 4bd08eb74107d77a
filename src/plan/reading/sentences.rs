//! A paragraph → its sentences, as stretches of bytes.
//!
//! A sentence ends at “.”, “!”, “?” or “…”, with any closing quotation marks and brackets, where a space
//! follows and what comes next does not begin with a small letter: “Stop!” she called is one sentence.
//! The end of a paragraph ends it too. Points inside figures and after abbreviations end nothing.
//! A single letter does (“Run to B. Then turn.”) unless two stand in a row, as in a name (J. K. Brown).

use std::ops::Range;

use super::words::words_of;

/// After these a sentence goes on, whatever follows.
const GOES_ON: [&str; 13] =
    ["e.g", "eg", "i.e", "ie", "mr", "mrs", "ms", "dr", "prof", "vs", "cf", "approx", "viz"];

/// After these it goes on where a figure follows: “no. 3”, “max. 10 throws”.
const BEFORE_FIGURES: [&str; 10] =
    ["no", "nos", "p", "pp", "fig", "figs", "min", "max", "ch", "vol"];

/// The sentences of one paragraph, each with at least one word, without the space around them.
pub fn sentences_of(text: &str) -> Vec<Range<usize>> {
    let (mut sentences, mut start) = (Vec::new(), 0);
    for end in stops_of(text).chain([text.len()]) {
        let is_numbering = end < text.len() && is_number_alone(&text[start..end]);
        if words_of(&text[start..end]).next().is_some() && !is_numbering {
            sentences.push(trimmed(text, start..end));
            start = end;
        }
    }
    sentences
}

/// Where a sentence ends, behind its marks.
fn stops_of(text: &str) -> impl Iterator<Item = usize> {
    text.match_indices(['.', '!', '?', '…']).filter_map(|(at, mark)| {
        let rest = text[at..].trim_start_matches(['.', '!', '?', '…']);
        let rest = rest.trim_start_matches(['"', '\'', '”', '’', '»', ')', ']']);
        let follows = rest.trim_start();
        let is_end = follows.is_empty() || (follows.len() < rest.len() && begins_anew(follows));
        let is_stop = is_end && !(mark == "." && is_abbreviated(&text[..at], follows));
        is_stop.then_some(text.len() - rest.len())
    })
}

/// Whether what follows can be a new sentence: its first letter or figure is not a small letter.
fn begins_anew(follows: &str) -> bool {
    follows.chars().find(|c| c.is_alphanumeric()).is_none_or(|first| !first.is_lowercase())
}

/// Whether a point belongs to the word before it.
fn is_abbreviated(before: &str, follows: &str) -> bool {
    let mut tokens = before.rsplit(char::is_whitespace);
    let opening = |c: char| !c.is_alphanumeric();
    let word = tokens.next().unwrap_or_default().trim_start_matches(opening);
    let one_before = tokens.next().unwrap_or_default();
    let next = follows.split_whitespace().next().unwrap_or_default();
    let is_initial = is_one_letter(word)
        && [one_before, next]
            .iter()
            .any(|other| other.strip_suffix('.').is_some_and(is_one_letter));
    let is_any_of = |listed: &[&str]| listed.iter().any(|short| short.eq_ignore_ascii_case(word));
    let takes_figure = || follows.starts_with(|c: char| c.is_ascii_digit());
    is_initial || is_any_of(&GOES_ON) || (takes_figure() && is_any_of(&BEFORE_FIGURES))
}

fn is_one_letter(word: &str) -> bool {
    let mut letters = word.chars();
    letters.next().is_some_and(char::is_uppercase) && letters.next().is_none()
}

/// “3.” before what it numbers.
fn is_number_alone(text: &str) -> bool {
    let number = text.trim().strip_suffix('.').unwrap_or_default();
    !number.is_empty() && number.len() < 3 && number.bytes().all(|b| b.is_ascii_digit())
}

fn trimmed(text: &str, range: Range<usize>) -> Range<usize> {
    let inner = &text[range.clone()];
    let start = range.start + inner.len() - inner.trim_start().len();
    start..start + inner.trim().len()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn split(text: &str) -> Vec<&str> {
        sentences_of(text).into_iter().map(|range| &text[range]).collect()
    }

    #[test]
    fn figures_and_abbreviations_do_not_end_a_sentence() {
        for whole in [
            "Stand 1.5 m apart.",
            "Use something soft, e.g. Rolled socks, i.e. two of them.",
            "Mr. Brown and J. K. Brown jump max. 3 times, see no. 4.",
            "Rest for 2 min. and go on",
            "1. Jump and land",
            "Wait... and then go",
            "“Stop!” she called.",
            "Why? because it helps.",
        ] {
            assert_eq!(split(whole), [whole]);
        }
    }

    #[test]
    fn marks_quotes_and_capitals_end_one() {
        let text =
            " Run to B. Then say “Go!” (Twice.) Rest 2 min. Jump… Ready?! 3 points for a hop ";
        let sentences =
            ["Run to B.", "Then say “Go!”", "(Twice.)", "Rest 2 min.", "Jump…", "Ready?!"];
        assert_eq!(split(text), [&sentences[..], &["3 points for a hop"]].concat());
        assert_eq!(split("Say yes or no. Then go."), ["Say yes or no.", "Then go."]);
    }

    #[test]
    fn marks_without_words_are_no_sentence() {
        assert_eq!(split("… ! –"), [""; 0]);
        assert_eq!(split(""), [""; 0]);
        assert_eq!(split("? Yes."), ["? Yes."]);
    }
}
