//! What a file allows: findings that are known and meant to stay, each with its reason.

use super::record::record;
use super::text::Line;
use crate::place::Placed;
use crate::quantity::Date;

record! {
    /// A finding that is known and meant to stay.
    pub struct AllowDoc = "an allowance" {
        /// The code of the finding, as inspect tells it.
        finding: Placed<Line> = "slot-long",
        /// Why it may stay.
        why: Placed<Line> = "The club hour is 50 minutes, with a long cool-down.",
        /// The last day that it may, where that is not for good.
        until: Option<Placed<Date>>,
    }
}
