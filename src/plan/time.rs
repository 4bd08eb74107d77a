//! The time plan: each part's total, when it starts, and the sum against the slot.
//!
//! total = explain + set-up + rounds · work + (rounds − 1) · rest + recover, in whole seconds. Rest
//! lies only between rounds: nobody rests after the last one, that is what `recover` is for.

use crate::pack::Session;
use crate::quantity::Duration;
use crate::read::PartTime;

/// How far the sum may be from the slot before anyone would notice: half a minute, our own choice.
pub const SLACK: Duration = Duration::from_seconds(30);

/// When one part starts and how long it lasts. A part without a time lasts nothing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PartSpan {
    /// From the beginning of the session.
    pub start: Duration,
    pub total: Duration,
    /// All rounds of work together.
    pub work: Duration,
    /// All rests between rounds and the recovery at the end.
    pub rest: Duration,
    /// Explaining and setting out.
    pub talk: Duration,
}

impl PartSpan {
    pub fn end(&self) -> Duration {
        self.start + self.total
    }

    /// The share of `whole`, in tenths of a per cent, rounded half up.
    pub fn share_of(&self, whole: Duration) -> u32 {
        share(self.total, whole)
    }
}

/// The time line of a session.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TimePlan {
    pub slot: Duration,
    pub total: Duration,
    /// One span a part, in the order of the session's parts.
    pub spans: Vec<PartSpan>,
}

impl TimePlan {
    /// Whether the parts fill the slot, give or take [`SLACK`].
    pub fn fills_slot(&self) -> bool {
        self.total.apart(self.slot) <= SLACK
    }

    /// Explaining and setting out, over all parts.
    pub fn talk(&self) -> Duration {
        self.spans.iter().map(|span| span.talk).sum()
    }
}

/// The whole time of one part.
pub fn total_of(time: &PartTime) -> Duration {
    time.explain + time.set_up + work_of(time) + rest_of(time)
}

fn work_of(time: &PartTime) -> Duration {
    time.work * time.rounds
}

fn rest_of(time: &PartTime) -> Duration {
    time.rest * time.rounds.saturating_sub(1) + time.recover
}

/// Lays the parts one after another.
pub fn plan_time(session: &Session) -> TimePlan {
    let mut start = Duration::ZERO;
    let none = PartTime::of_work(Duration::ZERO);
    let spans: Vec<PartSpan> = session
        .parts
        .iter()
        .map(|part| {
            let time = part.time.as_ref().map_or(&none, |time| &time.value);
            let span = PartSpan {
                start,
                total: total_of(time),
                work: work_of(time),
                rest: rest_of(time),
                talk: time.explain + time.set_up,
            };
            start = span.end();
            span
        })
        .collect();
    TimePlan { slot: session.slot.value, total: start, spans }
}

fn share(part: Duration, whole: Duration) -> u32 {
    if whole.is_zero() {
        return 0;
    }
    let (part, whole) = (u64::from(part.seconds()), u64::from(whole.seconds()));
    u32::try_from((part * 2000 + whole) / (whole * 2)).unwrap_or(u32::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rest_lies_only_between_rounds() {
        let mut time = PartTime::of_work(Duration::from_seconds(30));
        time.explain = Duration::from_seconds(60);
        time.rest = Duration::from_seconds(20);
        time.rounds = 4;
        time.recover = Duration::from_seconds(45);
        assert_eq!(total_of(&time).seconds(), 60 + 4 * 30 + 3 * 20 + 45);
        time.rounds = 1;
        assert_eq!(total_of(&time).seconds(), 60 + 30 + 45);
    }

    #[test]
    fn shares_are_rounded_half_up() {
        let share =
            |part, whole| share(Duration::from_seconds(part), Duration::from_seconds(whole));
        assert_eq!(share(1, 3), 333);
        assert_eq!(share(2, 3), 667);
        assert_eq!(share(5, 0), 0);
        assert_eq!(share(1, 2000), 1);
    }
}
