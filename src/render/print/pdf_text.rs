//! The syntax of PDF as bytes (ISO 32000-1, 7.3): numbers, names, references and texts, put one behind
//! the other. What goes into a file thousands of times is written here without making an object of it.

/// Bytes in the syntax of PDF.
#[derive(Debug, Default)]
pub struct PdfText {
    pub bytes: Vec<u8>,
}

impl PdfText {
    /// Syntax as it is.
    pub fn put(&mut self, syntax: &str) -> &mut Self {
        self.bytes.extend_from_slice(syntax.as_bytes());
        self
    }

    /// A whole number. What stands before it must end it.
    pub fn integer(&mut self, number: usize) -> &mut Self {
        self.digits(u64::try_from(number).unwrap_or(u64::MAX));
        self
    }

    /// A number rounded to hundredths: of a point, that is less than a printer can place.
    pub fn real(&mut self, number: f32) -> &mut Self {
        self.fixed(number, 2)
    }

    /// A number rounded to so many decimals, with no more of them than it needs.
    pub fn fixed(&mut self, number: f32, decimals: u32) -> &mut Self {
        let steps = 10_u64.pow(decimals);
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_precision_loss,
            reason = "a place on a page; `as` stops at the ends of the type"
        )]
        let rounded = (f64::from(number) * steps as f64).round() as i64;
        if rounded < 0 {
            self.bytes.push(b'-');
        }
        let size = rounded.unsigned_abs();
        self.digits(size / steps);
        let (mut rest, mut step) = (size % steps, steps / 10);
        if rest > 0 {
            self.bytes.push(b'.');
        }
        while rest > 0 {
            self.digits(rest / step);
            rest %= step;
            step /= 10;
        }
        self
    }

    fn digits(&mut self, number: u64) {
        let (mut kept, mut start, mut rest) = ([0_u8; 20], 20, number);
        loop {
            start -= 1;
            kept[start] = b'0' + u8::try_from(rest % 10).unwrap_or(0);
            rest /= 10;
            if rest == 0 {
                break;
            }
        }
        self.bytes.extend_from_slice(&kept[start..]);
    }

    /// A number of four hexadecimal digits, as glyphs are written.
    pub fn code(&mut self, code: u16) {
        const DIGITS: &[u8; 16] = b"0123456789ABCDEF";
        for shift in [12, 8, 4, 0] {
            self.bytes.push(DIGITS[usize::from((code >> shift) & 15)]);
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
            self.real(*number).put(" ");
        }
        self.put("]")
    }

    /// A text string: plain where it is ASCII, else UTF-16 with its mark (ISO 32000-1, 7.9.2.2).
    pub fn words(&mut self, words: &str) -> &mut Self {
        if words.is_ascii() {
            return self.literal(words);
        }
        self.put("<FEFF");
        for unit in words.encode_utf16() {
            self.code(unit);
        }
        self.put(">")
    }

    /// A string of bytes, with what ends it escaped.
    pub fn literal(&mut self, words: &str) -> &mut Self {
        self.bytes.push(b'(');
        for byte in words.bytes() {
            match byte {
                b'(' | b')' | b'\\' => self.bytes.extend([b'\\', byte]),
                b'\r' => self.bytes.extend(*b"\\r"),
                _ => self.bytes.push(byte),
            }
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
        let words = |words| said(|text| _ = text.words(words));
        assert_eq!(words("a (b\\"), "(a \\(b\\\\)");
        // ISO 32000-1, 7.9.2.2: the byte order mark, then big-endian units; a surrogate pair beyond the
        // basic plane.
        assert_eq!(words("é𝄞"), "<FEFF00E9D834DD1E>");
    }
}
