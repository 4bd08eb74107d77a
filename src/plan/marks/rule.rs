//! The rule of an event: in which unit a mark is given, its smallest step and how it is rounded.

use serde::Serialize;

use super::Mark;
use super::number::write_decimal;

/// The unit in which a mark is given.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum MarkUnit {
    Centimetre,
    Metre,
    Second,
    /// Minutes and seconds: 1:23.4.
    Minute,
    Count,
    Points,
}

/// What happens to a mark that lies between two steps.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rounding {
    Down,
    Up,
    /// A half goes up.
    Nearest,
    /// There is nothing between two steps: such a mark is refused.
    Refused,
}

/// How a mark is written for people, as data: the script of a page writes it from the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Form {
    /// What makes one of the unit, in millimetres, thousandths of a second, or things counted.
    pub size: u32,
    /// Decimals, always so many: a jump of two metres is 2.00 m.
    pub places: u32,
    /// Minutes and seconds with a colon between them.
    pub clock: bool,
    /// What stands after the number; nothing for counts, since the word beside it belongs to the event.
    pub after: &'static str,
}

/// How marks of an event are kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct MarkRule {
    pub unit: MarkUnit,
    /// The smallest step: in millimetres for a distance, in thousandths of a second for a time,
    /// 1 for counts and points. Not 0.
    pub step: u32,
    pub rounding: Rounding,
}

impl MarkRule {
    /// Jumps and throws in metres, down to the whole centimetre.
    /// Source: World Athletics, Technical Rules (distances in field events).
    pub const DISTANCE_IN_M: Self =
        Self { unit: MarkUnit::Metre, step: 10, rounding: Rounding::Down };

    /// The same in centimetres.
    pub const DISTANCE_IN_CM: Self = Self { unit: MarkUnit::Centimetre, ..Self::DISTANCE_IN_M };

    /// Hand times, up to the tenth of a second: 10.11 becomes 10.2.
    /// Source: World Athletics, Technical Rules (timing by hand).
    pub const HAND_TIME_IN_S: Self =
        Self { unit: MarkUnit::Second, step: 100, rounding: Rounding::Up };

    /// The same in minutes and seconds.
    pub const HAND_TIME_IN_MIN: Self = Self { unit: MarkUnit::Minute, ..Self::HAND_TIME_IN_S };

    /// Fully automatic times, up to the hundredth of a second.
    /// Source: World Athletics, Technical Rules, from memory.
    pub const AUTOMATIC_TIME_IN_S: Self = Self { step: 10, ..Self::HAND_TIME_IN_S };

    /// Counts are whole.
    pub const COUNT: Self = Self { unit: MarkUnit::Count, step: 1, rounding: Rounding::Refused };

    /// Points are whole.
    pub const POINTS: Self = Self { unit: MarkUnit::Points, ..Self::COUNT };

    /// The usual rule for a unit as a session names it. Any other word counts things.
    pub fn of_unit(word: &str) -> Option<Self> {
        match word {
            "cm" => Some(Self::DISTANCE_IN_CM),
            "m" => Some(Self::DISTANCE_IN_M),
            "s" => Some(Self::HAND_TIME_IN_S),
            "min" => Some(Self::HAND_TIME_IN_MIN),
            "points" => Some(Self::POINTS),
            _ => None,
        }
    }

    /// How marks of this rule are written: "2.05 m", "205 cm", "7.3 s", "1:23.4", "12".
    pub fn form(self) -> Form {
        let size = match self.unit {
            MarkUnit::Minute => MarkUnit::Second.size(),
            unit => unit.size(),
        };
        let after = match self.unit {
            MarkUnit::Centimetre => " cm",
            MarkUnit::Metre => " m",
            MarkUnit::Second => " s",
            MarkUnit::Minute | MarkUnit::Count | MarkUnit::Points => "",
        };
        Form { size, places: self.places(), clock: self.unit == MarkUnit::Minute, after }
    }

    /// The mark as it is written for people.
    pub fn show(self, mark: Mark) -> String {
        let form = self.form();
        if form.clock {
            return self.show_clock(mark);
        }
        format!("{}{}", write_decimal(self.thousandths(mark), form.size, form.places), form.after)
    }

    /// A figure that may lie between two steps, such as a median, with one decimal more than marks
    /// have: “4.3 cm”. Minutes are given in seconds, since such figures are mostly small.
    pub fn show_between(self, steps: f64) -> String {
        let unit = if self.unit == MarkUnit::Minute { MarkUnit::Second } else { self.unit };
        let places = usize::try_from(self.places()).unwrap_or(0) + 1;
        let number = steps * f64::from(self.step) / f64::from(unit.size());
        let word = match unit {
            MarkUnit::Centimetre => " cm",
            MarkUnit::Metre => " m",
            MarkUnit::Second | MarkUnit::Minute => " s",
            MarkUnit::Count | MarkUnit::Points => "",
        };
        format!("{number:.places$}{word}").replace('-', "−")
    }

    fn show_clock(self, mark: Mark) -> String {
        let all = self.thousandths(mark);
        let minute = i128::from(MarkUnit::Minute.size());
        let (minutes, rest) = (all.abs() / minute, all.abs() % minute);
        let seconds = write_decimal(rest, MarkUnit::Second.size(), self.places());
        let nought = if rest < 10_000 { "0" } else { "" };
        let sign = if all < 0 { "−" } else { "" };
        format!("{sign}{minutes}:{nought}{seconds}")
    }

    /// The mark in millimetres, thousandths of a second, or things counted.
    pub(super) fn thousandths(self, mark: Mark) -> i128 {
        i128::from(mark.steps()) * i128::from(self.step)
    }

    /// As many decimals as the step needs, and always so many: a jump of two metres is 2.00 m.
    fn places(self) -> u32 {
        let size = match self.unit {
            MarkUnit::Minute => MarkUnit::Second.size(),
            unit => unit.size(),
        };
        (0..3)
            .find(|places| u64::from(self.step) * 10_u64.pow(*places) % u64::from(size) == 0)
            .unwrap_or(3)
    }
}

impl MarkUnit {
    /// Every unit, in the order of the declaration.
    pub const ALL: [Self; 6] =
        [Self::Centimetre, Self::Metre, Self::Second, Self::Minute, Self::Count, Self::Points];

    /// Its place among [`Self::ALL`].
    pub const fn at(self) -> usize {
        self as usize
    }

    /// In millimetres, in thousandths of a second, or in things counted.
    pub(super) const fn size(self) -> u32 {
        match self {
            Self::Centimetre => 10,
            Self::Metre | Self::Second => 1_000,
            Self::Minute => 60_000,
            Self::Count | Self::Points => 1,
        }
    }
}

/// How a rounding is reckoned: the whole part of (2 · above + bias) / (2 · below), where the bias is
/// `halves` · below − `less`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Bias {
    pub halves: u32,
    pub less: u32,
    /// What lies between two steps is refused.
    pub whole: bool,
}

impl Rounding {
    pub const fn bias(self) -> Bias {
        let (halves, less) = match self {
            Self::Down | Self::Refused => (0, 0),
            Self::Nearest => (1, 0),
            Self::Up => (2, 1),
        };
        Bias { halves, less, whole: matches!(self, Self::Refused) }
    }

    /// `above / below` to whole steps; `None` where it must be whole and is not. `below` > 0.
    pub(super) const fn divide(self, above: u128, below: u128) -> Option<u128> {
        let bias = self.bias();
        if bias.whole && !above.is_multiple_of(below) {
            return None;
        }
        Some((2 * above + bias.halves as u128 * below - bias.less as u128) / (2 * below))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn marks_are_shown_in_their_unit() {
        let show = |rule: MarkRule, steps| rule.show(Mark::from_steps(steps));
        assert_eq!(show(MarkRule::DISTANCE_IN_M, 205), "2.05 m");
        assert_eq!(show(MarkRule::DISTANCE_IN_M, 200), "2.00 m");
        assert_eq!(show(MarkRule::DISTANCE_IN_CM, 205), "205 cm");
        assert_eq!(show(MarkRule::HAND_TIME_IN_S, 834), "83.4 s");
        assert_eq!(show(MarkRule::HAND_TIME_IN_MIN, 834), "1:23.4");
        assert_eq!(show(MarkRule::HAND_TIME_IN_MIN, 605), "1:00.5");
        assert_eq!(show(MarkRule::COUNT, 12), "12");
        assert_eq!(show(MarkRule { step: 5, ..MarkRule::DISTANCE_IN_CM }, 3), "1.5 cm");
        assert_eq!(MarkRule::DISTANCE_IN_CM.show_between(147.25), "147.2 cm");
        assert_eq!(MarkRule::HAND_TIME_IN_MIN.show_between(-6.5), "−0.65 s");
    }

    #[test]
    fn rounding_by_the_rules_of_the_trade() {
        // Hand times up to the tenth: 11.61 to 11.70 are all 11.7 (World Athletics, from memory).
        for hundredths in 1161..=1170 {
            assert_eq!(Rounding::Up.divide(hundredths, 10), Some(117));
        }
        assert_eq!(Rounding::Down.divide(2059, 10), Some(205));
        assert_eq!(Rounding::Nearest.divide(25, 10), Some(3));
        assert_eq!(Rounding::Nearest.divide(24, 10), Some(2));
        assert_eq!(Rounding::Refused.divide(25, 10), None);
    }
}
