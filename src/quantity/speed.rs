//! A speed, in whole millimetres a second.

use std::fmt;

use super::amount::{Unit, read_amount};
use super::form::tidy_units;
use super::length::trim_decimals;
use super::{Form, Quantity, Unreadable};

/// A speed in whole millimetres a second.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Speed {
    millimetres_a_second: u32,
}

const UNITS: &[Unit] = &[
    Unit { word: "m/s", steps: 1000, also: &["ms", "mps", "metres a second", "m per s"] },
    Unit { word: "cm/s", steps: 10, also: &["cms", "centimetres a second"] },
];

impl Speed {
    /// In metres a second, for the formulas of flight.
    pub fn metres_a_second(self) -> f64 {
        f64::from(self.millimetres_a_second) / 1000.0
    }
}

impl Quantity for Speed {
    const ASKED: &'static str = "a speed, such as 6 m/s or 4.5 m/s";

    fn read_quantity(text: &str) -> Result<Self, Unreadable> {
        let steps = read_amount(text, UNITS, Self::ASKED)?;
        Ok(Self { millimetres_a_second: u32::try_from(steps).unwrap_or(u32::MAX) })
    }

    fn form() -> Form {
        Form::of_units(Self::ASKED, UNITS, &["6 m/s"], |text| tidy_units::<Self>(text, UNITS))
    }
}

impl fmt::Display for Speed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} m/s", trim_decimals(self.millimetres_a_second, 1000))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_and_shows() {
        for text in ["6 m/s", "4.5 m/s"] {
            assert_eq!(Speed::read_quantity(text).unwrap().to_string(), text);
        }
        for bad in ["6", "6 m", "6 km/h", "-1 m/s"] {
            assert!(Speed::read_quantity(bad).is_err(), "{bad}");
        }
    }
}
