//! The best of several attempts, and whether it is a personal best.

use serde::Serialize;

use super::{Attempt, Mark, plan_change};
use crate::read::words::Better;

/// The best mark; `None` where no attempt came to one.
pub fn best_of(attempts: &[Attempt], better: Better) -> Option<Mark> {
    let marks = attempts.iter().filter_map(|attempt| attempt.mark());
    match better {
        Better::More => marks.max(),
        Better::Less => marks.min(),
    }
}

/// How the best of today stands to all that was before.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Standing {
    /// No mark, neither today nor before.
    None,
    /// The first mark of all; it can only be a beginning.
    First,
    /// Better than every mark before.
    New,
    /// As good as the best before.
    Equalled,
    /// The best before was not reached.
    Stands,
}

/// What the gain over the best before says of today’s best: worse, as good, better.
pub const STANDINGS: [Standing; 3] = [Standing::Stands, Standing::Equalled, Standing::New];

/// The personal best as it is now, and how today stands to it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PersonalBest {
    pub standing: Standing,
    pub mark: Option<Mark>,
}

/// Sets today’s attempts against the earlier ones of the same child and rule.
pub fn plan_personal_best(earlier: &[Attempt], today: &[Attempt], better: Better) -> PersonalBest {
    let both = (best_of(earlier, better), best_of(today, better));
    let (standing, mark) = match both {
        (None, None) => (Standing::None, None),
        (None, today) => (Standing::First, today),
        (before, None) => (Standing::Stands, before),
        (Some(before), Some(mark)) => {
            let gain = plan_change(before, mark, better).gain;
            let standing = match gain.signum() {
                -1 => STANDINGS[0],
                0 => STANDINGS[1],
                _ => STANDINGS[2],
            };
            (standing, Some(if gain > 0 { mark } else { before }))
        }
    };
    PersonalBest { standing, mark }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn attempts(marks: &[i64]) -> Vec<Attempt> {
        let attempt = |steps: &i64| Attempt::Valid(Mark::from_steps(*steps));
        marks.iter().map(attempt).chain([Attempt::NoMark]).collect()
    }

    #[test]
    fn the_best_is_the_most_or_the_least() {
        let marks = attempts(&[140, 152, 147]);
        assert_eq!(best_of(&marks, Better::More), Some(Mark::from_steps(152)));
        assert_eq!(best_of(&marks, Better::Less), Some(Mark::from_steps(140)));
        assert_eq!(best_of(&[Attempt::NoMark], Better::More), None);
    }

    #[test]
    fn personal_bests() {
        let plan = |a: &[i64], b: &[i64], better| {
            let found = plan_personal_best(&attempts(a), &attempts(b), better);
            (found.standing, found.mark.map(Mark::steps))
        };
        assert_eq!(plan(&[150], &[149, 152], Better::More), (Standing::New, Some(152)));
        assert_eq!(plan(&[150], &[152], Better::Less), (Standing::Stands, Some(150)));
        assert_eq!(plan(&[150], &[149], Better::Less), (Standing::New, Some(149)));
        assert_eq!(plan(&[150], &[150], Better::More), (Standing::Equalled, Some(150)));
        assert_eq!(plan(&[], &[150], Better::More), (Standing::First, Some(150)));
        assert_eq!(plan(&[150], &[], Better::More), (Standing::Stands, Some(150)));
        assert_eq!(plan(&[], &[], Better::More), (Standing::None, None));
    }
}
