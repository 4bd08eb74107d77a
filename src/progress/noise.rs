//! Whether a change is more than the measurement’s own noise.
//!
//! In: the tries of a class in one task. Out: the typical error of one try, the smallest change that
//! is worth anything, and a verdict on a child’s change. Source: Hopkins (2000), Measures of
//! reliability in sports medicine and science: for one person a change of 1.5 to 2 typical errors is
//! likely to be real. The stricter end is taken here. The tries of one day show the least of the
//! noise: what differs from day to day (shoes, floor, sleep) comes on top. The marks compared are
//! bests of several tries, which wobble less than single ones; the two lean against each other.

use std::collections::BTreeMap;

use super::entries::Day;
use crate::plan::marks::Mark;
use crate::plan::statistics::{
    pooled_typical_error, smallest_worthwhile_change, standard_deviation,
};

/// A change must be more than so many typical errors (Hopkins 2000: 1.5 to 2).
pub const ERRORS: f64 = 2.0;

/// Fewer children than this are not described as a class, since that would name someone; and fewer
/// differences say too little of noise. Our own choice, as the usual one for small cells.
pub const FEWEST: usize = 5;

/// The noise of a task, in steps of its rule.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Noise {
    /// Of one try; none of too few repeated tries.
    pub typical_error: Option<f64>,
    /// How many pairs of tries it is from.
    pub pairs: usize,
    pub smallest_worthwhile: Option<f64>,
}

/// What is said of a change.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// There are no two days to compare.
    Once,
    /// Too few repeated tries to know the noise.
    NoiseUnknown,
    TooClose,
    /// More than noise, yet less than is worth anything.
    TooSmall,
    Better,
    Worse,
}

impl Verdict {
    /// The key of its words in the catalogue.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Once => "once",
            Self::NoiseUnknown => "noise-unknown",
            Self::TooClose => "too-close",
            Self::TooSmall => "too-small",
            Self::Better => "better",
            Self::Worse => "worse",
        }
    }
}

/// The noise of a task, from the days of every child and the children’s latest bests.
pub fn plan_noise<'d>(days: impl Iterator<Item = &'d Day>, latest: &[f64]) -> Noise {
    let mut pairs: BTreeMap<usize, Vec<f64>> = BTreeMap::new();
    for day in days {
        for (number, attempt) in day {
            let next = day.get(&(number + 1)).and_then(|attempt| attempt.mark());
            if let (Some(first), Some(second)) = (attempt.mark(), next) {
                pairs.entry(*number).or_default().push(steps(second) - steps(first));
            }
        }
    }
    let pairs: Vec<Vec<f64>> = pairs.into_values().collect();
    let count = pairs.iter().map(Vec::len).sum();
    let between = (latest.len() >= FEWEST).then(|| standard_deviation(latest)).flatten();
    Noise {
        typical_error: if count >= FEWEST { pooled_typical_error(&pairs) } else { None },
        pairs: count,
        smallest_worthwhile: between.map(smallest_worthwhile_change),
    }
}

/// Judges how many steps better the last mark is than the first.
pub fn judge_gain(gain: i64, noise: &Noise) -> Verdict {
    let Some(error) = noise.typical_error else { return Verdict::NoiseUnknown };
    let size = steps(Mark::from_steps(gain.saturating_abs()));
    if size <= ERRORS * error {
        Verdict::TooClose
    } else if noise.smallest_worthwhile.is_some_and(|smallest| size < smallest) {
        Verdict::TooSmall
    } else if gain > 0 {
        Verdict::Better
    } else {
        Verdict::Worse
    }
}

/// A mark as a number to reckon with.
#[allow(clippy::cast_precision_loss, reason = "no mark has more than 1 000 000 000 steps")]
pub const fn steps(mark: Mark) -> f64 {
    mark.steps() as f64
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::marks::Attempt;

    fn day(marks: &[i64]) -> Day {
        let attempt = |steps: &i64| match steps {
            0 => Attempt::NoMark,
            steps => Attempt::Valid(Mark::from_steps(*steps)),
        };
        marks.iter().map(attempt).enumerate().map(|(at, own)| (at + 1, own)).collect()
    }

    #[test]
    fn the_worked_example_from_two_tries() {
        let days = [day(&[10, 12]), day(&[10, 9]), day(&[10, 13]), day(&[10, 10]), day(&[10, 11])];
        let noise = plan_noise(days.iter(), &[1.0, 2.0]);
        assert!((noise.typical_error.unwrap() - 1.1180).abs() < 5e-5);
        assert_eq!((noise.pairs, noise.smallest_worthwhile), (5, None));
    }

    #[test]
    fn a_foul_breaks_a_pair_and_few_pairs_say_nothing() {
        let noise = plan_noise([day(&[10, 0, 12]), day(&[10, 12])].iter(), &[]);
        assert_eq!((noise.pairs, noise.typical_error), (1, None));
        assert_eq!(judge_gain(50, &noise), Verdict::NoiseUnknown);
    }

    #[test]
    fn verdicts() {
        let noise = Noise { typical_error: Some(2.0), pairs: 9, smallest_worthwhile: Some(6.0) };
        let expected = [
            (4, Verdict::TooClose),
            (-4, Verdict::TooClose),
            (5, Verdict::TooSmall),
            (6, Verdict::Better),
            (-6, Verdict::Worse),
        ];
        for (gain, verdict) in expected {
            assert_eq!(judge_gain(gain, &noise), verdict, "{gain}");
        }
    }
}
