//! Quantities in the words of a language: a length, mass, time or range → “2,4 m”, “4 хв 30 с”.
//!
//! The digits are 0 to 9 in every language (see [`crate::words`]); decimals are marked as Unicode CLDR has
//! it, unit words stand in the catalogue. What inspect says stays in English and uses `Display`.

use std::fmt::Display;

use super::phrases::hold_together;
use crate::quantity::{Duration, Length, Mass, Range};
use crate::words::{Filling, Words};

/// A quantity that families read.
pub trait Said {
    /// In the words of a language, each figure held to its unit.
    fn say(&self, words: &Words) -> String;
}

impl Said for Length {
    fn say(&self, words: &Words) -> String {
        say_amount(&self.to_string(), words)
    }
}

impl Said for Mass {
    fn say(&self, words: &Words) -> String {
        say_amount(&self.to_string(), words)
    }
}

impl Said for Duration {
    fn say(&self, words: &Words) -> String {
        let (minutes, seconds) = (self.seconds() / 60, self.seconds() % 60);
        let piece = |count: u32, unit: &str| say_amount(&format!("{count} {unit}"), words);
        match (minutes, seconds) {
            (0, seconds) => piece(seconds, "s"),
            (minutes, 0) => piece(minutes, "min"),
            (minutes, seconds) => {
                let (minutes, seconds) = (piece(minutes, "min"), piece(seconds, "s"));
                let with =
                    [("minutes", Filling::Text(&minutes)), ("seconds", Filling::Text(&seconds))];
                words.say_with("amount-min-s", &with)
            }
        }
    }
}

impl<T: Said + Display + PartialEq> Said for Range<T> {
    fn say(&self, words: &Words) -> String {
        let one =
            |key: &str, end: &T| words.say_with(key, &[("amount", Filling::Text(&end.say(words)))]);
        match (&self.least, &self.most) {
            (Some(least), Some(most)) if least == most => least.say(words),
            (Some(least), Some(most)) => say_both(least, most, words),
            (None, Some(most)) => one("amount-at-most", most),
            (Some(least), None) => one("amount-at-least", least),
            (None, None) => words.say("amount-any"),
        }
    }
}

/// Says the unit once where both ends share it: “40–100 g”.
fn say_both<T: Said + Display>(least: &T, most: &T, words: &Words) -> String {
    let (low, high) = (least.to_string(), most.to_string());
    match (low.split_once(' '), high.split_once(' ')) {
        (Some((number, unit)), Some((_, same))) if unit == same => {
            format!("{}–{}", words.number(number), most.say(words))
        }
        _ => format!("{} – {}", least.say(words), most.say(words)),
    }
}

/// A number with a point and a unit, such as “2.4 m”, or a number or clock time alone.
pub fn say_amount(amount: &str, words: &Words) -> String {
    let Some((number, unit)) = amount.split_once(' ') else { return words.number(amount) };
    let written = words.number(number);
    let filling = number.parse().map_or(Filling::Text(&written), Filling::Count);
    hold_together(&words.say_with(&format!("amount-{unit}"), &[("number", filling)]))
}

/// A floor or piece of floor: “4 m × 2 m”.
pub fn say_size(length: Length, width: Length, words: &Words) -> String {
    format!("{} × {}", length.say(words), width.say(words))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Quantity;
    use crate::render::house::House;

    fn said<T: Quantity + Said>(text: &str, language: &str) -> String {
        let none = std::collections::BTreeMap::new();
        let words = House::new(&none).words(language).unwrap();
        T::read_quantity(text).unwrap().say(&words).replace('\u{a0}', " ")
    }

    #[test]
    fn quantities_are_said_by_language() {
        assert_eq!(said::<Length>("2.4 m", "en-GB"), "2.4 m");
        assert_eq!(said::<Length>("2.4 m", "fr"), "2,4 m");
        assert_eq!(said::<Length>("60 cm", "uk"), "60 см");
        assert_eq!(said::<Duration>("1 min 30 s", "uk"), "1 хв 30 с");
        assert_eq!(said::<Range<Mass>>("40-100 g", "pl"), "40–100 g");
        assert_eq!(said::<Range<Mass>>("at most 1.2 kg", "es"), "como máximo 1,2 kg");
        assert_eq!(said::<Range<Length>>("90 cm - 1.5 m", "fr"), "90 cm – 1,5 m");
    }
}
