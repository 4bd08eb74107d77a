//! Why a mark can’t be read; and what is said of it to a teacher, with what to write instead. Families hear
//! of it in their language, by the key.

use serde::Serialize;

use super::rule::{MarkRule, MarkUnit};
use crate::quantity::Unreadable;

/// Why a mark can’t be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Refusal {
    Empty,
    NoNumber,
    Negative,
    Comma,
    WrongUnit,
    MetresOrCentimetres,
    DoubtfulMinutes,
    NoTimeHere,
    NoClock,
    TooManySeconds,
    NotWhole,
    TooLarge,
}

impl Refusal {
    pub const ALL: [Self; 12] = [
        Self::Empty,
        Self::NoNumber,
        Self::Negative,
        Self::Comma,
        Self::WrongUnit,
        Self::MetresOrCentimetres,
        Self::DoubtfulMinutes,
        Self::NoTimeHere,
        Self::NoClock,
        Self::TooManySeconds,
        Self::NotWhole,
        Self::TooLarge,
    ];

    /// The key by which pages know it.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Empty => "empty",
            Self::NoNumber => "no-number",
            Self::Negative => "negative",
            Self::Comma => "comma",
            Self::WrongUnit => "wrong-unit",
            Self::MetresOrCentimetres => "metres-or-centimetres",
            Self::DoubtfulMinutes => "doubtful-minutes",
            Self::NoTimeHere => "no-time-here",
            Self::NoClock => "no-clock",
            Self::TooManySeconds => "too-many-seconds",
            Self::NotWhole => "not-whole",
            Self::TooLarge => "too-large",
        }
    }
}

impl MarkUnit {
    /// What is asked for, in words, with an example.
    const fn asked(self) -> &'static str {
        match self {
            Self::Centimetre => "a distance, such as 145 cm or 1.45 m",
            Self::Metre => "a distance, such as 2.05 m or 205 cm",
            Self::Second => "a time, such as 9.3 s or 1:23.4",
            Self::Minute => "a time, such as 1:23.4",
            Self::Count => "a whole number, such as 12",
            Self::Points => "whole points, such as 12",
        }
    }
}

/// A refusal in words for a teacher.
pub(super) fn word_refusal(why: Refusal, text: &str, rule: MarkRule) -> Unreadable {
    Unreadable::new(says(why, text), way_out(why, text, rule))
}

fn says(why: Refusal, text: &str) -> String {
    match why {
        Refusal::Empty => "There is no mark here".into(),
        Refusal::NoNumber => format!("“{text}” is not a mark that can be read"),
        Refusal::Negative => format!("“{text}” is less than nothing"),
        Refusal::Comma => format!("“{text}” has a comma in the number"),
        Refusal::WrongUnit => format!("“{}” is not a unit that fits here", split_unit(text).1),
        Refusal::MetresOrCentimetres => {
            format!("“{text}” has two decimals: are these metres or centimetres?")
        }
        Refusal::DoubtfulMinutes => format!("“{text}” may be minutes or seconds"),
        Refusal::NoTimeHere => format!("“{text}” is a time, which does not fit here"),
        Refusal::NoClock => format!("“{text}” can’t be read as minutes and seconds"),
        Refusal::TooManySeconds => format!("“{text}” has 60 seconds or more after the minutes"),
        Refusal::NotWhole => format!("“{text}” is not whole"),
        Refusal::TooLarge => format!("“{text}” is far too large"),
    }
}

fn way_out(why: Refusal, text: &str, rule: MarkRule) -> String {
    let asked = rule.unit.asked();
    match why {
        Refusal::Empty | Refusal::NoNumber => {
            format!("Write {asked}, or x for an attempt without a mark.")
        }
        Refusal::Negative => format!("Write {asked}; it can’t be negative."),
        Refusal::Comma => format!("Write the decimal with a point: {}", text.replace(',', ".")),
        Refusal::WrongUnit if matches!(rule.unit, MarkUnit::Count | MarkUnit::Points) => {
            format!("Write the number alone: {}", split_unit(text).0)
        }
        Refusal::MetresOrCentimetres => format!("Write the unit: {text} m, for example."),
        Refusal::DoubtfulMinutes => {
            "Write minutes and seconds with a colon, 1:30, or seconds with their unit, 90 s.".into()
        }
        Refusal::NoClock => {
            "Write the minutes, a colon and two digits of seconds: 1:05 or 1:23.4.".into()
        }
        Refusal::TooManySeconds => "Count full minutes before the colon: 2:15, not 1:75.".into(),
        Refusal::WrongUnit | Refusal::NoTimeHere | Refusal::NotWhole | Refusal::TooLarge => {
            format!("Write {asked}.")
        }
    }
}

/// "2.05 m" → "2.05" and "m".
fn split_unit(text: &str) -> (&str, &str) {
    let split = text.find(|c: char| !(c.is_ascii_digit() || c == '.')).unwrap_or(text.len());
    (&text[..split], text[split..].trim())
}
