//! How a quantity is written: a pattern for editors, examples, and the house way to write it.

use super::Quantity;
use super::amount::{Unit, tidy_amount};

/// The written form of a quantity.
#[derive(Clone, Debug)]
pub struct Form {
    /// What is asked for, in words.
    pub asked: &'static str,
    /// A regular expression (ECMA-262) that matches every text that is read. It may match more: that a
    /// range begins with the smaller figure, or that a day is in the calendar, no pattern can see.
    pub pattern: String,
    pub examples: &'static [&'static str],
    /// The least and most of a number that stands alone, where one is taken.
    pub bare: Option<(u32, u32)>,
    /// The house way to write the same: “4m” → “4 m”, “90 sec” → “90 s”; `None` where it can’t be read.
    pub tidy: fn(&str) -> Option<String>,
}

impl Form {
    /// A number with one of the units after it.
    pub(super) fn of_units(
        asked: &'static str,
        units: &[Unit],
        examples: &'static [&'static str],
        tidy: fn(&str) -> Option<String>,
    ) -> Self {
        let pattern = format!("^\\s*{}\\s*$", amount_pattern(units));
        Self { asked, pattern, examples, bare: None, tidy }
    }
}

/// A decimal number and one of the units.
pub(super) fn amount_pattern(units: &[Unit]) -> String {
    let words: Vec<&str> = units.iter().map(|unit| unit.word).collect();
    format!("{NUMBER}\\s*(?:{})", words.join("|"))
}

/// A decimal number, as `read_amount` takes it.
pub(super) const NUMBER: &str = "\\+?[0-9]{1,9}(?:\\.[0-9]{1,6})?";

/// The house way, where it is certain to be the same: what it gives can be read, and gives the same value
/// wherever the text could be read before.
pub(super) fn tidy_with<Q: Quantity + PartialEq>(
    text: &str,
    rewrite: impl Fn(&str) -> Option<String>,
) -> Option<String> {
    let tidied = rewrite(text.trim())?;
    let after = Q::read_quantity(&tidied).ok()?;
    let is_same = Q::read_quantity(text).map_or(true, |before| before == after);
    is_same.then_some(tidied)
}

/// The house way for a number with its unit.
pub(super) fn tidy_units<Q: Quantity + PartialEq>(text: &str, units: &[Unit]) -> Option<String> {
    tidy_with::<Q>(text, |text| tidy_amount(text, units))
}

#[cfg(test)]
mod tests {
    use crate::quantity::{Ages, Angle, Duration, Length, Mass, Quantity, Range, Speed, Volume};

    fn tidied<Q: Quantity>(text: &str) -> Option<String> {
        (Q::form().tidy)(text)
    }

    #[test]
    fn units_are_written_the_house_way() {
        for (text, house) in
            [("4m", "4 m"), ("60  cm", "60 cm"), ("2 metres", "2 m"), ("2.40 m", "2.40 m")]
        {
            assert_eq!(tidied::<Length>(text).as_deref(), Some(house), "{text}");
        }
        for (text, house) in
            [("90 sec", "90 s"), ("1min30s", "1 min 30 s"), ("5 mins", "5 min"), ("3 m", "3 min")]
        {
            assert_eq!(tidied::<Duration>(text).as_deref(), Some(house), "{text}");
        }
        assert_eq!(tidied::<Mass>("400g").as_deref(), Some("400 g"));
        assert_eq!(tidied::<Volume>("1.5 litres").as_deref(), Some("1.5 l"));
        assert_eq!(tidied::<Speed>("6m/s").as_deref(), Some("6 m/s"));
        assert_eq!(tidied::<Angle>("40 deg").as_deref(), Some("40°"));
        assert_eq!(tidied::<Angle>("40").as_deref(), Some("40"));
        assert_eq!(tidied::<Ages>("8 – 11").as_deref(), Some("8-11"));
        assert_eq!(tidied::<Range<Mass>>("40-100g").as_deref(), Some("40-100 g"));
        assert_eq!(tidied::<Range<Mass>>("at most 500grams").as_deref(), Some("at most 500 g"));
        assert_eq!(tidied::<Range<Length>>("50cm - 1.2m").as_deref(), Some("50 cm - 1.2 m"));
    }

    #[test]
    fn what_is_not_certain_is_left() {
        for text in ["1,5 m", "about 4 m", "4", "4 feet", "-2 m", ""] {
            assert_eq!(tidied::<Length>(text), None, "{text}");
        }
        assert_eq!(tidied::<Duration>("30 s 1 min"), None);
        assert_eq!(tidied::<Range<Mass>>("100-40 g"), None);
    }
}
