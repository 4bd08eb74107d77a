//! The days of a unit: which dates its weeks and days are, with those without school.
//!
//! Weeks begin on Monday (ISO 8601). Week 1 is the week of the first day. A week in which no day is left,
//! because of holidays or because it lies before the first day, is passed over and has no number.

use crate::pack::Unit;
use crate::quantity::{ClockTime, Date};
use crate::read::words::Weekday;

/// A unit is no longer than so many weeks: more than a school year.
pub const MOST_WEEKS: u32 = 60;

/// A day on which a session can be done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Slot {
    /// From 1.
    pub week: u32,
    pub date: Date,
    pub day: Weekday,
    pub at: ClockTime,
    /// It is a day without school, or before the first day.
    pub is_out: bool,
}

/// Every day of every week, in the order of time.
pub fn plan_slots(unit: &Unit) -> Vec<Slot> {
    let starts = unit.starts.value;
    let monday = starts.plus_days(-starts.days_after_monday());
    let wanted = unit.weeks.value.min(MOST_WEEKS);
    let mut slots = Vec::new();
    let mut week = 1;
    // Holidays are no longer than a year in all.
    for passed in 0..i32::try_from(MOST_WEEKS * 2).unwrap_or(i32::MAX) {
        if week > wanted || unit.days.is_empty() {
            break;
        }
        let days = slots_of_week(unit, monday.plus_days(passed * 7), week);
        if days.iter().any(|slot| !slot.is_out) {
            slots.extend(days);
            week += 1;
        }
    }
    slots
}

fn slots_of_week(unit: &Unit, monday: Date, week: u32) -> Vec<Slot> {
    let slot = |day: &crate::pack::UnitDay| {
        let after = Weekday::ALL.iter().zip(0..).find(|(known, _)| **known == day.day.value);
        let date = monday.plus_days(after.map_or(0, |(_, days)| days));
        let is_out = date < unit.starts.value || unit.no_school_on(date).is_some();
        Slot { week, date, day: day.day.value, at: day.at, is_out }
    };
    unit.days.iter().map(slot).collect()
}
