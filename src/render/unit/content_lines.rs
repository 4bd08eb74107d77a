//! Content lines of iCalendar (RFC 5545, 3.1): names, escaped text, lines folded at 75 octets.

/// No line is longer, its end left out (RFC 5545, 3.1).
const LONGEST: usize = 75;

/// Content lines, each folded and ended as the format asks.
#[derive(Debug, Default)]
pub struct ContentLines {
    text: String,
}

impl ContentLines {
    /// Adds a line whose value is no text: a date, a number, a name of a component.
    pub fn add(&mut self, name: &str, value: &str) {
        self.fold(&format!("{name}:{value}"));
    }

    /// Adds a line whose value is text.
    pub fn add_text(&mut self, name: &str, text: &str) {
        self.fold(&format!("{name}:{}", escape(text)));
    }

    /// A letter is never cut in two, though the format would allow it: some readers unfold letters, not octets.
    fn fold(&mut self, line: &str) {
        let mut room = LONGEST;
        for letter in line.chars() {
            if letter.len_utf8() > room {
                self.text.push_str("\r\n ");
                room = LONGEST - 1;
            }
            self.text.push(letter);
            room -= letter.len_utf8();
        }
        self.text.push_str("\r\n");
    }

    pub fn into_bytes(self) -> Vec<u8> {
        self.text.into_bytes()
    }
}

/// Backslash, semicolon, comma and line break have a meaning of their own (RFC 5545, 3.3.11); other control
/// characters are not allowed at all.
fn escape(text: &str) -> String {
    let mut escaped = String::with_capacity(text.len());
    for letter in text.replace("\r\n", "\n").chars() {
        match letter {
            '\\' | ';' | ',' => escaped.extend(['\\', letter]),
            '\n' => escaped.push_str("\\n"),
            letter if letter.is_control() => {}
            letter => escaped.push(letter),
        }
    }
    escaped
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_are_folded_and_escaped() {
        let mut lines = ContentLines::default();
        lines.add_text("SUMMARY", &format!("a;b,c\\d\ne{}", "é".repeat(60)));
        let text = String::from_utf8(lines.into_bytes()).unwrap();
        assert!(text.starts_with("SUMMARY:a\\;b\\,c\\\\d\\ne"));
        assert!(text.split("\r\n").all(|line| line.len() <= 75));
        assert_eq!(text.replace("\r\n ", "").matches('é').count(), 60);
    }
}
