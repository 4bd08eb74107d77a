//! What is said of a mark that can’t be read, and what to write instead.

use super::rule::{MarkRule, MarkUnit};
use crate::quantity::Unreadable;

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

fn write(rule: MarkRule) -> String {
    format!("Write {}.", rule.unit.asked())
}

fn write_mark_or_x(rule: MarkRule) -> String {
    format!("Write {}, or x for an attempt without a mark.", rule.unit.asked())
}

pub(super) fn empty(rule: MarkRule) -> Unreadable {
    Unreadable::new("There is no mark here", write_mark_or_x(rule))
}

pub(super) fn no_number(text: &str, rule: MarkRule) -> Unreadable {
    Unreadable::new(format!("“{text}” is not a mark that can be read"), write_mark_or_x(rule))
}

pub(super) fn negative(text: &str, rule: MarkRule) -> Unreadable {
    Unreadable::new(
        format!("“{text}” is less than nothing"),
        format!("Write {}; it can’t be negative.", rule.unit.asked()),
    )
}

pub(super) fn comma(text: &str, with_point: &str) -> Unreadable {
    Unreadable::new(
        format!("“{text}” has a comma in the number"),
        format!("Write the decimal with a point: {with_point}"),
    )
}

pub(super) fn wrong_unit(number: &str, word: &str, rule: MarkRule) -> Unreadable {
    let way_out = match rule.unit {
        MarkUnit::Count | MarkUnit::Points => format!("Write the number alone: {number}"),
        _ => write(rule),
    };
    Unreadable::new(format!("“{word}” is not a unit that fits here"), way_out)
}

pub(super) fn metres_or_centimetres(text: &str) -> Unreadable {
    Unreadable::new(
        format!("“{text}” has two decimals: are these metres or centimetres?"),
        format!("Write the unit: {text} m, for example."),
    )
}

pub(super) fn doubtful_minutes(text: &str) -> Unreadable {
    Unreadable::new(
        format!("“{text}” may be minutes or seconds"),
        "Write minutes and seconds with a colon, 1:30, or seconds with their unit, 90 s.",
    )
}

pub(super) fn no_time_here(text: &str, rule: MarkRule) -> Unreadable {
    Unreadable::new(format!("“{text}” is a time, which does not fit here"), write(rule))
}

pub(super) fn no_clock(text: &str) -> Unreadable {
    Unreadable::new(
        format!("“{text}” can’t be read as minutes and seconds"),
        "Write the minutes, a colon and two digits of seconds: 1:05 or 1:23.4.",
    )
}

pub(super) fn too_many_seconds(text: &str) -> Unreadable {
    Unreadable::new(
        format!("“{text}” has 60 seconds or more after the minutes"),
        "Count full minutes before the colon: 2:15, not 1:75.",
    )
}

pub(super) fn not_whole(text: &str, rule: MarkRule) -> Unreadable {
    Unreadable::new(format!("“{text}” is not whole"), write(rule))
}

pub(super) fn too_large(text: &str, rule: MarkRule) -> Unreadable {
    Unreadable::new(format!("“{text}” is far too large"), write(rule))
}
