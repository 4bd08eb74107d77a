//! A time of the day, written 9:30 or 14:00.

use std::fmt;

use super::{Form, Quantity, Unreadable};

/// A time of the day, in whole minutes from midnight.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct ClockTime {
    minutes: u16,
}

impl ClockTime {
    pub const MIDNIGHT: Self = Self { minutes: 0 };

    /// Hours from 0 to 23.
    pub const fn hour(self) -> u16 {
        self.minutes / 60
    }

    /// Minutes from 0 to 59.
    pub const fn minute(self) -> u16 {
        self.minutes % 60
    }
}

impl Quantity for ClockTime {
    const ASKED: &'static str = "a time of the day, such as 9:30 or 14:00";

    fn read_quantity(text: &str) -> Result<Self, Unreadable> {
        let refuse = || {
            Unreadable::new(
                format!("“{text}” is not a time of the day"),
                format!("Write {}, hours from 0 to 23.", Self::ASKED),
            )
        };
        let (hours, minutes) = text.trim().split_once(':').ok_or_else(refuse)?;
        let is_figures = |text: &str| !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit());
        if !is_figures(hours) || hours.len() > 2 || !is_figures(minutes) || minutes.len() != 2 {
            return Err(refuse());
        }
        let figure = |text: &str| text.parse::<u16>().map_err(|_| refuse());
        match (figure(hours)?, figure(minutes)?) {
            (hours @ 0..=23, minutes @ 0..=59) => Ok(Self { minutes: hours * 60 + minutes }),
            _ => Err(refuse()),
        }
    }

    fn form() -> Form {
        let pattern = "^\\s*([01]?[0-9]|2[0-3]):[0-5][0-9]\\s*$".to_owned();
        let tidy = |text: &str| Self::read_quantity(text).ok().map(|_| text.trim().to_owned());
        Form { asked: Self::ASKED, pattern, examples: &["9:30", "14:00"], bare: None, tidy }
    }
}

/// With two figures for the hours: 09:30.
impl fmt::Display for ClockTime {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:02}:{:02}", self.hour(), self.minute())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_and_refuses() {
        assert_eq!(ClockTime::read_quantity("9:30").unwrap().to_string(), "09:30");
        assert_eq!(ClockTime::read_quantity("23:59").unwrap().hour(), 23);
        for bad in ["24:00", "9.30", "9", "9:5", "half past nine", "9:60", "-1:00", ":30", "009:30"]
        {
            assert!(ClockTime::read_quantity(bad).is_err(), "{bad}");
        }
    }
}
