//! A child’s code, and what is refused because it looks like who the child is. The lines are data, so that
//! the page on which a family enters its code refuses the same.

use std::sync::LazyLock;

use regex::Regex;

/// A pattern and the key of what is wrong where it fits. The first that fits decides; where none does,
/// it is a code.
pub type CodeLine = (&'static str, &'static str);

/// Names have two or more words of letters alone, in any script: Anna Smith, SMITH, Anna. A date of birth
/// has three figures: 14/05/2016, 2016-05-14. Telephone numbers begin with a nought or a plus.
pub const CODE_LINES: [CodeLine; 7] = [
    ("^$", "none"),
    ("@", "mail"),
    ("^[0-9]{1,4}[./-][0-9]{1,4}[./-][0-9]{1,4}$", "birth"),
    ("^[+0][0-9 ()./-]{6,}$", "phone"),
    (r"^[\p{L}\p{M}'’.-]+(?:[ ,]+[\p{L}\p{M}'’.-]+)+[ ,]*$", "name"),
    (r"[^\p{L}\p{M}\p{N} ._-]", "signs"),
    ("^[^\n]{25,}$", "long"),
];

/// What must not stand in a child’s own words: e-mail addresses and telephone numbers.
pub const PERSONAL_WORDS: &str = "[^ @]@[^ @]+[.][^ @]|(?:^|[^0-9])[+0][0-9 ()./-]{8,}";

static LINES: LazyLock<Vec<(Regex, &str)>> =
    LazyLock::new(|| CODE_LINES.into_iter().map(|(pattern, key)| (ready(pattern), key)).collect());

static PERSONAL: LazyLock<Regex> = LazyLock::new(|| ready(PERSONAL_WORDS));

fn ready(pattern: &str) -> Regex {
    Regex::new(pattern).expect("our own patterns are sound")
}

/// The key of what is wrong with a code; `None` where it is one.
pub fn judge_code(code: &str) -> Option<&'static str> {
    LINES.iter().find(|(pattern, _)| pattern.is_match(code)).map(|(_, key)| *key)
}

/// Whether words hold an e-mail address or a telephone number.
pub fn is_personal(words: &str) -> bool {
    PERSONAL.is_match(words)
}

/// Reads a code.
///
/// # Errors
/// Why it is refused, and what to write instead.
pub fn read_code(text: &str) -> Result<String, String> {
    let code = text.trim();
    let why = match judge_code(code) {
        None => return Ok(code.to_owned()),
        Some("none") => "there is no code",
        Some("long") => "this is longer than a code is",
        Some("mail") => "this looks like an e-mail address, which says who a child is",
        Some("phone") => "this looks like a telephone number, which says who a child is",
        Some("name") => "this looks like a child’s name",
        Some("birth") => "this looks like a date of birth",
        Some(_) => "a code has only letters, digits, hyphens and dots",
    };
    Err(format!("{why}. Write a code, such as K07."))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn codes_are_read_and_children_are_not() {
        for good in ["K07", "otter", "Otter", "fox 7", "4b-12", " x.1 ", "ثعلب7"] {
            assert!(read_code(good).is_ok(), "{good}");
        }
        for (bad, why) in [
            ("Anna Smith", "name"),
            ("anna smith", "name"),
            ("SMITH, Anna", "name"),
            ("Anna-Lena O’Brien", "name"),
            ("ليلى حسن", "name"),
            ("anna@school.example", "e-mail"),
            ("2016-05-14", "birth"),
            ("14/05/2016", "birth"),
            ("14.5.16", "birth"),
            ("+44 7700 900123", "telephone"),
            ("07700900123", "telephone"),
            ("", "no code"),
            ("=K07", "letters"),
            ("abcdefghijklmnopqrstuvwxyz", "longer"),
        ] {
            assert!(read_code(bad).unwrap_err().contains(why), "{bad}");
        }
        assert!(is_personal("ask me: a.b@c.example") && is_personal("call 07700 900123"));
        assert!(!is_personal("at 120 cm, 3-2-1 go") && !is_personal("0.5 m more"));
    }
}
