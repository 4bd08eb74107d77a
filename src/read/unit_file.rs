//! A unit file as it is written: sessions on weeks and days, in `units/*.yaml`.

use super::desk::{Desk, FromNode};
use super::node::{Node, Value};
use super::record::record;
use super::shape::Shape;
use super::text::Line;
use super::words::Weekday;
use crate::place::Placed;
use crate::quantity::{Ages, ClockTime, Date};

record! {
    /// One unit of work.
    pub struct UnitDoc = "a unit" {
        /// What the unit is called.
        title: Placed<Line> = "From the brook to the harbour",
        /// One or two sentences to the family.
        summary: Option<Placed<Line>> = "Leap, catch and roll, once a week.",
        /// The ages it is for.
        ages: Option<Placed<Ages>>,
        /// The first day; its week is week 1.
        starts: Placed<Date>,
        /// How many weeks it takes, those with no school left out.
        weeks: Placed<u32>,
        /// The days of each week that a session is done on, with the time it begins at.
        days: Vec<UnitDayDoc>,
        /// The time zone, by its name in the IANA list: Europe/London. Without it times are the family’s own.
        time_zone: Option<Placed<Line>> = "Europe/London",
        /// Holidays and other days without school.
        no_school: Vec<NoSchoolDoc>,
        /// The sessions; those without a week are put in the best order on the days that are left.
        sessions: Vec<UnitSessionDoc>,
        /// Curriculum statements that the unit covers, with sessions chosen for them.
        cover: Option<Placed<CoverDoc>>,
        /// What families gather, and by which week; where nothing is said, everything before the first day.
        gather: Vec<GatherStepDoc>,
        /// How review questions come back.
        bring_back: Option<BringBackDoc>,
        /// The day this plan was last changed, so that calendars know the newer one.
        changed: Option<Placed<Date>>,
    }
}

record! {
    /// A day of the week that sessions are done on.
    pub struct UnitDayDoc = "a day of the unit" {
        /// Monday to Sunday, in small letters.
        day: Placed<Weekday>,
        /// When the session begins: 9:30.
        at: Placed<ClockTime>,
    }
}

record! {
    /// Days without school.
    pub struct NoSchoolDoc = "days without school" {
        /// The first day.
        from: Placed<Date>,
        /// The last day, where there are several.
        to: Option<Placed<Date>>,
        /// What they are: half-term.
        what: Option<Placed<Line>> = "Half-term",
    }
}

record! {
    /// Curriculum statements to cover.
    pub struct CoverDoc = "what the unit covers" {
        /// Codes of curriculum.yaml.
        statements: Vec<Placed<Line>> = "ks2-games",
        /// The most sessions that may be added for them; where it is not said, as many as there are days left.
        at_most: Option<Placed<u32>>,
    }
}

record! {
    /// What families gather by a week.
    pub struct GatherStepDoc = "what to gather by a week" {
        /// The week it is there from on.
        week: Placed<u32>,
        /// Names of things, as the sessions have them.
        things: Vec<Placed<Line>> = "tape measure",
    }
}

record! {
    /// How review questions come back.
    pub struct BringBackDoc = "how review questions come back" {
        /// Days from the session to the first time, 3 where it is not said.
        after_days: Option<Placed<u32>>,
        /// How many times longer each wait is than the one before, 2 where it is not said.
        growth: Option<Placed<u32>>,
        /// The most that come back on one day, 3 where it is not said.
        a_day: Option<Placed<u32>>,
    }
}

record! {
    /// A session with its week and day.
    pub struct PlannedDoc = "a session of the unit" {
        /// The address of the session: athletics/brook-leap.
        session: Placed<Line> = "athletics/brook-leap",
        /// The week, from 1.
        week: Option<Placed<u32>>,
        /// The day of that week; where it is not said, the first that is free.
        day: Option<Placed<Weekday>>,
    }
}

/// A session of a unit: its address alone, or with its week and day.
#[derive(Clone, Debug)]
pub struct UnitSessionDoc(pub PlannedDoc);

impl FromNode for UnitSessionDoc {
    fn from_node(node: &Node, desk: &mut Desk) -> Option<Self> {
        if let Value::Scalar(_) = node.value {
            let session = Placed::<Line>::from_node(node, desk)?;
            return Some(Self(PlannedDoc { session, week: None, day: None }));
        }
        PlannedDoc::from_node(node, desk).map(Self)
    }
    fn shape() -> Shape {
        Shape::Either(Box::new(Line::shape()), &PlannedDoc::GROUP)
    }
}
