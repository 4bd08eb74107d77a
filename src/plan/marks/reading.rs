//! Reads a mark as a child, a parent or a teacher writes it.
//!
//! In: "2.05 m", "145", "145.7 cm", "1:23.4", "12" and the event’s rule. Out: a [`Mark`], rounded
//! as the rule says, or what was wrong and what to write instead.

use super::number::{Decimal, read_decimal};
use super::refusal;
use super::rule::{MarkRule, MarkUnit};
use super::{Attempt, Mark};
use crate::quantity::Unreadable;

/// What stands on a sheet for an attempt without a mark: x for a foul or a miss, a dash for one
/// that was passed. Common practice of field events.
const NO_MARK: &[&str] =
    &["x", "✗", "×", "-", "–", "—", "foul", "miss", "no mark", "nm", "no throw", "no jump"];

/// Units as people write them, with their size in millimetres.
const LENGTHS: &[(&str, u32)] = &[
    ("mm", 1),
    ("cm", 10),
    ("centimetre", 10),
    ("centimetres", 10),
    ("m", 1_000),
    ("metre", 1_000),
    ("metres", 1_000),
    ("meter", 1_000),
    ("meters", 1_000),
];

/// The same for times, in thousandths of a second.
const TIMES: &[(&str, u32)] = &[
    ("s", 1_000),
    ("sec", 1_000),
    ("secs", 1_000),
    ("second", 1_000),
    ("seconds", 1_000),
    ("min", MINUTE),
    ("mins", MINUTE),
    ("minute", MINUTE),
    ("minutes", MINUTE),
];

const POINTS: &[(&str, u32)] = &[("point", 1), ("points", 1)];

const MINUTE: u32 = MarkUnit::Minute.size();
const SECOND: u32 = MarkUnit::Second.size();

/// The largest mark, in steps: far beyond any, and every sum of marks stays within 64 bits.
const MOST: u128 = 1_000_000_000;

/// Reads one attempt: a mark, or the sign of a foul, a miss or a pass.
///
/// # Errors
/// As for [`read_mark`].
pub fn read_attempt(text: &str, rule: MarkRule) -> Result<Attempt, Unreadable> {
    let word = text.trim().to_lowercase();
    if NO_MARK.contains(&word.as_str()) {
        return Ok(Attempt::NoMark);
    }
    read_mark(text, rule).map(Attempt::Valid)
}

/// Reads one mark. A number alone has the rule’s own unit.
///
/// # Errors
/// What was wrong and what to write instead.
pub fn read_mark(text: &str, rule: MarkRule) -> Result<Mark, Unreadable> {
    let text = text.trim();
    refuse_at_sight(text, rule)?;
    let lower = text.to_lowercase();
    if let Some((minutes, seconds)) = split_clock(&lower) {
        return read_clock(text, minutes, seconds, rule);
    }
    let (number, word) = split_unit(&lower);
    let decimal = read_decimal(number).ok_or_else(|| refusal::no_number(text, rule))?;
    let size = size_of(text, decimal, number, word, rule)?;
    to_steps(text, decimal, 0, size, rule)
}

/// What many write and no number can be: nothing at all, less than nothing, a decimal comma.
fn refuse_at_sight(text: &str, rule: MarkRule) -> Result<(), Unreadable> {
    let with_point = text.replace(',', ".");
    if text.is_empty() {
        Err(refusal::empty(rule))
    } else if text.starts_with(['-', '−']) {
        Err(refusal::negative(text, rule))
    } else if text.contains(',') && read_decimal(split_unit(&with_point).0).is_some() {
        Err(refusal::comma(text, &with_point))
    } else {
        Ok(())
    }
}

/// "2.05 m" → "2.05" and "m".
fn split_unit(text: &str) -> (&str, &str) {
    let split = text.find(|c: char| !(c.is_ascii_digit() || c == '.')).unwrap_or(text.len());
    (&text[..split], text[split..].trim())
}

/// "1:23.4" and "1 min 23.4 s" → "1" and what follows; `None` where there is one number only.
fn split_clock(text: &str) -> Option<(&str, &str)> {
    if let Some(halves) = text.split_once(':') {
        return Some(halves);
    }
    let (minutes, rest) = split_unit(text);
    let end = rest.find(|c: char| !c.is_alphabetic())?;
    let minute = size_in(TIMES, &rest[..end]) == Some(MINUTE);
    minute.then_some((minutes, &rest[end..]))
}

fn size_in(units: &[(&str, u32)], word: &str) -> Option<u32> {
    units.iter().find(|(known, _)| *known == word).map(|(_, size)| *size)
}

/// The size of the unit that was written, or of the rule’s own.
fn size_of(
    text: &str,
    decimal: Decimal,
    number: &str,
    word: &str,
    rule: MarkRule,
) -> Result<u32, Unreadable> {
    if word.is_empty() {
        return own_size(text, decimal, rule);
    }
    match size_in(rule.unit.words(), word) {
        Some(MINUTE) if decimal.places > 0 => Err(refusal::doubtful_minutes(text)),
        Some(size) => Ok(size),
        None => Err(refusal::wrong_unit(number, word, rule)),
    }
}

/// A number alone, where that leaves no doubt what is meant.
fn own_size(text: &str, decimal: Decimal, rule: MarkRule) -> Result<u32, Unreadable> {
    match rule.unit {
        MarkUnit::Minute => Err(refusal::doubtful_minutes(text)),
        // No tape shows hundredths of a centimetre: these are metres, most likely.
        MarkUnit::Centimetre if decimal.places > 1 => Err(refusal::metres_or_centimetres(text)),
        unit => Ok(unit.size()),
    }
}

/// Minutes and seconds apart. After a colon the seconds have two digits: 1:5 may be 1:05 or 1:50.
fn read_clock(
    text: &str,
    minutes: &str,
    seconds: &str,
    rule: MarkRule,
) -> Result<Mark, Unreadable> {
    if rule.unit.words() != TIMES {
        return Err(refusal::no_time_here(text, rule));
    }
    let colon = text.contains(':');
    let (number, word) = split_unit(seconds.trim());
    let last = size_in(TIMES, word).or(word.is_empty().then_some(SECOND));
    let fits = last == Some(SECOND) || (colon && last == Some(MINUTE));
    let two_digits = number.find('.').unwrap_or(number.len()) == 2;
    let read = read_decimal(minutes.trim()).zip(read_decimal(number));
    match read.filter(|(minutes, _)| minutes.places == 0 && fits && (two_digits || !colon)) {
        None => Err(refusal::no_clock(text)),
        Some((_, rest)) if rest.digits >= 60 * 10_u64.pow(rest.places) => {
            Err(refusal::too_many_seconds(text))
        }
        Some((minutes, rest)) => to_steps(text, rest, minutes.digits, SECOND, rule),
    }
}

/// (digits / 10^places + 60·minutes) units of `size`, in whole steps of the rule.
fn to_steps(
    text: &str,
    decimal: Decimal,
    minutes: u64,
    size: u32,
    rule: MarkRule,
) -> Result<Mark, Unreadable> {
    let scale = 10_u128.pow(decimal.places);
    let units = u128::from(decimal.digits) + 60 * u128::from(minutes) * scale;
    let below = scale * u128::from(rule.step.max(1));
    let steps = rule.rounding.divide(units * u128::from(size), below);
    let steps = steps.ok_or_else(|| refusal::not_whole(text, rule))?;
    match i64::try_from(steps) {
        Ok(small) if steps <= MOST => Ok(Mark::from_steps(small)),
        _ => Err(refusal::too_large(text, rule)),
    }
}

impl MarkUnit {
    /// The units that can stand beside such a mark.
    const fn words(self) -> &'static [(&'static str, u32)] {
        match self {
            Self::Centimetre | Self::Metre => LENGTHS,
            Self::Second | Self::Minute => TIMES,
            Self::Points => POINTS,
            Self::Count => &[],
        }
    }
}

#[cfg(test)]
mod tests;
