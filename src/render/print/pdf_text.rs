//! The syntax of PDF as bytes (ISO 32000-1, 7.3): numbers, names, references and texts, put one behind
//! the other. What goes into a file thousands of times is written here without making an object of it.

use super::digits::ready;

/// The bytes that can’t stand in a string as they are.
static IS_ESCAPED: [bool; 256] = {
    let mut escaped = [false; 256];
    (escaped[b'(' as usize], escaped[b')' as usize]) = (true, true);
    (escaped[b'\\' as usize], escaped[b'\r' as usize]) = (true, true);
    escaped
};

/// The digits of the largest number, with room for a point.
const LONGEST: usize = 24;

/// Bytes in the syntax of PDF.
#[derive(Debug, Default)]
pub struct PdfText {
    pub bytes: Vec<u8>,
}

/// A number in steps of so many decimals.
pub fn steps_of(number: f32, decimals: u32) -> i64 {
    let steps = f64::from(number) * STEPS[decimals.min(3) as usize];
    #[allow(
        clippy::cast_possible_truncation,
        reason = "a place on a page; `as` cuts what is left of a step and stops at the ends of the type"
    )]
    let whole = (steps + 0.5_f64.copysign(steps)) as i64;
    whole
}

/// By decimals; no number has more than three.
const STEPS: [f64; 4] = [1.0, 10.0, 100.0, 1_000.0];

impl PdfText {
    /// Syntax as it is.
    pub fn put(&mut self, syntax: &str) -> &mut Self {
        self.bytes.extend_from_slice(syntax.as_bytes());
        self
    }

    /// Syntax that was put together before.
    pub fn put_bytes(&mut self, syntax: &[u8]) -> &mut Self {
        self.bytes.extend_from_slice(syntax);
        self
    }

    /// A whole number. What stands before it must end it.
    pub fn integer(&mut self, number: usize) -> &mut Self {
        self.steps(i64::try_from(number).unwrap_or(i64::MAX), 0)
    }

    /// A number rounded to hundredths: of a point, that is less than a printer can place.
    pub fn real(&mut self, number: f32) -> &mut Self {
        self.fixed(number, 2)
    }

    /// A number rounded to so many decimals, three at most, with no more of them than it needs.
    pub fn fixed(&mut self, number: f32, decimals: u32) -> &mut Self {
        self.steps(steps_of(number, decimals), decimals)
    }

    /// The same with a space behind it.
    pub fn spaced(&mut self, number: f32, decimals: u32) -> &mut Self {
        self.spaced_steps(steps_of(number, decimals), decimals)
    }

    /// A number in steps of so many decimals.
    pub fn steps(&mut self, number: i64, decimals: u32) -> &mut Self {
        if !self.put_ready(number, decimals, false) {
            self.put_digits(number, decimals);
        }
        self
    }

    /// The same with a space behind it.
    pub fn spaced_steps(&mut self, number: i64, decimals: u32) -> &mut Self {
        if !self.put_ready(number, decimals, true) {
            self.put_digits(number, decimals);
            self.put(" ");
        }
        self
    }

    /// Puts in most numbers as a piece of eight bytes and cuts it: for a few bytes that is much faster than a copy of
    /// their own length.
    fn put_ready(&mut self, number: i64, decimals: u32, is_spaced: bool) -> bool {
        if decimals != 0 && decimals != 2 {
            return false;
        }
        let Some((piece, length)) = ready(number, decimals == 2, is_spaced) else { return false };
        let end = self.bytes.len() + length;
        self.bytes.extend_from_slice(&piece);
        self.bytes.truncate(end);
        true
    }

    fn put_digits(&mut self, number: i64, decimals: u32) {
        if number < 0 {
            self.bytes.push(b'-');
        }
        let (mut size, mut left) = (number.unsigned_abs(), decimals);
        while left > 0 && size.is_multiple_of(10) {
            (size, left) = (size / 10, left - 1);
        }
        self.number(size, left);
    }

    /// The digits of a number, so many of them behind the point.
    fn number(&mut self, number: u64, decimals: u32) {
        let (mut kept, mut start, mut rest) = ([0_u8; LONGEST], LONGEST, number);
        let mut put = |byte: u8| {
            start -= 1;
            kept[start] = byte;
        };
        let mut next = || {
            let digit = u8::try_from(rest % 10).unwrap_or(0);
            rest /= 10;
            (b'0' + digit, rest > 0)
        };
        for _ in 0..decimals {
            put(next().0);
        }
        if decimals > 0 {
            put(b'.');
        }
        loop {
            let (digit, goes_on) = next();
            put(digit);
            if !goes_on {
                break;
            }
        }
        self.bytes.extend_from_slice(&kept[start..]);
    }

    /// A glyph within a string: a number of two bytes, the higher first.
    pub fn code(&mut self, code: u16) {
        let [high, low] = code.to_be_bytes();
        if IS_ESCAPED[usize::from(high)] || IS_ESCAPED[usize::from(low)] {
            self.byte(high);
            self.byte(low);
        } else {
            self.bytes.extend_from_slice(&[high, low]);
        }
    }

    /// A byte within a string (ISO 32000-1, 7.3.4.2): what would end the string, or be read as another end of
    /// line, is escaped.
    fn byte(&mut self, byte: u8) {
        match byte {
            b'(' | b')' | b'\\' => self.bytes.extend([b'\\', byte]),
            b'\r' => self.bytes.extend(*b"\\r"),
            _ => self.bytes.push(byte),
        }
    }

    /// Leads to an object by its number.
    pub fn reference(&mut self, number: usize) -> &mut Self {
        self.integer(number).put(" 0 R")
    }

    /// One reference after the other, in brackets.
    pub fn references(&mut self, numbers: impl IntoIterator<Item = usize>) -> &mut Self {
        self.put("[");
        for number in numbers {
            self.reference(number).put(" ");
        }
        self.put("]")
    }

    /// Numbers in brackets.
    pub fn reals(&mut self, numbers: &[f32]) -> &mut Self {
        self.put("[");
        for number in numbers {
            self.spaced(*number, 2);
        }
        self.put("]")
    }

    /// A text string: plain where it is ASCII, else UTF-16 with its mark (ISO 32000-1, 7.9.2.2).
    pub fn words(&mut self, words: &str) -> &mut Self {
        if words.is_ascii() {
            return self.literal(words);
        }
        self.bytes.extend_from_slice(b"(\xFE\xFF");
        for unit in words.encode_utf16() {
            self.code(unit);
        }
        self.put(")")
    }

    /// A string of bytes.
    pub fn literal(&mut self, words: &str) -> &mut Self {
        self.put("(");
        for byte in words.bytes() {
            self.byte(byte);
        }
        self.put(")")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn said(write: impl FnOnce(&mut PdfText)) -> String {
        let mut text = PdfText::default();
        write(&mut text);
        String::from_utf8(text.bytes).unwrap()
    }

    #[test]
    fn numbers_have_no_more_decimals_than_they_need() {
        let real = |number| said(|text| _ = text.real(number));
        assert_eq!(
            [0.0, 12.0, 1.5, -0.07, 595.276, -0.001].map(real),
            ["0", "12", "1.5", "-0.07", "595.28", "0"]
        );
        assert_eq!(said(|text| _ = text.fixed(13.225, 3)), "13.225");
        assert_eq!(said(|text| _ = text.integer(1_000_203)), "1000203");
    }

    #[test]
    fn texts_are_escaped_or_utf_16() {
        let words = |words| {
            let mut text = PdfText::default();
            text.words(words);
            text.bytes
        };
        assert_eq!(words("a (b\\"), b"(a \\(b\\\\)");
        // ISO 32000-1, 7.9.2.2: the byte order mark, then big-endian units; a surrogate pair beyond the
        // basic plane.
        assert_eq!(words("é𝄞"), b"(\xFE\xFF\0\xE9\xD8\x34\xDD\x1E)");
    }
}
