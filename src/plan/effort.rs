//! The effort plan: minutes of light, moderate and vigorous work and of rest, the longest time with
//! nobody moving, and work against rest. All of it follows from the efforts that the session names:
//! an estimate, nothing measured, and never told in calories.

use std::collections::BTreeMap;

use super::TimePlan;
use crate::pack::{Part, Session};
use crate::quantity::{Ages, Duration};
use crate::read::PartTime;
use crate::read::words::Effort;

/// An average of at least 60 minutes a day of moderate to vigorous activity for ages 5 to 17 (WHO
/// guidelines on physical activity and sedentary behaviour, 2020).
pub const ACTIVE_A_DAY: Duration = Duration::from_minutes(60);

/// How hard a session is and for how long.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct EffortPlan {
    /// Work by its effort; what is called rest counts as rest.
    pub light: Duration,
    pub moderate: Duration,
    pub vigorous: Duration,
    /// Rests between rounds, getting the breath back, and parts that are rest altogether.
    pub rest: Duration,
    /// Explaining and setting out.
    pub talk: Duration,
    /// Work of parts that name no effort.
    pub unsaid: Duration,
    /// The longest time on end with nobody moving.
    pub longest_still: Still,
    /// One a part, for parts with rests between rounds.
    pub rhythms: Vec<Option<Rhythm>>,
}

/// A time with nobody moving.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Still {
    pub length: Duration,
    /// From the beginning of the session.
    pub start: Duration,
    /// The part it begins in.
    pub part: usize,
}

/// One round of work against the rest after it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rhythm {
    pub work: Duration,
    pub rest: Duration,
}

impl Rhythm {
    /// The rest for each unit of work, in tenths, rounded half up: 1:1.5 is 15.
    pub fn rest_for_one(self) -> u32 {
        let (work, rest) = (self.work.seconds().max(1), self.rest.seconds());
        (rest * 20 + work) / (work * 2)
    }
}

impl EffortPlan {
    /// Moderate and vigorous work together.
    pub fn active(&self) -> Duration {
        self.moderate + self.vigorous
    }
}

/// Adds up the efforts of a session.
pub fn plan_effort(session: &Session, time: &TimePlan) -> EffortPlan {
    let mut plan = EffortPlan::default();
    for (part, span) in session.parts.iter().zip(&time.spans) {
        let of = match part.effort.as_ref().map(|effort| effort.value) {
            Some(Effort::Light) => &mut plan.light,
            Some(Effort::Moderate) => &mut plan.moderate,
            Some(Effort::Vigorous) => &mut plan.vigorous,
            Some(Effort::Rest) => &mut plan.rest,
            None => &mut plan.unsaid,
        };
        *of = *of + span.work;
        plan.rest = plan.rest + span.rest;
        plan.talk = plan.talk + span.talk;
        plan.rhythms.push(part.time.as_ref().and_then(|time| rhythm_of(time)));
    }
    plan.longest_still = longest_still(&session.parts);
    plan
}

fn rhythm_of(time: &PartTime) -> Option<Rhythm> {
    let has_rests = time.rounds > 1 && !time.rest.is_zero();
    has_rests.then_some(Rhythm { work: time.work, rest: time.rest })
}

/// The longest run of explaining, setting out, resting and recovering, over the bounds of parts.
fn longest_still(parts: &[Part]) -> Still {
    let mut clock = Watch::default();
    for (index, part) in parts.iter().enumerate() {
        let Some(time) = &part.time else { continue };
        let is_rest = part.effort.as_ref().is_some_and(|effort| effort.value == Effort::Rest);
        clock.stand_still(time.explain + time.set_up, index);
        // Two rounds show what all do: rest is the same between any two.
        for round in 0..time.rounds.min(2) {
            if round > 0 {
                clock.stand_still(time.rest, index);
            }
            if is_rest {
                clock.stand_still(time.work, index);
            } else {
                clock.move_on(time.work);
            }
        }
        let skipped = time.rounds.saturating_sub(2);
        let more = (time.work + time.rest) * skipped;
        if is_rest {
            clock.stand_still(more, index);
        } else {
            clock.move_on(more);
        }
        clock.stand_still(time.recover, index);
    }
    clock.longest
}

/// Runs through a session and keeps the longest time of standing still.
#[derive(Default)]
struct Watch {
    now: Duration,
    since: Still,
    longest: Still,
}

impl Watch {
    fn stand_still(&mut self, length: Duration, part: usize) {
        if self.since.length.is_zero() {
            self.since = Still { length: Duration::ZERO, start: self.now, part };
        }
        self.since.length = self.since.length + length;
        self.now = self.now + length;
        if self.since.length > self.longest.length {
            self.longest = self.since;
        }
    }

    fn move_on(&mut self, length: Duration) {
        self.now = self.now + length;
        if !length.is_zero() {
            self.since = Still::default();
        }
    }
}

/// The least and the most that one round of vigorous work usually lasts to begin with, by the oldest:
/// common practice, with as much rest. Children tire less and recover faster than untrained adults
/// (Ratel 2004), so one to one is a start.
pub fn usual_work(ages: Ages) -> (Duration, Duration) {
    let seconds = match ages.oldest {
        ..=7 => (10, 20),
        8..=11 => (20, 30),
        _ => (30, 40),
    };
    (Duration::from_seconds(seconds.0), Duration::from_seconds(seconds.1))
}

/// The effort with the most seconds; of two alike the harder.
pub fn main_effort(session: &Session, time: &TimePlan) -> Option<Effort> {
    let mut seconds: BTreeMap<Effort, u32> = BTreeMap::new();
    for (part, span) in session.parts.iter().zip(&time.spans) {
        if let Some(effort) = &part.effort {
            *seconds.entry(effort.value).or_default() += span.total.seconds();
        }
    }
    seconds
        .into_iter()
        .max_by_key(|(effort, seconds)| (*seconds, *effort))
        .map(|(effort, _)| effort)
}
