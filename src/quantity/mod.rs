//! Quantities with their units in the type: times, lengths, masses, volumes,
//! speeds, angles, ages and dates.
//!
//! All are whole numbers of the smallest step (seconds, millimetres, milligrams), so that sums are exact.
//! Each reads the short forms a teacher writes ("1 min 30 s", "2.4 m", "400 g") and says, when it
//! can't, what was wrong and what to write instead.

mod ages;
mod amount;
mod angle;
mod clock_time;
mod date;
mod decimal;
mod duration;
mod form;
mod length;
mod mass;
mod range;
mod speed;
mod volume;

pub use ages::Ages;
pub use angle::Angle;
pub use clock_time::ClockTime;
pub use date::Date;
pub use decimal::Decimal;
pub use duration::Duration;
pub use form::Form;
pub use length::Length;
pub use mass::Mass;
pub use range::Range;
pub use speed::Speed;
pub use volume::Volume;

/// Why a quantity could not be read, and what to write instead.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unreadable {
    pub says: String,
    pub way_out: String,
}

impl Unreadable {
    pub(crate) fn new(says: impl Into<String>, way_out: impl Into<String>) -> Self {
        Self { says: says.into(), way_out: way_out.into() }
    }
}

/// A quantity that can be read from the short form a teacher writes.
pub trait Quantity: Sized {
    /// What is asked for, in words, with an example: "a time, such as 3 min or 1 min 30 s".
    const ASKED: &'static str;

    /// Reads the short form.
    ///
    /// # Errors
    /// What was wrong and what to write instead.
    fn read_quantity(text: &str) -> Result<Self, Unreadable>;

    /// How it is written.
    fn form() -> Form;
}
