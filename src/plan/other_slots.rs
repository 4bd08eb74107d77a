//! The session in other slots: for shorter and longer times, which parts to keep, shorten or drop.
//!
//! A part in rounds changes by whole rounds, any other by half minutes; it stays between its shortest
//! and its longest. A part that says neither keeps its length and is kept or dropped whole.

use super::slot_fit::{Lengths, PartOffer, SlotFit, TooShort, plan_slot_fits};
use super::time::total_of;
use crate::pack::{Part, Session};
use crate::quantity::Duration;

/// Half minutes are easy to read off a clock: our own choice.
const STEP: Duration = Duration::from_seconds(30);

/// How many shorter slots are looked at, and how many longer.
const SHORTER: u32 = 4;
const LONGER: u32 = 2;

/// The session in one other slot.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OtherSlot {
    pub slot: Duration,
    pub fit: Result<FittedSession, TooShort>,
}

/// What becomes of each part.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FittedSession {
    pub parts: Vec<Fitted>,
    pub total: Duration,
    /// What is left of the slot.
    pub unfilled: Duration,
}

/// What becomes of one part.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fitted {
    Dropped,
    /// As long as ever.
    Kept(Duration),
    /// Another length, and the rounds it then has if it has any.
    Changed(Duration, Option<u32>),
}

/// Fits a session to slots five minutes apart (ten, for a long one), of those that change anything.
pub fn plan_other_slots(session: &Session) -> Vec<OtherSlot> {
    let offers: Vec<PartOffer> = session.parts.iter().map(offer_of).collect();
    let usual: Duration = session.parts.iter().map(usual_length).sum();
    let slots = other_slots(session.slot.value, longest_of(&offers) > usual);
    let fits = plan_slot_fits(&offers, &slots);
    let mut planned: Vec<OtherSlot> = slots
        .into_iter()
        .zip(fits)
        .map(|(slot, fit)| OtherSlot { slot, fit: fit.map(|fit| read_choices(session, &fit)) })
        .collect();
    // One slot that is too short says where the bounds are; shorter ones say nothing more.
    let mut misses = 0;
    planned.retain(|other| {
        misses += u32::from(other.fit.is_err());
        misses <= 1 || other.fit.is_ok()
    });
    planned
}

/// The slots to look at: shorter ones from the longest down, then longer ones.
fn other_slots(slot: Duration, can_grow: bool) -> Vec<Duration> {
    let step = if slot > Duration::from_minutes(45) { 600 } else { 300 };
    let next_below = slot.seconds().saturating_sub(1) / step;
    let shorter = (0..SHORTER).filter_map(|n| next_below.checked_sub(n)).filter(|n| *n > 0);
    let longer = (1..=LONGER).filter(|_| can_grow).map(|n| slot.seconds() / step + n);
    shorter.chain(longer).map(|n| Duration::from_seconds(n * step)).collect()
}

fn longest_of(offers: &[PartOffer]) -> Duration {
    offers.iter().map(|offer| offer.lengths.longest()).sum()
}

fn usual_length(part: &Part) -> Duration {
    part.time.as_ref().map_or(Duration::ZERO, |time| total_of(time))
}

/// A part as it is offered to a slot.
pub fn offer_of(part: &Part) -> PartOffer {
    PartOffer {
        lengths: lengths_of(part),
        essential: part.lengths.essential,
        worth: part.lengths.worth.value.clamp(1, 5),
    }
}

/// Every length a part may have: steps down from its usual length to its shortest, and up to its longest.
fn lengths_of(part: &Part) -> Lengths {
    let usual = usual_length(part).seconds();
    let step = round_of(part).unwrap_or(STEP).seconds();
    let bound = |written: Option<&crate::place::Placed<Duration>>| {
        written.map_or(usual, |length| length.value.seconds())
    };
    let shortest = bound(part.lengths.shortest.as_ref()).min(usual);
    let longest = bound(part.lengths.longest.as_ref()).max(usual);
    let fewer_rounds = round_of(part).map_or(u32::MAX, |_| rounds_of(part).saturating_sub(1));
    let down = ((usual - shortest) / step).min(fewer_rounds);
    let up = (longest - usual) / step;
    Lengths {
        least: Duration::from_seconds(usual - down * step),
        step: Duration::from_seconds(step),
        count: down + up,
    }
}

fn rounds_of(part: &Part) -> u32 {
    part.time.as_ref().map_or(1, |time| time.rounds)
}

/// One round of work and the rest after it, of a part with several.
fn round_of(part: &Part) -> Option<Duration> {
    let time = part.time.as_ref().filter(|time| time.rounds > 1)?;
    Some(time.work + time.rest).filter(|round| !round.is_zero())
}

fn read_choices(session: &Session, fit: &SlotFit) -> FittedSession {
    let parts = session.parts.iter().zip(&fit.choices).map(|(part, choice)| {
        let usual = usual_length(part);
        match choice {
            None => Fitted::Dropped,
            Some(length) if *length == usual => Fitted::Kept(*length),
            Some(length) => Fitted::Changed(*length, changed_rounds(part, usual, *length)),
        }
    });
    FittedSession { parts: parts.collect(), total: fit.total, unfilled: fit.unfilled }
}

fn changed_rounds(part: &Part, usual: Duration, length: Duration) -> Option<u32> {
    let round = round_of(part)?;
    let change = usual.apart(length).seconds() / round.seconds();
    let rounds = rounds_of(part);
    Some(if length < usual { rounds.saturating_sub(change) } else { rounds + change })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn slots_lie_five_minutes_apart() {
        let minutes = |slot, grows| -> Vec<u32> {
            let slots = other_slots(Duration::from_minutes(slot), grows);
            slots.into_iter().map(|slot| slot.seconds() / 60).collect()
        };
        assert_eq!(minutes(30, true), [25, 20, 15, 10, 35, 40]);
        assert_eq!(minutes(15, false), [10, 5]);
        assert_eq!(minutes(22, true), [20, 15, 10, 5, 25, 30]);
        assert_eq!(minutes(60, false), [50, 40, 30, 20]);
    }
}
