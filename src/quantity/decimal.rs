//! A plain number with decimals, in whole millionths, as a formula’s constant is written.

use std::fmt;

use super::{Form, Quantity, Unreadable};

/// A number from 0 in whole millionths.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Decimal {
    millionths: u64,
}

impl Decimal {
    pub const fn from_tenths(tenths: u32) -> Self {
        Self { millionths: tenths as u64 * 100_000 }
    }

    /// The number for a formula. Below 2⁵³ millionths it is the double nearest to what was written.
    #[allow(clippy::cast_precision_loss, reason = "nine digits and six decimals fit a double")]
    pub fn value(self) -> f64 {
        self.millionths as f64 / 1e6
    }
}

impl Quantity for Decimal {
    const ASKED: &'static str = "a number, such as 4 or 1.05";

    fn read_quantity(text: &str) -> Result<Self, Unreadable> {
        let text = text.trim();
        let (whole, fraction) = text.split_once('.').unwrap_or((text, "0"));
        let is_number = |digits: &str, most: usize| {
            (1..=most).contains(&digits.len()) && digits.bytes().all(|b| b.is_ascii_digit())
        };
        if !is_number(whole, 9) || !is_number(fraction, 6) {
            return Err(Unreadable::new(
                format!("“{text}” can’t be read as a number"),
                format!("Write {}, with a point before decimals.", Self::ASKED),
            ));
        }
        let digits = |text: &str| text.parse::<u64>().unwrap_or(0);
        let fraction = format!("{fraction:0<6}");
        Ok(Self { millionths: digits(whole) * 1_000_000 + digits(&fraction) })
    }

    fn form() -> Form {
        let pattern = "^\\s*[0-9]{1,9}(?:\\.[0-9]{1,6})?\\s*$".to_owned();
        let tidy = |text: &str| Self::read_quantity(text).ok().map(|_| text.trim().to_owned());
        let bare = Some((0, 999_999_999));
        Form { asked: Self::ASKED, pattern, examples: &["4", "1.05"], bare, tidy }
    }
}

impl fmt::Display for Decimal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let text = format!("{}.{:06}", self.millionths / 1_000_000, self.millionths % 1_000_000);
        f.write_str(text.trim_end_matches('0').trim_end_matches('.'))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_and_shows() {
        for text in ["4", "1.05", "0.188807", "25.4347"] {
            assert_eq!(Decimal::read_quantity(text).unwrap().to_string(), text);
        }
        assert!((Decimal::read_quantity("0.14354").unwrap().value() - 0.14354).abs() < 1e-15);
        for bad in ["", "1,5", "-2", "1.", ".5", "1e3", "1.1234567"] {
            assert!(Decimal::read_quantity(bad).is_err(), "{bad}");
        }
    }
}
