//! A mass, in whole milligrams.

use std::fmt;

use super::amount::{Unit, read_amount};
use super::form::tidy_units;
use super::length::trim_decimals;
use super::{Form, Quantity, Unreadable};

/// A mass in whole milligrams (a table-tennis ball is 2.7 g).
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Mass {
    milligrams: u32,
}

const UNITS: &[Unit] = &[
    Unit { word: "g", steps: 1000, also: &["gram", "grams", "gr", "gm", "gms"] },
    Unit { word: "kg", steps: 1_000_000, also: &["kilo", "kilos", "kgs", "kilogram", "kilograms"] },
];

impl Mass {
    pub const fn from_grams(grams: u32) -> Self {
        Self { milligrams: grams * 1000 }
    }

    pub const fn from_milligrams(milligrams: u32) -> Self {
        Self { milligrams }
    }

    pub const fn milligrams(self) -> u32 {
        self.milligrams
    }
}

impl Quantity for Mass {
    const ASKED: &'static str = "a mass, such as 400 g or 1.2 kg";

    fn read_quantity(text: &str) -> Result<Self, Unreadable> {
        let steps = read_amount(text, UNITS, Self::ASKED)?;
        Ok(Self { milligrams: u32::try_from(steps).unwrap_or(u32::MAX) })
    }

    fn form() -> Form {
        Form::of_units(Self::ASKED, UNITS, &["400 g", "1.2 kg"], |text| {
            tidy_units::<Self>(text, UNITS)
        })
    }
}

impl fmt::Display for Mass {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.milligrams >= 1_000_000 {
            write!(f, "{} kg", trim_decimals(self.milligrams, 1_000_000))
        } else {
            write!(f, "{} g", trim_decimals(self.milligrams, 1000))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_and_shows() {
        for text in ["400 g", "1.2 kg", "2.7 g", "1 kg"] {
            assert_eq!(Mass::read_quantity(text).unwrap().to_string(), text);
        }
        for bad in ["400", "1.2 kilos", "400 cm", "-1 g"] {
            assert!(Mass::read_quantity(bad).is_err(), "{bad}");
        }
    }
}
