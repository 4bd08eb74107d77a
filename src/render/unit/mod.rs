//! Units of work for families and teachers: where their pages and sheets stand, what they say, and the calendar.

mod calendar;
mod content_lines;
mod coverage_table;
mod phrases;

pub use calendar::write_calendar;
pub use coverage_table::write_coverage;
pub use phrases::{
    UnitWords, active_share, clock, date_short, date_words, question_of, span_words, week_title,
};

use crate::pack::Unit;

/// The page of a unit below the published folder.
pub fn unit_page(unit: &Unit) -> String {
    format!("units/{}.html", unit.id)
}

/// Its calendar.
pub fn unit_calendar(unit: &Unit) -> String {
    format!("units/{}.ics", unit.id)
}

/// The folder of its sheets.
fn sheet_of(unit: &Unit, name: &str) -> String {
    format!("print/units/{}/{name}.pdf", unit.id)
}

/// The poster of the term.
pub fn unit_poster(unit: &Unit) -> String {
    sheet_of(unit, "poster")
}

/// The questions that come back.
pub fn unit_remember(unit: &Unit) -> String {
    sheet_of(unit, "remember")
}

/// What to gather once for the unit.
pub fn unit_gather(unit: &Unit) -> String {
    sheet_of(unit, "gather")
}
