//! A child’s code, and what is refused because it looks like who the child is.

use crate::quantity::{Date, Quantity};

/// The longest code.
const LONGEST: usize = 24;

/// Reads a code.
///
/// # Errors
/// Why it is refused, and what to write instead.
pub fn read_code(text: &str) -> Result<String, String> {
    let code = text.trim();
    let refused = |why: &str| Err(format!("{why}. Write a code, such as K07."));
    if code.is_empty() {
        return refused("there is no code");
    }
    if code.chars().count() > LONGEST {
        return refused("this is longer than a code is");
    }
    if code.contains('@') {
        return refused("this looks like an e-mail address, which says who a child is");
    }
    if looks_like_name(code) {
        return refused("this looks like a child’s name");
    }
    if looks_like_date(code) {
        return refused("this looks like a date of birth");
    }
    if !code.chars().all(|c| c.is_alphanumeric() || matches!(c, '-' | '_' | '.' | ' ')) {
        return refused("a code has only letters, digits, hyphens and dots");
    }
    Ok(code.to_owned())
}

/// Two or more words, each of letters alone and with a capital: Anna Smith, SMITH, Anna.
fn looks_like_name(code: &str) -> bool {
    let words: Vec<&str> =
        code.split([' ', ',']).filter(|word| !word.is_empty() && *word != ".").collect();
    let is_capitalised = |word: &&str| {
        let letters = word.trim_end_matches('.');
        letters.starts_with(char::is_uppercase)
            && letters.chars().all(|c| c.is_alphabetic() || matches!(c, '\'' | '’' | '-'))
    };
    words.len() > 1 && words.iter().all(is_capitalised)
}

/// 2016-05-14, 14/05/2016, 14.5.16.
fn looks_like_date(code: &str) -> bool {
    if Date::read_quantity(code).is_ok() {
        return true;
    }
    let pieces: Vec<&str> = code.split(['/', '.', '-']).collect();
    let is_figure =
        |piece: &&str| (1..=4).contains(&piece.len()) && piece.chars().all(|c| c.is_ascii_digit());
    pieces.len() == 3 && pieces.iter().all(is_figure)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn codes_are_read_and_children_are_not() {
        for good in ["K07", "otter", "Otter", "fox 7", "4b-12", " x.1 "] {
            assert!(read_code(good).is_ok(), "{good}");
        }
        for (bad, why) in [
            ("Anna Smith", "name"),
            ("SMITH, Anna", "name"),
            ("Anna-Lena O’Brien", "name"),
            ("anna@school.example", "e-mail"),
            ("2016-05-14", "birth"),
            ("14/05/2016", "birth"),
            ("14.5.16", "birth"),
            ("", "no code"),
            ("=K07", "letters"),
        ] {
            assert!(read_code(bad).unwrap_err().contains(why), "{bad}");
        }
    }
}
