//! Slips in YAML that have a look of their own, told by the line that they stand in. In: the text and the place where
//! reading stopped; out: what is wrong and the way out, in a teacher’s words.

use crate::place::Place;

/// The slip at a place, where it is one of those that are known by their look.
pub(super) fn slip_at(text: &str, place: Place) -> Option<(String, String)> {
    let at = (place.start as usize).min(text.len());
    let start = text[..at].rfind('\n').map_or(0, |newline| newline + 1);
    let line = text[start..].lines().next().unwrap_or_default();
    let has_tab = line.bytes().take_while(u8::is_ascii_whitespace).any(|letter| letter == b'\t');
    if has_tab {
        // That is told of by itself.
        return None;
    }
    tight_colon(line)
        .or_else(|| odd_beginning(line))
        .or_else(|| text_after_bracket(line))
        .or_else(|| odd_quotation(line))
        .or_else(|| left_of_its_text(line))
        .or_else(|| out_of_line(&text[..start], line))
}

fn told(says: impl Into<String>, way_out: impl Into<String>) -> (String, String) {
    (says.into(), way_out.into())
}

/// The key of a line and what is written for it.
fn key_and_value(line: &str) -> Option<(&str, &str)> {
    let line = line.trim_start();
    let (key, value) = line.strip_prefix("- ").unwrap_or(line).split_once(": ")?;
    is_key(key).then_some((key, value.trim()))
}

fn is_key(key: &str) -> bool {
    !key.is_empty() && key.bytes().all(|letter| letter.is_ascii_lowercase() || letter == b'_')
}

/// `summary:Walk along the line`
fn tight_colon(line: &str) -> Option<(String, String)> {
    let line = line.trim();
    let (key, value) = line.strip_prefix("- ").unwrap_or(line).split_once(':')?;
    let first = value.chars().next()?;
    if !is_key(key) || first.is_whitespace() || matches!(first, '/' | ':') {
        return None;
    }
    Some(told(
        format!("A space is missing after the colon of “{key}”."),
        format!("Write “{key}: ”, and then the text."),
    ))
}

/// `summary: @home`
fn odd_beginning(line: &str) -> Option<(String, String)> {
    let (_, value) = key_and_value(line)?;
    let first = value.chars().next().filter(|first| matches!(first, '@' | '`' | '%'))?;
    Some(told(
        format!("A text can’t begin with “{first}” here."),
        "Put the text in quotation marks, or begin it with another word.",
    ))
}

/// `summary: [New] walk along the line`
fn text_after_bracket(line: &str) -> Option<(String, String)> {
    let (_, value) = key_and_value(line)?;
    let (open, close) =
        [('[', ']'), ('{', '}')].into_iter().find(|(open, _)| value.starts_with(*open))?;
    let after = value[value.rfind(close)? + 1..].trim_start();
    if after.is_empty() || after.starts_with(['#', ',']) {
        return None;
    }
    Some(told(
        format!(
            "What begins with {open} is read as a list or a group, and here a text goes on after the {close}."
        ),
        "Put the whole text in quotation marks.",
    ))
}

/// `title: "Brook leap”` and `how: 'Don't stop'`
fn odd_quotation(line: &str) -> Option<(String, String)> {
    let (_, value) = key_and_value(line)?;
    let inside = value.get(1..).unwrap_or_default();
    if value.starts_with('"') && !inside.contains('"') && inside.contains(['”', '“', '„']) {
        return Some(told(
            "A straight quotation mark is opened here, and a curly one, as word processors write it, does not close it.",
            "Close the text with the straight mark that it begins with: \".",
        ));
    }
    let is_letter = |letter: Option<char>| letter.is_some_and(char::is_alphabetic);
    let has_apostrophe = inside.match_indices('\'').any(|(at, _)| {
        is_letter(inside[..at].chars().next_back()) && is_letter(inside[at + 1..].chars().next())
    });
    if value.starts_with('\'') && has_apostrophe {
        return Some(told(
            "The apostrophe ends the text here, since the text begins with the same mark.",
            "Write the apostrophe as ’, or put the text between \" and \".",
        ));
    }
    None
}

/// A line of text that stands no further in than its key.
fn left_of_its_text(line: &str) -> Option<(String, String)> {
    let text = line.trim();
    let is_text = text.chars().next().is_some_and(char::is_alphabetic)
        && text.contains(' ')
        && !text.contains(": ")
        && !text.ends_with(':');
    is_text.then_some(())?;
    Some(told(
        "This line of text belongs to no key.",
        "Move it in, two spaces further than the key that it belongs to.",
    ))
}

/// A key that begins neither where the one above does nor where one may.
fn out_of_line(before: &str, line: &str) -> Option<(String, String)> {
    let indent = |line: &str| line.len() - line.trim_start_matches(' ').len();
    let is_written = |line: &&str| !line.trim().is_empty() && !line.trim_start().starts_with('#');
    let above = before.lines().rfind(is_written)?;
    key_and_value(line).or_else(|| is_key(line.trim().strip_suffix(':')?).then_some(("", "")))?;
    let (own, other) = (indent(line), indent(above));
    if own == other || above.trim_end().ends_with([':', '|', '>']) {
        return None;
    }
    Some(told(
        format!(
            "This line begins in column {}, and the one above in column {}.",
            own + 1,
            other + 1
        ),
        "Start keys of the same group in the same column, and move what belongs to a key two spaces in.",
    ))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::place::FileId;

    #[test]
    fn slips_are_known_by_their_look() {
        let cases = [
            ("title: a\nsummary:Walk on", 9, "A space is missing"),
            ("title: @home", 7, "can’t begin with “@”"),
            ("title: [New] walk", 13, "a text goes on after the ]"),
            ("title: \"Brook leap”", 7, "a curly one"),
            ("how: 'Don't stop'", 9, "apostrophe ends the text"),
            ("how: |\n  One.\nTwo go on\n", 14, "belongs to no key"),
            ("warm_up:\n title: a\n  time: 3 min", 20, "column 3, and the one above in column 2"),
        ];
        for (text, start, wanted) in cases {
            let place = Place { file: FileId(0), start, end: start };
            let (says, _) = slip_at(text, place).unwrap_or_default();
            assert!(says.contains(wanted), "{text}: {says}");
        }
        for sound in ["title: a", "where: [indoors] # both", "title: \"a\"", "- need: marker"] {
            let place = Place { file: FileId(0), start: 0, end: 0 };
            assert_eq!(slip_at(sound, place), None, "{sound}");
        }
    }
}
