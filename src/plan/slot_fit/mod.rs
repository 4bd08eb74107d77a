//! Fits a session to a slot of another length: which parts are kept, and how long each lasts.
//!
//! From the parts' allowed lengths, worths and a slot to the choice that is worth most; exact. This is the
//! multiple-choice knapsack problem, solved by dynamic programming over time (Kellerer, Pferschy and
//! Pisinger, “Knapsack Problems”, 2004, chapter 11). All lengths are first divided by their greatest common
//! divisor. A part costs one pass over the slot however many lengths it has (see `window`), and one table
//! serves any number of slots: about eight bytes for every part and every unit of the longest slot.

mod table;
mod window;

#[cfg(test)]
mod tests;

use table::Table;

use crate::quantity::Duration;

/// The most a part can be worth; anything above counts as this.
pub const MOST_WORTH: u32 = 5;

/// The lengths a part may have: `least`, and up to `count` steps of `step` more.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Lengths {
    pub least: Duration,
    pub step: Duration,
    /// The most steps that may be added: 0 for a part that has one length only.
    pub count: u32,
}

impl Lengths {
    /// A part that has one length only.
    pub const fn only(length: Duration) -> Self {
        Self { least: length, step: Duration::ZERO, count: 0 }
    }

    /// The longest the part may last.
    pub fn longest(&self) -> Duration {
        self.least + self.step * self.count
    }
}

/// A part as it is offered to a slot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PartOffer {
    pub lengths: Lengths,
    /// Never dropped: a warm-up, for example.
    pub essential: bool,
    /// What a second of it is worth beside a second of another part, from 1 to [`MOST_WORTH`].
    pub worth: u32,
}

/// The best choice for a slot.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SlotFit {
    /// One for each part, in order: how long it lasts, or none if it is dropped.
    pub choices: Vec<Option<Duration>>,
    pub total: Duration,
    /// The sum of worth × seconds over the parts that are kept.
    pub worth: u64,
    /// What is left of the slot.
    pub unfilled: Duration,
}

/// The essential parts at their shortest are longer than the slot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TooShort {
    pub by: Duration,
}

/// Chooses parts and lengths for one slot.
///
/// The choice has the largest sum of worth × seconds; among equals it keeps more parts; among those the first
/// part in which two choices differ decides: kept before dropped, longer before shorter.
///
/// # Errors
/// By how much the slot is too short for the essential parts.
pub fn plan_slot_fit(parts: &[PartOffer], slot: Duration) -> Result<SlotFit, TooShort> {
    room_beside_essentials(parts, slot)?;
    Ok(read_fit(parts, &Table::of(parts, slot), slot))
}

/// Chooses parts and lengths for several slots, each as [`plan_slot_fit`] would.
pub fn plan_slot_fits(parts: &[PartOffer], slots: &[Duration]) -> Vec<Result<SlotFit, TooShort>> {
    let table = Table::of(parts, slots.iter().copied().max().unwrap_or_default());
    let fit = |slot| room_beside_essentials(parts, slot).map(|()| read_fit(parts, &table, slot));
    slots.iter().map(|slot| fit(*slot)).collect()
}

fn room_beside_essentials(parts: &[PartOffer], slot: Duration) -> Result<(), TooShort> {
    let essential = parts.iter().filter(|part| part.essential).map(|part| part.lengths.least);
    let asked: Duration = essential.sum();
    if asked > slot { Err(TooShort { by: asked.apart(slot) }) } else { Ok(()) }
}

fn read_fit(parts: &[PartOffer], table: &Table, slot: Duration) -> SlotFit {
    let choices = table.choices(slot);
    let total: Duration = choices.iter().flatten().copied().sum();
    let worth = parts.iter().zip(&choices).map(|(part, choice)| worth_of(part, *choice)).sum();
    SlotFit { choices, total, worth, unfilled: slot.apart(total) }
}

fn worth_of(part: &PartOffer, choice: Option<Duration>) -> u64 {
    u64::from(part.worth.min(MOST_WORTH)) * u64::from(choice.unwrap_or_default().seconds())
}
