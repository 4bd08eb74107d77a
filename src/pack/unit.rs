//! A resolved unit of work: sessions over some weeks.

use super::id::SessionId;
use super::part::placed;
use crate::place::{FileId, Placed};
use crate::quantity::{Ages, ClockTime, Date};
use crate::read::Line;
use crate::read::words::Weekday;

/// One unit of work.
#[derive(Clone, Debug)]
pub struct Unit {
    /// The address of its page below `units`.
    pub id: SessionId,
    pub file: FileId,
    /// The language that its texts are written in, as a BCP 47 tag.
    pub language: String,
    /// It is a translation whose original has changed since.
    pub is_old_translation: bool,
    pub title: Placed<Line>,
    pub summary: Option<Placed<Line>>,
    pub ages: Option<Placed<Ages>>,
    pub starts: Placed<Date>,
    pub weeks: Placed<u32>,
    pub days: Vec<UnitDay>,
    /// By its name in the IANA list; without one, times are the family’s own.
    pub time_zone: Option<Placed<Line>>,
    pub no_school: Vec<NoSchool>,
    pub entries: Vec<UnitEntry>,
    pub cover: Option<Cover>,
    pub gather: Vec<GatherStep>,
    pub bring_back: BringBack,
    pub changed: Option<Placed<Date>>,
    /// Lists that were longer than any unit’s, and were cut.
    pub was_cut: bool,
}

/// A day of the week that sessions are done on.
#[derive(Clone, Debug)]
pub struct UnitDay {
    pub day: Placed<Weekday>,
    pub at: ClockTime,
}

/// Days without school, both ends included.
#[derive(Clone, Debug)]
pub struct NoSchool {
    pub from: Placed<Date>,
    pub to: Date,
    pub what: Option<Placed<Line>>,
}

/// A session that the unit names.
#[derive(Clone, Debug)]
pub struct UnitEntry {
    /// The address as it is written.
    pub named: Placed<Line>,
    /// Without a week, the program chooses.
    pub week: Option<Placed<u32>>,
    pub day: Option<Placed<Weekday>>,
}

/// Curriculum statements that the unit covers.
#[derive(Clone, Debug)]
pub struct Cover {
    pub statements: Vec<Placed<Line>>,
    /// The most sessions that may be added for them.
    pub at_most: Option<u32>,
}

/// What families gather by a week.
#[derive(Clone, Debug)]
pub struct GatherStep {
    pub week: Placed<u32>,
    pub things: Vec<Placed<Line>>,
}

/// How review questions come back; see [`crate::plan::unit::plan_returns`].
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BringBack {
    /// Days from the session to the first time.
    pub after_days: u32,
    /// How many times longer each wait is than the one before.
    pub growth: u32,
    /// The most on one day; 0 for none at all.
    pub a_day: u32,
}

impl Default for BringBack {
    /// Our own choice: in a unit of six weeks a question comes back three or four times.
    fn default() -> Self {
        Self { after_days: 3, growth: 2, a_day: 3 }
    }
}

impl Unit {
    /// Every CommonMark text of the unit, with its place.
    pub fn texts(&self) -> Vec<Placed<&str>> {
        let lines = std::iter::once(&self.title).chain(&self.summary);
        let mut texts: Vec<_> = lines.map(placed).collect();
        texts.extend(self.no_school.iter().filter_map(|days| days.what.as_ref()).map(placed));
        texts
    }

    /// The same unit with its texts in another language: what is planned stays that of the original.
    pub(super) fn say_as(&mut self, translated: Self) {
        self.language = translated.language;
        self.is_old_translation = translated.is_old_translation;
        self.title = translated.title;
        self.summary = translated.summary;
        for (days, said) in self.no_school.iter_mut().zip(translated.no_school) {
            days.what = said.what;
        }
    }

    /// The days without school that a date lies in.
    pub fn no_school_on(&self, date: Date) -> Option<&NoSchool> {
        self.no_school.iter().find(|days| (days.from.value..=days.to).contains(&date))
    }
}
