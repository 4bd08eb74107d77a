//! How long something takes, in whole seconds.

use std::fmt;
use std::iter::Sum;
use std::ops::{Add, Mul};

use super::amount::{Unit, read_amount, tidy_amount};
use super::form::{NUMBER, tidy_with};
use super::{Form, Quantity, Unreadable};

/// A length of time in whole seconds.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Duration {
    seconds: u32,
}

const UNITS: &[Unit] = &[
    Unit { word: "s", steps: 1, also: &["sec", "secs", "second", "seconds"] },
    Unit { word: "min", steps: 60, also: &["m", "mins", "minute", "minutes"] },
    Unit { word: "h", steps: 3600, also: &["hr", "hrs", "hour", "hours"] },
];

/// A session is part of a day; anything longer is a slip.
const LONGEST: u64 = 24 * 3600;

impl Duration {
    pub const ZERO: Self = Self { seconds: 0 };

    pub const fn from_seconds(seconds: u32) -> Self {
        Self { seconds }
    }

    pub const fn from_minutes(minutes: u32) -> Self {
        Self { seconds: minutes * 60 }
    }

    pub const fn seconds(self) -> u32 {
        self.seconds
    }

    pub const fn is_zero(self) -> bool {
        self.seconds == 0
    }

    /// The difference, whichever is longer.
    #[must_use]
    pub const fn apart(self, other: Self) -> Self {
        Self { seconds: self.seconds.abs_diff(other.seconds) }
    }

    /// The clock form "4:30", for time lines.
    pub fn clock(self) -> String {
        format!("{}:{:02}", self.seconds / 60, self.seconds % 60)
    }
}

impl Quantity for Duration {
    const ASKED: &'static str = "a time, such as 30 s, 3 min or 1 min 30 s";

    fn read_quantity(text: &str) -> Result<Self, Unreadable> {
        let mut total = 0;
        let mut last_steps = u64::MAX;
        for piece in pieces(text) {
            let steps = read_amount(piece, UNITS, Self::ASKED)?;
            let word = piece.trim_start_matches(|c: char| !c.is_alphabetic()).trim();
            let size = UNITS.iter().find(|unit| unit.word == word).map_or(0, |unit| unit.steps);
            if size >= last_steps {
                return Err(Unreadable::new(
                    format!("“{text}” names a larger or equal unit after a smaller one"),
                    "Write hours, then minutes, then seconds, each once: 1 min 30 s.",
                ));
            }
            last_steps = size;
            total += steps;
        }
        if total > LONGEST {
            return Err(Unreadable::new(
                format!("“{text}” is longer than a day"),
                "A time here is part of one session: 3 min, for example.",
            ));
        }
        Ok(Self { seconds: u32::try_from(total).unwrap_or(0) })
    }

    fn form() -> Form {
        let unit = |word: &str| format!("(?:{NUMBER}\\s*{word}\\s*)?");
        let pattern = format!("^\\s*(?=[0-9+]){}{}{}$", unit("h"), unit("min"), unit("s"));
        let tidy = |text: &str| tidy_with::<Self>(text, tidy_pieces);
        let examples = &["30 s", "3 min", "1 min 30 s"];
        Form { asked: Self::ASKED, pattern, examples, bare: None, tidy }
    }
}

fn tidy_pieces(text: &str) -> Option<String> {
    let tidied: Option<Vec<String>> =
        pieces(text).into_iter().map(|piece| tidy_amount(piece, UNITS)).collect();
    tidied.map(|pieces| pieces.join(" "))
}

/// Splits "1 min 30 s" before each number that follows a unit.
fn pieces(text: &str) -> Vec<&str> {
    let text = text.trim();
    let mut cuts = vec![0];
    let mut after_letter = false;
    for (at, c) in text.char_indices() {
        if c.is_ascii_digit() && after_letter {
            cuts.push(at);
            after_letter = false;
        } else if c.is_alphabetic() {
            after_letter = true;
        }
    }
    cuts.push(text.len());
    cuts.windows(2).map(|pair| text[pair[0]..pair[1]].trim()).collect()
}

impl fmt::Display for Duration {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match (self.seconds / 60, self.seconds % 60) {
            (0, seconds) => write!(f, "{seconds} s"),
            (minutes, 0) => write!(f, "{minutes} min"),
            (minutes, seconds) => write!(f, "{minutes} min {seconds} s"),
        }
    }
}

impl Add for Duration {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self { seconds: self.seconds.saturating_add(other.seconds) }
    }
}

impl Mul<u32> for Duration {
    type Output = Self;
    fn mul(self, times: u32) -> Self {
        Self { seconds: self.seconds.saturating_mul(times) }
    }
}

impl Sum for Duration {
    fn sum<I: Iterator<Item = Self>>(durations: I) -> Self {
        durations.fold(Self::ZERO, Add::add)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Result<u32, String> {
        Duration::read_quantity(text).map(Duration::seconds).map_err(|fault| fault.way_out)
    }

    #[test]
    fn reads_the_short_forms() {
        assert_eq!(read("30 s"), Ok(30));
        assert_eq!(read("3 min"), Ok(180));
        assert_eq!(read("1 min 30 s"), Ok(90));
        assert_eq!(read("1.5 min"), Ok(90));
        assert_eq!(read("1 h"), Ok(3600));
        assert_eq!(read("90s"), Ok(90));
    }

    #[test]
    fn says_what_to_write_instead() {
        assert_eq!(read("5 mins"), Err("Write 5 min.".into()));
        assert!(read("1,5 min").unwrap_err().contains("1.5 min"));
        assert!(read("30").unwrap_err().contains("Add one"));
        for bad in ["-3 min", "", "min", "30 s 1 min", "3 m", "1..5 min", "99999999999 s", "30 h"] {
            assert!(read(bad).is_err(), "{bad} must not be read as a time");
        }
    }

    #[test]
    fn writes_what_it_reads() {
        for text in ["30 s", "3 min", "1 min 30 s", "61 min"] {
            assert_eq!(Duration::read_quantity(text).unwrap().to_string(), text);
        }
    }
}
