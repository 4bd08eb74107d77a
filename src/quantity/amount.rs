//! A number and its unit, read exactly: no binary fractions between "0.29 m" and 290 mm.

use super::Unreadable;

/// A unit word and how many of the smallest steps it holds.
pub(super) struct Unit {
    pub word: &'static str,
    pub steps: u64,
    /// Other spellings people write, for the way out.
    pub also: &'static [&'static str],
}

/// The largest number of steps any quantity may have; keeps every sum within 64 bits.
const MOST: u64 = 1_000_000_000;

/// Reads "2.4 m" as a whole number of smallest steps.
pub(super) fn read_amount(text: &str, units: &[Unit], asked: &str) -> Result<u64, Unreadable> {
    let text = text.trim();
    let split = text
        .find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',' | '-' | '+')))
        .unwrap_or(text.len());
    let (number, word) = (&text[..split], text[split..].trim());
    if number.is_empty() {
        return Err(Unreadable::new(
            format!("“{text}” has no number in it"),
            format!("Write {asked}."),
        ));
    }
    if number.starts_with('-') {
        return Err(Unreadable::new(
            format!("“{text}” is less than nothing"),
            format!("Write {asked}; it can’t be negative."),
        ));
    }
    if number.contains(',') {
        return Err(Unreadable::new(
            format!("“{text}” has a comma in the number"),
            format!("Write the decimal with a point: {}", with_point(number, word)),
        ));
    }
    let unit = find_unit(number, word, units, asked)?;
    read_steps(number, unit.steps)
        .ok_or_else(|| cannot(text, unit, asked))
        .and_then(|steps| if steps > MOST { Err(too_large(text, asked)) } else { Ok(steps) })
}

fn with_point(number: &str, word: &str) -> String {
    format!("{} {word}", number.replace(',', ".")).trim().to_owned()
}

fn find_unit<'u>(
    number: &str,
    word: &str,
    units: &'u [Unit],
    asked: &str,
) -> Result<&'u Unit, Unreadable> {
    if let Some(unit) = units.iter().find(|unit| unit.word == word) {
        return Ok(unit);
    }
    let known: Vec<&str> = units.iter().map(|unit| unit.word).collect();
    if word.is_empty() {
        return Err(Unreadable::new(
            format!("“{number}” has no unit"),
            format!("Add one: {}. For example {number} {}.", known.join(", "), known[0]),
        ));
    }
    let lower = word.to_lowercase();
    if let Some(unit) =
        units.iter().find(|unit| unit.word == lower || unit.also.contains(&lower.as_str()))
    {
        return Err(Unreadable::new(
            format!("The unit “{word}” is written “{}” here", unit.word),
            format!("Write {number} {}.", unit.word),
        ));
    }
    Err(Unreadable::new(
        format!("“{word}” is not a unit that fits here"),
        format!("Write {asked}. The units are {}.", known.join(", ")),
    ))
}

/// The same amount the house way, with one space before the unit’s own word: “4m” → “4 m”, “2 metres” → “2 m”.
/// `None` where the number or the word is not certain.
pub(super) fn tidy_amount(text: &str, units: &[Unit]) -> Option<String> {
    let split = text.find(|c: char| !(c.is_ascii_digit() || c == '.'))?;
    let (number, word) = (&text[..split], text[split..].trim().to_lowercase());
    let unit = units.iter().find(|unit| unit.word == word || unit.also.contains(&word.as_str()))?;
    let space = if unit.word == "°" { "" } else { " " };
    read_steps(number, unit.steps).map(|_| format!("{number}{space}{}", unit.word))
}

/// Exact decimal reading; `None` where the text is no number or is finer than the smallest step.
fn read_steps(number: &str, steps_per_unit: u64) -> Option<u64> {
    let (whole, fraction) = number.split_once('.').unwrap_or((number, ""));
    if whole.is_empty() || whole.len() > 9 || fraction.len() > 6 || number.ends_with('.') {
        return None;
    }
    let scale = 10_u64.pow(u32::try_from(fraction.len()).ok()?);
    let digits: u64 = whole.parse::<u64>().ok()? * scale
        + if fraction.is_empty() { 0 } else { fraction.parse::<u64>().ok()? };
    let scaled = digits.checked_mul(steps_per_unit)?;
    (scaled % scale == 0).then_some(scaled / scale)
}

fn cannot(text: &str, unit: &Unit, asked: &str) -> Unreadable {
    Unreadable::new(
        format!("“{text}” can’t be read, or is finer than can be measured in {}", unit.word),
        format!("Write {asked}."),
    )
}

fn too_large(text: &str, asked: &str) -> Unreadable {
    Unreadable::new(format!("“{text}” is far too large"), format!("Write {asked}."))
}
