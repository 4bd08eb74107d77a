//! A text → its words, each with where it begins. A word has a letter or a figure.
//!
//! Words are parted by spaces, dashes, slashes, signs of multiplication and ellipses. “1.5”, “don’t”,
//! “e.g.” and “warm-up” are one word each; “and/or” and “8–11” are two.

/// One word as it is written, without the punctuation around it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Word<'t> {
    /// In bytes from the beginning of the text.
    pub start: usize,
    pub text: &'t str,
}

/// The words of a text, in its order.
pub fn words_of(text: &str) -> impl Iterator<Item = Word<'_>> {
    let mut at = 0;
    std::iter::from_fn(move || {
        while at < text.len() {
            let token = &text[at..];
            let end = end_of_token(token);
            let start = at;
            at += end.max(token.chars().next().map_or(1, char::len_utf8));
            if let Some(word) = trim_word(&token[..end], start) {
                return Some(word);
            }
        }
        None
    })
}

/// Where the token at the beginning of `text` ends.
fn end_of_token(text: &str) -> usize {
    let parts = |(at, sign): (usize, char)| {
        let doubled = matches!(sign, '-' | '.') && text[at + 1..].starts_with(sign);
        (doubled || parts_words(sign)).then_some(at)
    };
    text.char_indices().find_map(parts).unwrap_or(text.len())
}

fn parts_words(sign: char) -> bool {
    sign.is_whitespace() || matches!(sign, '–' | '—' | '―' | '/' | '×' | '…')
}

fn trim_word(token: &str, start: usize) -> Option<Word<'_>> {
    let first = token.find(char::is_alphanumeric)?;
    let text = token[first..].trim_end_matches(|c: char| !c.is_alphanumeric());
    Some(Word { start: start + first, text })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn listed(text: &str) -> Vec<&str> {
        words_of(text).map(|word| word.text).collect()
    }

    #[test]
    fn words_lose_what_stands_around_them() {
        let text = "“Don’t stop!” – run 1.5 m (well-nigh) and/or 8–11 × 2... Go…now -- yes.";
        let words = ["Don’t", "stop", "run", "1.5", "m", "well-nigh", "and", "or", "8", "11", "2"];
        assert_eq!(listed(text), [&words[..], &["Go", "now", "yes"]].concat());
        assert_eq!(listed(" … – !? "), [""; 0]);
        assert_eq!(listed("...é"), ["é"]);
    }

    #[test]
    fn every_word_stands_where_it_says() {
        let text = "«Élan», e.g. — über–all";
        for word in words_of(text) {
            assert!(text[word.start..].starts_with(word.text), "{word:?}");
        }
        assert_eq!(listed(text), ["Élan", "e.g", "über", "all"]);
    }
}
