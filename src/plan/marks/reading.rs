//! Reads a mark as a child, a parent or a teacher writes it.
//!
//! In: "2.05 m", "145", "145.7 cm", "1:23.4", "12" and the event’s rule. Out: a [`Mark`], rounded
//! as the rule says, or what was wrong. What is accepted stands in `spelling`; this runs it, as the script
//! of a session’s page does.

use std::sync::LazyLock;

use regex::{Captures, Regex};

use super::number::{Decimal, read_decimal};
use super::refusal::{Refusal, word_refusal};
use super::rule::MarkRule;
use super::spelling::{Spelling, Then};
use super::{Attempt, Mark};
use crate::quantity::Unreadable;

/// The spelling with its patterns made ready.
struct Reader {
    spelling: Spelling,
    folds: [(Regex, &'static str); 2],
    trim: Regex,
    no_mark: Regex,
    units: [Vec<(Regex, Then)>; 6],
}

static READER: LazyLock<Reader> = LazyLock::new(|| {
    let ready = |pattern: &str| Regex::new(pattern).expect("our own patterns are sound");
    let spelling = Spelling::of_marks();
    let lines = |unit: &Vec<(String, Then)>| {
        unit.iter().map(|(pattern, then)| (ready(pattern), *then)).collect()
    };
    Reader {
        folds: spelling.folds.map(|[pattern, by]| (ready(pattern), by)),
        trim: ready(spelling.trim),
        no_mark: ready(spelling.no_mark),
        units: spelling.units.each_ref().map(lines),
        spelling,
    }
});

/// Reads one attempt as a family sends it, with any decimal mark and digits of their keyboard.
///
/// # Errors
/// Why it can’t be read.
pub fn read_returned(text: &str, rule: MarkRule) -> Result<Attempt, Refusal> {
    attempt_of(&fold(text), rule)
}

/// What [`read_returned`] refuses, in words for a teacher.
///
/// # Errors
/// What was wrong and what to write instead.
pub fn read_returned_mark(text: &str, rule: MarkRule) -> Result<Attempt, Unreadable> {
    read_returned(text, rule).map_err(|why| word_refusal(why, text.trim(), rule))
}

/// Reads one attempt: a mark, or the sign of a foul, a miss or a pass.
///
/// # Errors
/// As for [`read_mark`].
pub fn read_attempt(text: &str, rule: MarkRule) -> Result<Attempt, Unreadable> {
    attempt_of(text, rule).map_err(|why| word_refusal(why, text.trim(), rule))
}

/// Reads one mark. A number alone has the rule’s own unit.
///
/// # Errors
/// What was wrong and what to write instead.
pub fn read_mark(text: &str, rule: MarkRule) -> Result<Mark, Unreadable> {
    mark_of(&plain(text), rule).map_err(|why| word_refusal(why, text.trim(), rule))
}

fn attempt_of(text: &str, rule: MarkRule) -> Result<Attempt, Refusal> {
    let plain = plain(text);
    if READER.no_mark.is_match(&plain) {
        return Ok(Attempt::NoMark);
    }
    mark_of(&plain, rule).map(Attempt::Valid)
}

/// The letters and marks of a family’s keyboard as those that rules are written in.
fn fold(text: &str) -> String {
    let [from, to] = READER.spelling.letters;
    let one = |letter: char| from.chars().zip(to.chars()).find(|(known, _)| *known == letter);
    let plain: String = text.chars().map(|c| one(c).map_or(c, |(_, stands)| stands)).collect();
    READER.folds.iter().fold(plain, |text, (pattern, by)| pattern.replace_all(&text, *by).into())
}

fn plain(text: &str) -> String {
    READER.trim.replace_all(text, "").to_lowercase()
}

fn mark_of(text: &str, rule: MarkRule) -> Result<Mark, Refusal> {
    let mut lines = READER.units[rule.unit.at()].iter();
    let fitting = lines.find_map(|(pattern, then)| Some((pattern.captures(text)?, *then)));
    match fitting {
        Some((found, Then::Size(size))) => mark_of_number(&found, size, rule),
        Some((_, Then::Refuse(why))) => Err(why),
        None => Err(Refusal::NoNumber),
    }
}

/// One group is a number; of two, the first is whole minutes.
fn mark_of_number(found: &Captures<'_>, size: u32, rule: MarkRule) -> Result<Mark, Refusal> {
    let group = |at: usize| found.get(at).map_or("", |group| group.as_str());
    let last = found.len() - 1;
    let number = read_decimal(group(last)).ok_or(Refusal::NoNumber)?;
    let minutes = if last > 1 { group(1).parse().unwrap_or(0) } else { 0 };
    to_steps(number, minutes, size, rule)
}

/// (digits / 10^places + 60·minutes) units of `size`, in whole steps of the rule.
fn to_steps(decimal: Decimal, minutes: u64, size: u32, rule: MarkRule) -> Result<Mark, Refusal> {
    let scale = 10_u128.pow(decimal.places);
    let units = u128::from(decimal.digits) + 60 * u128::from(minutes) * scale;
    let below = scale * u128::from(rule.step.max(1));
    let steps = rule.rounding.divide(units * u128::from(size), below).ok_or(Refusal::NotWhole)?;
    match i64::try_from(steps) {
        Ok(small) if steps <= u128::from(READER.spelling.most) => Ok(Mark::from_steps(small)),
        _ => Err(Refusal::TooLarge),
    }
}

#[cfg(test)]
mod tests;
