//! Where words of British English may be broken: by their parts (im-port-ant), where American English breaks them by
//! their sound (im-por-tant). Liang’s algorithm (F. M. Liang, “Word hy-phen-a-tion by com-put-er”, 1983) over the
//! patterns of D. Wujastyk and G. Toal, which stand in `static/breaks/british.txt` with their conditions.
//!
//! Patterns are looked up in their sorted text as it is: a few thousand words broken in a run would not repay a table
//! made of it.

use std::sync::OnceLock;

const TEXT: &str = include_str!("../../../static/breaks/british.txt");

/// The end of a word, as patterns write it.
const END: u8 = b'.';

/// The lines of the text with a pattern each, sorted by their letters.
fn patterns() -> &'static [&'static [u8]] {
    static LINES: OnceLock<Vec<&'static [u8]>> = OnceLock::new();
    LINES.get_or_init(|| {
        let lines = TEXT.lines().filter(|line| !line.starts_with('%'));
        lines.map(str::as_bytes).collect()
    })
}

/// The places in a word of letters where it may break, in letters from its beginning, with so many letters before and
/// after at least. A word with letters beyond a to z has none.
pub fn find_breaks(word: &str, before: usize, after: usize) -> Vec<usize> {
    if !word.bytes().all(|letter| letter.is_ascii_alphabetic()) {
        return Vec::new();
    }
    let letters = word.bytes().map(|letter| letter.to_ascii_lowercase());
    let letters: Vec<u8> = [END].into_iter().chain(letters).chain([END]).collect();
    let mut levels = vec![0; letters.len() + 1];
    for start in 0..letters.len() {
        raise_levels(&letters[start..], &mut levels[start..]);
    }
    // Before the first letter stands the end mark: the place after n letters is n + 1.
    let last = word.len().saturating_sub(after);
    (before..=last).filter(|place| levels[place + 1] % 2 == 1).collect()
}

/// Lays every pattern that the letters begin with over the levels of the places between them; the higher stays.
fn raise_levels(letters: &[u8], levels: &mut [u8]) {
    let mut range = patterns();
    for (depth, letter) in letters.iter().enumerate() {
        // All patterns left begin with the letters so far: those that end here come first.
        let from = range.partition_point(|pattern| nth_letter(pattern, depth) < Some(*letter));
        let to = range.partition_point(|pattern| nth_letter(pattern, depth) <= Some(*letter));
        range = &range[from..to];
        let Some(first) = range.first() else { return };
        if nth_letter(first, depth + 1).is_none() {
            raise_by(first, levels);
        }
    }
}

/// A letter of a pattern, which is smaller than any other where there is none.
fn nth_letter(pattern: &[u8], index: usize) -> Option<u8> {
    pattern.iter().copied().filter(|byte| !byte.is_ascii_digit()).nth(index)
}

fn raise_by(pattern: &[u8], levels: &mut [u8]) {
    let mut place = 0;
    for byte in pattern {
        if byte.is_ascii_digit() {
            levels[place] = levels[place].max(byte - b'0');
        } else {
            place += 1;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn broken(word: &str) -> String {
        let mut said = word.to_owned();
        for place in find_breaks(word, 2, 3).into_iter().rev() {
            said.insert(place, '-');
        }
        said
    }

    /// From the list of exceptions that stands with the original patterns, and words of the trade (pyphen’s British
    /// dictionary breaks them so too).
    #[test]
    fn words_are_broken_by_their_parts() {
        for word in ["through-out", "some-thing", "how-ever", "im-port-ant", "Shoulders"] {
            assert_eq!(broken(&word.replace('-', "")), word);
        }
        assert_eq!(broken("équilibre"), "équilibre");
        assert_eq!(broken("a"), "a");
    }

    #[test]
    fn patterns_are_sorted_by_their_letters() {
        let letters = |pattern: &&[u8]| -> Vec<u8> {
            pattern.iter().copied().filter(|byte| !byte.is_ascii_digit()).collect()
        };
        let all: Vec<Vec<u8>> = patterns().iter().map(letters).collect();
        assert!(all.len() > 8_000);
        assert!(all.windows(2).all(|pair| pair[0] < pair[1]));
    }
}
