//! Fits sessions to homes: which parts, in which version, on which floor, how long and with which things.
//!
//! **The model.** A session is a row of parts, a home a time, some floors and a stock of things. A choice
//! leaves each part out or keeps it in one of its *versions* (as written, or one of its `alternatives`) for one
//! of its lengths, from its shortest to its usual one: no part grows. It must keep to this:
//!
//! 1. Essential parts stay, and at least one part besides warm-up and cool-down: those alone are no session.
//! 2. The lengths add up to no more than the home’s minutes, nor than the session’s own slot.
//! 3. A version is done only where it can be done safely: its footprint fits a floor of the home with the right
//!    place, surface and headroom, and it answers the home’s needs (`doable`).
//! 4. Every thing that a kept version uses is there, held from the first kept part that uses it to the last,
//!    and nothing is two things at once. Only what suits counts: a misfit is never handed out.
//!
//! Best is, in this order: the largest sum of worth × seconds; the most parts; the fewest versions other than
//! as written; the fewest optional things missing; the least unsuitability of what stands in.
//!
//! **How it is solved.** Whether a version can be done on a floor depends on nothing else, so floors are looked
//! at first and chosen last (`floors`). Things and time meet only in which parts are kept. A branch and bound
//! (Land and Doig 1960; `choose`) decides part after part. The slot’s own optimum over what is still open bounds
//! worth and parts from above (`plan::slot_fit`), the assignment of what is already kept bounds the rest from
//! below (`plan::assign`): both only get worse as more is decided. The answer is exact and says so; a hostile
//! question is broken off after a fixed number of steps, and then says that too.

mod choose;
mod class;
mod doable;
mod floors;
mod lend;
mod model;
mod reasons;
mod relax;
mod stock;

#[cfg(test)]
mod tests;

pub use choose::{Choice, Chosen, Unfit, plan_choice};
pub use class::{ClassPlan, FittedHome, HomePlan, Rethink, SessionPlan, plan_class};
pub use doable::Why;
pub use lend::{Lending, plan_lending};
pub use model::{Model, PartModel, Version, WantModel};
pub use reasons::LeftOut;
pub use relax::OneThing;
pub use stock::Cupboard;
