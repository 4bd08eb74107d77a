//! Time zones of a unit: the rules are those of the IANA database built into the program, so that a calendar
//! is the same whichever computer makes it.

use jiff::tz::{TimeZone, TimeZoneDatabase};

use super::Slot;
use crate::quantity::{ClockTime, Date};

/// A change of the clocks, or what holds before the first.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Observance {
    /// The time on the old clocks at which it begins: date, hours, minutes, seconds.
    pub onset: (Date, [u32; 3]),
    /// Seconds east of Greenwich before and after.
    pub offset_from: i32,
    pub offset_to: i32,
    pub name: String,
    pub is_daylight: bool,
}

/// Whether there is a time zone of a name.
pub fn has_time_zone(name: &str) -> bool {
    find_zone(name).is_some()
}

fn find_zone(name: &str) -> Option<TimeZone> {
    // Lower-case names would be found too; a calendar needs the name as it is in the list.
    let zone = TimeZoneDatabase::bundled().get(name.trim()).ok()?;
    (zone.iana_name() == Some(name.trim())).then_some(zone)
}

/// What holds at the first of these days, and each change of the clocks up to the last.
pub fn plan_observances(name: &str, slots: &[Slot]) -> Vec<Observance> {
    let (Some(zone), Some(first), Some(last)) = (find_zone(name), slots.first(), slots.last())
    else {
        return Vec::new();
    };
    let instant = |date: Date, time: ClockTime| {
        let time = jiff::civil::time(clock(time.hour()), clock(time.minute()), 0, 0);
        zone.to_timestamp(date.civil().to_datetime(time)).ok()
    };
    // A day on either side holds whatever stands on the first and the last day.
    let midnight = |date: Date| instant(date, ClockTime::MIDNIGHT);
    let (Some(from), Some(to)) =
        (midnight(first.date.plus_days(-1)), midnight(last.date.plus_days(2)))
    else {
        return Vec::new();
    };
    let before = zone.preceding(from).next().map(|change| change.timestamp());
    let within = zone.following(from).map(|change| change.timestamp()).take_while(|at| *at <= to);
    let changes = before.into_iter().chain(within).filter_map(|at| observe(&zone, at));
    let observances: Vec<Observance> = changes.collect();
    if before.is_some() {
        return observances;
    }
    let always = zone.to_offset_info(from);
    let ever = Observance {
        onset: (Date::FIRST_OF_2000, [0; 3]),
        offset_from: always.offset().seconds(),
        offset_to: always.offset().seconds(),
        name: always.abbreviation().to_owned(),
        is_daylight: always.dst().is_dst(),
    };
    std::iter::once(ever).chain(observances).collect()
}

fn clock(figure: u16) -> i8 {
    i8::try_from(figure).unwrap_or(0)
}

fn observe(zone: &TimeZone, at: jiff::Timestamp) -> Option<Observance> {
    let just_before = at.checked_sub(jiff::SignedDuration::from_secs(1)).ok()?;
    let (old, new) = (zone.to_offset_info(just_before), zone.to_offset_info(at));
    let onset = old.offset().to_datetime(at);
    let figure = |figure: i8| u32::from(figure.unsigned_abs());
    Some(Observance {
        onset: (
            Date::from_civil(onset.date()),
            [figure(onset.hour()), figure(onset.minute()), figure(onset.second())],
        ),
        offset_from: old.offset().seconds(),
        offset_to: new.offset().seconds(),
        name: new.abbreviation().to_owned(),
        is_daylight: new.dst().is_dst(),
    })
}
