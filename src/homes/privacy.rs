//! What a list of homes must not hold: names, e-mail addresses, birth dates and the like. Such a list is
//! refused before anything else is read of it, whatever the column is called.

use super::headings::plain;

/// Words in a heading that ask for a person, in languages that schools write lists in.
const PERSONAL: [(&str, &str); 24] = [
    ("name", "a name"),
    ("forename", "a name"),
    ("surname", "a name"),
    ("firstname", "a name"),
    ("lastname", "a name"),
    ("pupil", "a name"),
    ("student", "a name"),
    ("child", "a name"),
    ("parent", "a name"),
    ("nom", "a name"),
    ("prenom", "a name"),
    ("nombre", "a name"),
    ("nazwisko", "a name"),
    ("vorname", "a name"),
    ("email", "an e-mail address"),
    ("mail", "an e-mail address"),
    ("phone", "a telephone number"),
    ("telephone", "a telephone number"),
    ("mobile", "a telephone number"),
    ("address", "an address"),
    ("postcode", "an address"),
    ("dob", "a birth date"),
    ("birth", "a birth date"),
    ("birthday", "a birth date"),
];

/// What a heading seems to ask for, if it asks for a person.
pub fn personal_heading(heading: &str) -> Option<&'static str> {
    let plain = plain(heading);
    let is_mail = plain.replace(' ', "").contains("email");
    let mut words = plain.split(' ');
    let named = words.find_map(|word| PERSONAL.iter().find(|(known, _)| *known == word));
    named.map(|(_, what)| *what).or(is_mail.then_some("an e-mail address"))
}

/// What a cell seems to hold, if it is about a person.
pub fn personal_value(cell: &str) -> Option<&'static str> {
    let is_address = |word: &str| {
        word.split_once('@').is_some_and(|(who, at)| !who.is_empty() && at.contains('.'))
    };
    if cell.split_whitespace().any(is_address) {
        return Some("an e-mail address");
    }
    if cell.split_whitespace().any(is_date) {
        return Some("a birth date");
    }
    None
}

/// 2015-03-02, 2/3/2015, 02.03.15
fn is_date(word: &str) -> bool {
    let parts: Vec<&str> = word.split(['-', '/', '.']).collect();
    let is_number = |part: &&str| {
        (1..=4).contains(&part.len()) && part.bytes().all(|byte| byte.is_ascii_digit())
    };
    parts.len() == 3 && parts.iter().all(is_number)
}

/// Whether a code could be no name: up to 16 letters, digits and hyphens, with a digit among them.
pub fn is_code(written: &str) -> bool {
    let is_plain = written.chars().all(|c| c.is_ascii_alphanumeric() || c == '-');
    is_plain && (1..=16).contains(&written.len()) && written.bytes().any(|b| b.is_ascii_digit())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn people_are_seen() {
        for heading in ["Name", "first_name", "E-Mail", "Date of birth", "DOB", "pupil", "Vorname"]
        {
            assert!(personal_heading(heading).is_some(), "{heading}");
        }
        for heading in ["code", "minutes", "floor length", "things", "needs", "reads"] {
            assert!(personal_heading(heading).is_none(), "{heading}");
        }
        for cell in ["a.b@school.org", "2015-03-02", "2/3/15", "born 02.03.2015"] {
            assert!(personal_value(cell).is_some(), "{cell}");
        }
        for cell in ["2.5", "2,5 m", "8 pairs of rolled socks", "en-GB", "carpet"] {
            assert!(personal_value(cell).is_none(), "{cell}");
        }
    }

    #[test]
    fn a_code_has_a_digit_and_no_space() {
        assert!(is_code("H07") && is_code("5b-12"));
        assert!(!is_code("Anna") && !is_code("Anna Smith") && !is_code("") && !is_code("Zoë1"));
    }
}
