//! Numbers of a page as bytes that are ready: a page has thousands of places, nearly all under a thousand points and
//! in hundredths, and finding their digits one by one is a third of writing it.

/// Up to three bytes, the first lowest, and how many bits they are.
#[derive(Clone, Copy, Debug)]
struct Ready {
    bytes: u32,
    bits: u32,
}

impl Ready {
    const NONE: Self = Self { bytes: 0, bits: 0 };

    #[allow(clippy::cast_possible_truncation, reason = "a digit; `try_from` is not for constants")]
    const fn and_digit(self, digit: usize) -> Self {
        self.and(b'0' + digit as u8)
    }

    const fn and(self, byte: u8) -> Self {
        Self { bytes: self.bytes | (byte as u32) << self.bits, bits: self.bits + 8 }
    }
}

/// The numbers from 0 to 999.
static WHOLE: [Ready; 1_000] = {
    let mut whole = [Ready::NONE; 1_000];
    let mut number = 0;
    while number < whole.len() {
        let mut digits = Ready::NONE;
        if number >= 100 {
            digits = digits.and_digit(number / 100);
        }
        if number >= 10 {
            digits = digits.and_digit(number / 10 % 10);
        }
        whole[number] = digits.and_digit(number % 10);
        number += 1;
    }
    whole
};

/// The hundredths with the point before them, no more of it than is needed.
static PARTS: [Ready; 100] = {
    let mut parts = [Ready::NONE; 100];
    let mut number = 1;
    while number < parts.len() {
        parts[number] = Ready::NONE.and(b'.').and_digit(number / 10);
        if !number.is_multiple_of(10) {
            parts[number] = parts[number].and_digit(number % 10);
        }
        number += 1;
    }
    parts
};

/// A number of so many hundredths, or of so many wholes, as eight bytes of which the first so many count, with a space
/// behind it if one is wanted. `None` where it is a thousand or more.
pub fn ready(number: i64, is_hundredths: bool, is_spaced: bool) -> Option<([u8; 8], usize)> {
    let size = usize::try_from(number.unsigned_abs()).ok()?;
    let (whole, part) = if is_hundredths { (size / 100, size % 100) } else { (size, 0) };
    let (whole, part) = (WHOLE.get(whole)?, PARTS[part]);
    let (mut bytes, mut bits) = if number < 0 { (u64::from(b'-'), 8) } else { (0, 0) };
    for next in [*whole, part] {
        bytes |= u64::from(next.bytes) << bits;
        bits += next.bits;
    }
    if is_spaced {
        bytes |= u64::from(b' ') << bits;
        bits += 8;
    }
    Some((bytes.to_le_bytes(), usize::try_from(bits / 8).unwrap_or(0)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_number_has_its_digits() {
        let said = |number, is_hundredths, is_spaced| {
            let (bytes, length) = ready(number, is_hundredths, is_spaced)?;
            String::from_utf8(bytes[..length].to_vec()).ok()
        };
        for number in -99_999..=99_999_i64 {
            #[allow(clippy::cast_precision_loss, reason = "small")]
            let expected = format!("{} ", number as f64 / 100.0);
            assert_eq!(said(number, true, true).unwrap(), expected);
        }
        for number in -999..=999_i64 {
            assert_eq!(said(number, false, false).unwrap(), number.to_string());
        }
        assert_eq!((said(1_000, false, true), said(-100_000, true, false)), (None, None));
    }
}
