//! An angle, in whole hundredths of a degree.

use std::fmt;

use super::amount::{Unit, read_amount};
use super::form::{NUMBER, tidy_units, tidy_with};
use super::length::trim_decimals;
use super::{Form, Quantity, Unreadable};

/// An angle in whole hundredths of a degree (a throwing sector has 34.92°).
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Angle {
    hundredths: u32,
}

const UNITS: &[Unit] =
    &[Unit { word: "°", steps: 100, also: &["deg", "degree", "degrees", "º", "d"] }];

/// A right angle: nothing is thrown or set out beyond it.
const MOST: u64 = 9000;

impl Angle {
    pub const fn from_hundredths(hundredths: u32) -> Self {
        Self { hundredths }
    }

    /// In degrees, for the formulas.
    pub fn degrees(self) -> f64 {
        f64::from(self.hundredths) / 100.0
    }

    /// In radians, for the formulas.
    pub fn radians(self) -> f64 {
        self.degrees().to_radians()
    }
}

impl Quantity for Angle {
    const ASKED: &'static str = "an angle, such as 40°";

    /// A bare number counts degrees: no other unit is used for angles in the trade.
    fn read_quantity(text: &str) -> Result<Self, Unreadable> {
        let is_bare = text.trim().ends_with(|c: char| c.is_ascii_digit());
        let with_unit = if is_bare { format!("{}°", text.trim()) } else { text.to_owned() };
        let steps = read_amount(&with_unit, UNITS, Self::ASKED)?;
        if steps > MOST {
            return Err(Unreadable::new(
                format!("“{text}” is more than a right angle"),
                "Write an angle from 0° to 90°.",
            ));
        }
        Ok(Self { hundredths: u32::try_from(steps).unwrap_or(0) })
    }

    fn form() -> Form {
        let pattern = format!("^\\s*{NUMBER}\\s*°?\\s*$");
        let tidy = |text: &str| {
            let is_bare = text.trim().ends_with(|c: char| c.is_ascii_digit());
            let own = |text: &str| Some(text.to_owned());
            if is_bare { tidy_with::<Self>(text, own) } else { tidy_units::<Self>(text, UNITS) }
        };
        Form {
            asked: Self::ASKED, pattern, examples: &["40", "34.92°"], bare: Some((0, 90)), tidy
        }
    }
}

impl fmt::Display for Angle {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}°", trim_decimals(self.hundredths, 100))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_and_shows() {
        for (text, shown) in [("40", "40°"), ("34.92°", "34.92°"), ("28.96", "28.96°")] {
            assert_eq!(Angle::read_quantity(text).unwrap().to_string(), shown);
        }
        for bad in ["91", "40 cm", "-3", "steep", "34.925°"] {
            assert!(Angle::read_quantity(bad).is_err(), "{bad}");
        }
    }
}
