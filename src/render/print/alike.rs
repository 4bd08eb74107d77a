//! When two texts are alike: as words of a session are compared with those that stand on a sheet.

use super::breaks::{FROM_LEFT, FROM_RIGHT, SOFT_HYPHEN};

/// A shorter text is a passage only where it stands between other words there, not inside one.
const SHORT: usize = 12;

/// A text as it is compared: spaces alike, without hyphens of lines and the marks of Arabic, which fonts place in an
/// order of their own.
pub fn fold(text: &str) -> String {
    let kept: String = text.chars().filter_map(fold_letter).collect();
    kept.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// A letter without its marks, also where Unicode has both as one (its canonical decompositions).
const fn fold_letter(letter: char) -> Option<char> {
    match letter {
        SOFT_HYPHEN
        | FROM_LEFT
        | FROM_RIGHT
        | '\u{64b}'..='\u{65f}'
        | '\u{670}'
        | '\u{6d6}'..='\u{6ed}' => None,
        'آ' | 'أ' | 'إ' => Some('ا'),
        'ؤ' => Some('و'),
        'ئ' => Some('ي'),
        'ۂ' => Some('ہ'),
        'ۓ' => Some('ے'),
        _ => Some(letter),
    }
}

/// Whether a text is among what is said.
pub fn holds(said: &str, text: &str) -> bool {
    if text.len() >= SHORT {
        return said.contains(text);
    }
    let mut places = said.match_indices(text).map(|(at, _)| at);
    !text.is_empty() && places.any(|at| stands_alone(said, at, at + text.len()))
}

/// Whether what stands in a text from one place to another is no piece of a word.
pub fn stands_alone(text: &str, from: usize, to: usize) -> bool {
    let before = text[..from].chars().next_back();
    let after = text[to..].chars().next();
    [before, after].into_iter().flatten().all(|c| !c.is_alphanumeric())
}
