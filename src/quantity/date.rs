//! A calendar date, written 2027-09-01 (ISO 8601).

use std::fmt;

use super::{Form, Quantity, Unreadable};

/// A calendar date.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Date(jiff::civil::Date);

impl Date {
    /// The date of today on this computer's own clock and time zone.
    pub(crate) fn of_this_computer() -> Self {
        Self(jiff::ZonedDateTime::now().date())
    }

    /// How many days it is after an earlier one; less than 0 where it is before.
    pub fn days_after(self, earlier: Self) -> i32 {
        (self.0 - earlier.0).get_days()
    }

    /// The date so many days later, or earlier where it is less than 0; the last or first day of the calendar
    /// where it would lie outside.
    #[must_use]
    pub fn plus_days(self, days: i32) -> Self {
        Self(self.0.saturating_add(jiff::Span::new().days(days)))
    }

    /// How many days after Monday: 0 to 6.
    pub fn days_after_monday(self) -> i32 {
        i32::from(self.0.weekday().to_monday_zero_offset())
    }

    /// Days from 1 January 2000 on.
    pub fn day_number(self) -> i32 {
        self.days_after(Self::FIRST_OF_2000)
    }

    pub fn year(self) -> i16 {
        self.0.year()
    }

    /// From 1.
    pub fn month(self) -> u32 {
        u32::from(self.0.month().unsigned_abs())
    }

    /// From 1.
    pub fn day_of_month(self) -> u32 {
        u32::from(self.0.day().unsigned_abs())
    }

    /// The day that days are counted from.
    pub const FIRST_OF_2000: Self = Self(jiff::civil::date(2000, 1, 1));

    pub(crate) const fn from_civil(date: jiff::civil::Date) -> Self {
        Self(date)
    }

    /// The day for the arithmetic of time zones.
    pub(crate) const fn civil(self) -> jiff::civil::Date {
        self.0
    }

    /// Year, month and day.
    #[allow(
        clippy::cast_sign_loss,
        reason = "months and days count from 1, and no year here is before 1"
    )]
    pub fn parts(self) -> (u16, u8, u8) {
        (self.0.year().max(1) as u16, self.0.month() as u8, self.0.day() as u8)
    }

    /// "1 September 2027", as people write it.
    pub fn in_words(self) -> String {
        self.0.strftime("%-d %B %Y").to_string()
    }
}

impl Quantity for Date {
    const ASKED: &'static str = "a date, year first: 2027-09-01";

    fn read_quantity(text: &str) -> Result<Self, Unreadable> {
        text.trim().parse().map(Self).map_err(|_| {
            // 31/12/2026 is one, only written in another order.
            let is_ours = text.trim().starts_with(|c: char| c.is_ascii_digit())
                && text.trim().bytes().all(|c| c.is_ascii_digit() || c == b'-');
            let says =
                if is_ours { "is not a date in the calendar" } else { "can’t be read as a date" };
            Unreadable::new(format!("“{text}” {says}"), format!("Write {}.", Self::ASKED))
        })
    }

    fn form() -> Form {
        let pattern = "^\\s*[0-9]{4}-[0-9]{2}-[0-9]{2}\\s*$".to_owned();
        let tidy = |text: &str| Self::read_quantity(text).ok().map(|_| text.trim().to_owned());
        Form { asked: Self::ASKED, pattern, examples: &["2027-09-01"], bare: None, tidy }
    }
}

impl fmt::Display for Date {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_only_real_dates() {
        assert_eq!(Date::read_quantity("2028-02-29").unwrap().in_words(), "29 February 2028");
        let [first, last] =
            ["2028-02-28", "2028-03-01"].map(|day| Date::read_quantity(day).unwrap());
        assert_eq!((last.days_after(first), first.days_after(last)), (2, -2));
        for bad in ["2027-02-29", "1/9/2027", "2027-13-01", "soon"] {
            assert!(Date::read_quantity(bad).is_err(), "{bad}");
        }
    }
}
