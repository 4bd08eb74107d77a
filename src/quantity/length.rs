//! A length, in whole millimetres.

use std::fmt;

use super::amount::{Unit, read_amount};
use super::form::tidy_units;
use super::{Form, Quantity, Unreadable};

/// A length in whole millimetres.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Length {
    millimetres: u32,
}

const UNITS: &[Unit] = &[
    Unit { word: "m", steps: 1000, also: &["metre", "metres", "meter", "meters", "mtr"] },
    Unit { word: "cm", steps: 10, also: &["cms", "centimetre", "centimetres"] },
    Unit { word: "mm", steps: 1, also: &["mms", "millimetre", "millimetres"] },
];

impl Length {
    pub const fn from_millimetres(millimetres: u32) -> Self {
        Self { millimetres }
    }

    pub const fn millimetres(self) -> u32 {
        self.millimetres
    }
}

impl Quantity for Length {
    const ASKED: &'static str = "a length, such as 4 m, 2.4 m or 60 cm";

    fn read_quantity(text: &str) -> Result<Self, Unreadable> {
        let steps = read_amount(text, UNITS, Self::ASKED)?;
        Ok(Self { millimetres: u32::try_from(steps).unwrap_or(u32::MAX) })
    }

    fn form() -> Form {
        Form::of_units(Self::ASKED, UNITS, &["4 m", "60 cm"], |text| {
            tidy_units::<Self>(text, UNITS)
        })
    }
}

impl fmt::Display for Length {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mm = self.millimetres;
        if mm >= 1000 {
            write!(f, "{} m", trim_decimals(mm, 1000))
        } else if mm.is_multiple_of(10) {
            write!(f, "{} cm", mm / 10)
        } else {
            write!(f, "{mm} mm")
        }
    }
}

/// `whole.fraction` of `steps / per`, without trailing noughts; `per` is a power of ten.
pub(super) fn trim_decimals(steps: u32, per: u32) -> String {
    let places = per.ilog10() as usize;
    let text = format!("{}.{:0places$}", steps / per, steps % per);
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_two_decimal_metre_is_exact() {
        // floor(x * 100) on binary fractions is wrong for 69 of these; whole steps never are.
        for centimetres in 1..1000_u32 {
            let text = format!("{}.{:02} m", centimetres / 100, centimetres % 100);
            let length = Length::read_quantity(&text).unwrap();
            assert_eq!(length.millimetres(), centimetres * 10, "{text}");
        }
    }

    #[test]
    fn refuses_what_is_no_length() {
        for bad in ["1,5 m", "4", "4 min", "400 g", "-2 m", "2.40001 mm", "m", "four m"] {
            assert!(Length::read_quantity(bad).is_err(), "{bad}");
        }
    }

    #[test]
    fn shows_the_unit_a_person_would_use() {
        let show = |mm| Length::from_millimetres(mm).to_string();
        assert_eq!(show(2400), "2.4 m");
        assert_eq!(show(4000), "4 m");
        assert_eq!(show(600), "60 cm");
        assert_eq!(show(35), "35 mm");
    }
}
