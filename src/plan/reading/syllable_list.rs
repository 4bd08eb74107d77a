//! The words that the rules get wrong, each with its syllables.
//!
//! `syllable_words.txt` is made from the CMU Pronouncing Dictionary for the commonest words (its licence
//! stands in the file’s head); British words and words of the trade are our own.

use std::sync::LazyLock;

const LINES: &str = include_str!("syllable_words.txt");

/// A listed word with its first eight letters as one figure, which tells most words apart at once.
type Entry = ((u64, &'static str), u32);

/// In the order of the words, as the file has them.
static LIST: LazyLock<Vec<Entry>> = LazyLock::new(|| {
    LINES.lines().filter_map(read_entry).map(|(word, count)| ((head(word), word), count)).collect()
});

/// The first eight bytes, in an order that is the words’ own.
fn head(word: &str) -> u64 {
    word.bytes()
        .chain(std::iter::repeat(0))
        .take(8)
        .fold(0, |head, byte| head << 8 | u64::from(byte))
}

/// “balance 2”; lines with “#” are remarks.
fn read_entry(line: &'static str) -> Option<(&'static str, u32)> {
    let (word, syllables) = line.split_once(' ')?;
    Some((word, syllables.parse().ok()?)).filter(|_| !line.starts_with('#'))
}

/// Where the words of each first letter begin, by their first byte: few steps are left to look a word up.
static FIRSTS: LazyLock<Vec<usize>> = LazyLock::new(|| {
    let first = |entry: &Entry| usize::from(entry.0.1.as_bytes()[0]);
    (0..=256).map(|byte| LIST.partition_point(|entry| first(entry) < byte)).collect()
});

/// The syllables of a lower-case word, where it is listed.
pub fn listed_syllables(word: &str) -> Option<u32> {
    let first = usize::from(*word.as_bytes().first()?);
    let alike = &LIST[FIRSTS[first]..FIRSTS[first + 1]];
    let at = alike.binary_search_by_key(&(head(word), word), |(listed, _)| *listed).ok()?;
    Some(alike[at].1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_list_is_sorted_and_wholly_read() {
        assert!(LIST.is_sorted_by(|(one, _), (next, _)| one.1 < next.1 && one < next));
        let entries = LINES.lines().filter(|line| !line.starts_with('#')).count();
        assert_eq!(LIST.len(), entries);
        assert!(LIST.iter().all(|(_, syllables)| (1..=8).contains(syllables)));
        assert_eq!(listed_syllables("every"), Some(2));
        assert_eq!(listed_syllables("qqq"), None);
    }
}
