//! The calendar of a unit (iCalendar, RFC 5545): an event for each session, for a family to take over.
//!
//! A second import moves an event and never doubles it: its UID is made from the unit, the session and which
//! time it is done, not from its date. DTSTAMP and SEQUENCE come from the day named under `changed`, not from
//! a clock: SEQUENCE counts the days from 1 January 2000 to it, so that a later plan has a higher one. Times
//! stand in the unit’s time zone with its VTIMEZONE, so that they stay the same on the clock when it changes;
//! without a time zone they are the family’s own (form 1 of 3.3.5). There is no alarm: that is the family’s choice.

use super::content_lines::ContentLines;
use super::question_of;
use crate::pack::{Session, Unit};
use crate::plan::unit::{Observance, PlannedDay, UnitPlan, plan_observances};
use crate::prose::plain_line;
use crate::quantity::{Date, Duration};
use crate::render::quantities::Said;
use crate::render::{Publication, page_path};
use crate::words::Filling;

/// Writes the calendar of a unit.
pub fn write_calendar(publication: &Publication<'_>, unit: &Unit, plan: &UnitPlan) -> Vec<u8> {
    let pack = publication.pack;
    let title = plain_line(&unit.title);
    let mut lines = ContentLines::default();
    lines.add("BEGIN", "VCALENDAR");
    lines.add("VERSION", "2.0");
    lines.add("PRODID", "-//homeground//PE at home//EN");
    lines.add("CALSCALE", "GREGORIAN");
    lines.add("METHOD", "PUBLISH");
    // RFC 7986 names it; older readers know the other name (common practice).
    lines.add_text("NAME", &title);
    lines.add_text("X-WR-CALNAME", &title);
    if let Some(zone) = &unit.time_zone {
        let observances = plan_observances(zone, &plan.slots);
        add_time_zone(&mut lines, zone, &observances);
    }
    for day in &plan.days {
        let session = &pack.sessions[day.session];
        add_event(&mut lines, publication, unit, day, session);
    }
    lines.add("END", "VCALENDAR");
    lines.into_bytes()
}

fn add_time_zone(lines: &mut ContentLines, zone: &str, observances: &[Observance]) {
    lines.add("BEGIN", "VTIMEZONE");
    lines.add_text("TZID", zone);
    for observance in observances {
        let kind = if observance.is_daylight { "DAYLIGHT" } else { "STANDARD" };
        let (date, [hours, minutes, seconds]) = observance.onset;
        lines.add("BEGIN", kind);
        lines.add("DTSTART", &format!("{}T{hours:02}{minutes:02}{seconds:02}", digits(date)));
        lines.add("TZOFFSETFROM", &offset(observance.offset_from));
        lines.add("TZOFFSETTO", &offset(observance.offset_to));
        lines.add_text("TZNAME", &observance.name);
        lines.add("END", kind);
    }
    lines.add("END", "VTIMEZONE");
}

fn add_event(
    lines: &mut ContentLines,
    publication: &Publication<'_>,
    unit: &Unit,
    day: &PlannedDay,
    session: &Session,
) {
    let changed = unit.changed.as_ref().unwrap_or(&unit.starts).value;
    let sequence = unit.changed.as_ref().map_or(0, |changed| changed.value.day_number().max(0));
    let name = unit
        .time_zone
        .as_ref()
        .map_or_else(|| "DTSTART".to_owned(), |zone| format!("DTSTART;TZID={zone}"));
    lines.add("BEGIN", "VEVENT");
    lines.add_text("UID", &uid(publication, unit, day, session));
    lines.add("DTSTAMP", &format!("{}T000000Z", digits(changed)));
    lines.add("SEQUENCE", &sequence.to_string());
    // Past midnight a second session of a day ends the day.
    let begins = day.begins.min(24 * 60 - 1);
    lines.add(&name, &format!("{}T{:02}{:02}00", digits(day.slot.date), begins / 60, begins % 60));
    lines.add("DURATION", &duration(session.slot.value));
    lines.add_text("SUMMARY", &plain_line(&session.title));
    lines.add_text("DESCRIPTION", &description(publication, day, session));
    if let Some(site) = &publication.pack.address {
        let folder = &publication.editions[publication.edition].folder;
        let page = page_path(&session.id);
        let address = format!("{}/{folder}{page}", site.trim_end_matches('/'));
        lines.add("URL", &encode(&address));
    }
    lines.add("TRANSP", "OPAQUE");
    lines.add("END", "VEVENT");
}

/// Globally unique where the pack names its address (RFC 5545, 3.8.4.7).
fn uid(publication: &Publication<'_>, unit: &Unit, day: &PlannedDay, session: &Session) -> String {
    let pack = publication.pack;
    let address = pack.address.as_ref().map(ToString::to_string);
    let host = address.as_deref().and_then(|address| address.split("//").nth(1)?.split('/').next());
    let host = host.unwrap_or("pe-at-home.invalid");
    format!("{}.{}.{}@{host}", unit.id, session.id, day.occurrence).replace('/', ".")
}

/// Letters outside ASCII as their octets (RFC 3986, 2.1): an address has no others.
fn encode(address: &str) -> String {
    let letter = |letter: char| match letter {
        '!'..='~' => letter.to_string(),
        _ => letter.to_string().bytes().map(|byte| format!("%{byte:02X}")).collect(),
    };
    address.chars().map(letter).collect()
}

/// How long, what to get out, and what comes back to be remembered.
fn description(publication: &Publication<'_>, day: &PlannedDay, session: &Session) -> String {
    let words = &publication.words;
    let mut said = vec![session.slot.say(words)];
    let needs: Vec<String> = session
        .needs
        .iter()
        .filter(|need| !need.optional)
        .map(|need| plain_line(&need.counted()))
        .collect();
    if !needs.is_empty() {
        let needs = needs.join(", ");
        said.push(words.say_with("unit-things", &[("things", Filling::Text(&needs))]));
    }
    let questions = day.remember.iter().map(|back| question_of(publication.pack, *back).0);
    let questions: Vec<String> = questions.map(|ask| format!("– {ask}")).collect();
    if !questions.is_empty() {
        said.push(words.say("unit-remember"));
        said.extend(questions);
    }
    said.join("\n")
}

fn digits(date: Date) -> String {
    date.to_string().replace('-', "")
}

/// Seconds east of Greenwich as `+0100` (RFC 5545, 3.3.14).
fn offset(seconds: i32) -> String {
    let sign = if seconds < 0 { '-' } else { '+' };
    let seconds = seconds.unsigned_abs();
    let (hours, minutes, rest) = (seconds / 3600, seconds / 60 % 60, seconds % 60);
    let rest = if rest == 0 { String::new() } else { format!("{rest:02}") };
    format!("{sign}{hours:02}{minutes:02}{rest}")
}

/// A duration (RFC 5545, 3.3.6).
fn duration(length: Duration) -> String {
    let seconds = length.seconds();
    match (seconds / 60, seconds % 60) {
        (minutes, 0) => format!("PT{minutes}M"),
        (minutes, seconds) => format!("PT{minutes}M{seconds}S"),
    }
}
