//! A child’s own words, as they came: bounded, and without signs that would turn other text about.

/// The longest answer that is kept, in letters. The page lets a family write as many.
pub const LONGEST: usize = 300;

/// Takes out control signs, marks of direction and doubled spaces, and cuts what is too long.
pub fn clean_words(text: &str) -> String {
    let calm = text.chars().map(|c| if c.is_control() || c.is_whitespace() { ' ' } else { c });
    let calm: String = calm.filter(|c| !is_unseen(*c)).collect();
    let calm = calm.split_whitespace().collect::<Vec<_>>().join(" ");
    if calm.chars().count() <= LONGEST {
        return calm;
    }
    calm.chars().take(LONGEST - 1).chain(['…']).collect()
}

/// Marks that embed, override or isolate a direction (Unicode Standard Annex 9) or join nothing.
const fn is_unseen(letter: char) -> bool {
    matches!(letter, '\u{200b}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_are_bounded_and_plain() {
        assert_eq!(clean_words(" a\u{202e}b\n\n c\u{0} "), "ab c");
        let long = clean_words(&"é".repeat(1000));
        assert_eq!((long.chars().count(), long.ends_with('…')), (LONGEST, true));
    }
}
