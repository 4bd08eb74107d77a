//! A finding that a file says is meant to stay.

use crate::place::{Place, Placed};
use crate::quantity::Date;
use crate::read::Line;
use crate::read::allowance_file::AllowDoc;

/// A finding that is known and meant to stay.
#[derive(Clone, Debug)]
pub struct Allowance {
    /// The code of its rule.
    pub code: Placed<Line>,
    pub why: Placed<Line>,
    /// The last day that it counts.
    pub until: Option<Placed<Date>>,
}

impl Allowance {
    pub fn place(&self) -> Place {
        self.code.place
    }

    /// Whether its last day is over.
    pub fn is_past(&self, today: Date) -> bool {
        self.until.as_ref().is_some_and(|until| until.value < today)
    }
}

impl From<AllowDoc> for Allowance {
    fn from(doc: AllowDoc) -> Self {
        Self { code: doc.finding, why: doc.why, until: doc.until }
    }
}
