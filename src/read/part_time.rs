//! The time of a part: one figure, or work and rest in rounds, or counts at a tempo.

use super::desk::{Desk, FromNode};
use super::node::{Node, Value};
use super::record::record;
use super::shape::Shape;
use crate::place::Placed;
use crate::quantity::Duration;

/// The time of a part. Rest lies only between rounds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PartTime {
    pub explain: Duration,
    pub set_up: Duration,
    pub work: Duration,
    pub rest: Duration,
    pub rounds: u32,
    pub recover: Duration,
    /// Counts and their tempo a minute, where the work was written so.
    pub counts: Option<(u32, u32)>,
}

impl PartTime {
    /// A part that is one stretch of work.
    pub const fn of_work(work: Duration) -> Self {
        let none = Duration::ZERO;
        Self {
            explain: none,
            set_up: none,
            work,
            rest: none,
            rounds: 1,
            recover: none,
            counts: None,
        }
    }
}

record! {
    /// The time of a part as a group of keys.
    pub struct TimeDoc = "the time of a part" {
        /// Explaining and showing.
        explain: Option<Placed<Duration>>,
        /// Setting out.
        set_up: Option<Placed<Duration>>,
        /// One round of work.
        work: Option<Placed<Duration>>,
        /// Counts of one round, for dance and rhythm.
        counts: Option<Placed<u32>>,
        /// Counts a minute.
        tempo: Option<Placed<u32>>,
        /// The rest between two rounds.
        rest: Option<Placed<Duration>>,
        /// How many rounds, 1 where it is not said.
        rounds: Option<Placed<u32>>,
        /// Getting the breath back at the end.
        recover: Option<Placed<Duration>>,
    }
}

impl FromNode for PartTime {
    fn from_node(node: &Node, desk: &mut Desk) -> Option<Self> {
        if !matches!(node.value, Value::Fields(_)) {
            return Duration::from_node(node, desk).map(Self::of_work);
        }
        let written = TimeDoc::from_node(node, desk)?;
        let (work, counts) = read_work(&written, node, desk)?;
        let rounds = written.rounds.as_ref().map_or(1, |rounds| rounds.value);
        if rounds == 0 || rounds > 200 {
            desk.refuse(
                written.rounds.map_or(node.place, |rounds| rounds.place),
                format!("A part can’t have {rounds} rounds."),
                "Write how many times the work is done, from 1 to 200.",
            );
            return None;
        }
        let or_none = |time: Option<Placed<Duration>>| time.map_or(Duration::ZERO, |t| t.value);
        Some(Self {
            explain: or_none(written.explain),
            set_up: or_none(written.set_up),
            work,
            rest: or_none(written.rest),
            rounds,
            recover: or_none(written.recover),
            counts,
        })
    }
    fn shape() -> Shape {
        Shape::Either(Box::new(Duration::shape()), &TimeDoc::GROUP)
    }
}

/// Work is written as a time, or as counts at a tempo (64 counts at 112 a minute).
fn read_work(
    written: &TimeDoc,
    node: &Node,
    desk: &mut Desk,
) -> Option<(Duration, Option<(u32, u32)>)> {
    match (&written.work, &written.counts, &written.tempo) {
        (Some(work), None, None) => Some((work.value, None)),
        (None, Some(counts), Some(tempo)) if tempo.value > 0 => {
            // A started second is a second: the music is not cut.
            let seconds = (counts.value * 60).div_ceil(tempo.value);
            Some((Duration::from_seconds(seconds), Some((counts.value, tempo.value))))
        }
        (None, None, None) => {
            let none = Duration::ZERO;
            Some((none, None))
        }
        (Some(_), _, _) => {
            desk.refuse(
                node.place,
                "The work is said twice, as a time and as counts.",
                "Keep one of them: work, or counts and tempo.",
            );
            None
        }
        _ => {
            desk.refuse(
                node.place,
                "Counts need a tempo, and a tempo needs counts.",
                "Write both, such as counts: 64 and tempo: 112 (counts a minute).",
            );
            None
        }
    }
}
