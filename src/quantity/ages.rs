//! The ages a session is for, in whole years.

use std::fmt;

use super::form::tidy_with;
use super::{Form, Quantity, Unreadable};

/// A span of ages in whole years, youngest to oldest.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Ages {
    pub youngest: u8,
    pub oldest: u8,
}

impl Ages {
    /// Whether two spans share a year.
    pub fn overlaps(self, other: Self) -> bool {
        self.youngest <= other.oldest && other.youngest <= self.oldest
    }
}

impl Quantity for Ages {
    const ASKED: &'static str = "ages in years, such as 8-11 or 9";

    fn read_quantity(text: &str) -> Result<Self, Unreadable> {
        let (low, high) = text.split_once(['-', '–']).unwrap_or((text, text));
        let year = |digits: &str| {
            digits.trim().parse::<u8>().map_err(|_| {
                Unreadable::new(
                    format!("“{text}” can’t be read as ages"),
                    format!("Write {}, with nothing after the figures.", Self::ASKED),
                )
            })
        };
        let ages = Self { youngest: year(low)?, oldest: year(high)? };
        if ages.youngest > ages.oldest {
            return Err(Unreadable::new(
                format!("“{text}” begins with the older age"),
                format!("Write {}-{}.", ages.oldest, ages.youngest),
            ));
        }
        if ages.youngest < 3 || ages.oldest > 19 {
            return Err(Unreadable::new(
                format!("“{text}” is outside the school years"),
                "Ages run from 3 to 19.",
            ));
        }
        Ok(ages)
    }

    fn form() -> Form {
        let year = "\\+?0*(?:[3-9]|1[0-9])";
        let pattern = format!("^\\s*{year}\\s*(?:[-–]\\s*{year}\\s*)?$");
        let tidy = |text: &str| tidy_with::<Self>(text, |text| Some(tidy_ages(text)));
        let bare = Some((3, 19));
        Form { asked: Self::ASKED, pattern, examples: &["8-11", "9"], bare, tidy }
    }
}

/// “8 – 11” → “8-11”.
fn tidy_ages(text: &str) -> String {
    text.split(['-', '–']).map(str::trim).collect::<Vec<_>>().join("-")
}

impl fmt::Display for Ages {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.youngest == self.oldest {
            write!(f, "{}", self.youngest)
        } else {
            write!(f, "{}–{}", self.youngest, self.oldest)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_and_refuses() {
        assert_eq!(Ages::read_quantity("8-11").unwrap(), Ages { youngest: 8, oldest: 11 });
        assert_eq!(Ages::read_quantity("9").unwrap().to_string(), "9");
        for bad in ["11-8", "eight", "8-11 years", "2-5", "", "8-", "-8"] {
            assert!(Ages::read_quantity(bad).is_err(), "{bad}");
        }
    }
}
