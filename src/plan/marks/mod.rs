//! Marks: what was jumped, thrown, run or counted, and what follows from it.
//!
//! In: a mark as someone wrote it, and the rule of its event. Out: the mark as a whole number of
//! the rule’s smallest step, the best of several attempts, places, points, a share of a reference
//! mark and the change since an earlier one. No mark ever passes through a binary fraction: in
//! those, two-decimal metres round down to the wrong centimetre for 69 values below ten metres.
//!
//! A fitness mark is private, no grade and no comparison between children: places are for
//! those who chose to compete, change is against a child’s own earlier mark.

mod best;
mod change;
mod combined;
mod formula;
mod mark;
mod number;
mod rank;
mod reading;
mod reference;
mod refusal;
mod rule;
mod spelling;
mod table;

pub use best::{PersonalBest, STANDINGS, Standing, best_of, plan_personal_best};
pub use change::{Change, plan_change};
pub use combined::{CombinedEvent, MEN, WOMEN};
pub use formula::{Formula, Kind};
pub use mark::{Attempt, Mark};
pub use rank::plan_places;
pub use reading::{read_attempt, read_mark, read_returned, read_returned_mark};
pub use reference::plan_share;
pub use refusal::Refusal;
pub use rule::{Bias, Form, MarkRule, MarkUnit, Rounding};
pub use spelling::{Spelling, Then};
pub use table::{PointsTable, Unsorted};
