//! A volume, in whole millilitres.

use std::fmt;

use super::amount::{Unit, read_amount};
use super::form::tidy_units;
use super::length::trim_decimals;
use super::{Form, Quantity, Unreadable};

/// A volume in whole millilitres.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Volume {
    millilitres: u32,
}

const UNITS: &[Unit] = &[
    Unit { word: "ml", steps: 1, also: &["millilitre", "millilitres", "milliliters", "mls"] },
    Unit { word: "l", steps: 1000, also: &["litre", "litres", "liter", "liters", "ltr"] },
];

impl Volume {
    pub const fn from_millilitres(millilitres: u32) -> Self {
        Self { millilitres }
    }

    pub const fn millilitres(self) -> u32 {
        self.millilitres
    }
}

impl Quantity for Volume {
    const ASKED: &'static str = "a volume, such as 500 ml or 1.5 l";

    fn read_quantity(text: &str) -> Result<Self, Unreadable> {
        let steps = read_amount(text, UNITS, Self::ASKED)?;
        Ok(Self { millilitres: u32::try_from(steps).unwrap_or(u32::MAX) })
    }

    fn form() -> Form {
        Form::of_units(Self::ASKED, UNITS, &["500 ml", "1.5 l"], |text| {
            tidy_units::<Self>(text, UNITS)
        })
    }
}

impl fmt::Display for Volume {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.millilitres >= 1000 {
            write!(f, "{} l", trim_decimals(self.millilitres, 1000))
        } else {
            write!(f, "{} ml", self.millilitres)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_and_shows() {
        for text in ["500 ml", "1.5 l", "2 l"] {
            assert_eq!(Volume::read_quantity(text).unwrap().to_string(), text);
        }
        for bad in ["500", "500 g", "-1 l", "0.5 ml"] {
            assert!(Volume::read_quantity(bad).is_err(), "{bad}");
        }
    }
}
