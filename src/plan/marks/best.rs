//! The best of several attempts, and whether it is a personal best.

use super::{Attempt, Mark};
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
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PersonalBest {
    /// No mark, neither today nor before.
    None,
    /// The first mark of all; it can only be a beginning.
    First(Mark),
    /// Better than every mark before.
    New(Mark),
    /// As good as the best before.
    Equalled(Mark),
    /// The best before was not reached.
    Stands(Mark),
}

impl PersonalBest {
    /// The personal best as it is now.
    pub const fn mark(self) -> Option<Mark> {
        match self {
            Self::None => None,
            Self::First(mark) | Self::New(mark) | Self::Equalled(mark) | Self::Stands(mark) => {
                Some(mark)
            }
        }
    }
}

/// Sets today’s attempts against the earlier ones of the same child and rule.
pub fn plan_personal_best(earlier: &[Attempt], today: &[Attempt], better: Better) -> PersonalBest {
    match (best_of(earlier, better), best_of(today, better)) {
        (None, None) => PersonalBest::None,
        (None, Some(mark)) => PersonalBest::First(mark),
        (Some(mark), None) => PersonalBest::Stands(mark),
        (Some(before), Some(mark)) if before == mark => PersonalBest::Equalled(mark),
        (Some(before), Some(mark)) if (mark > before) == (better == Better::More) => {
            PersonalBest::New(mark)
        }
        (Some(before), Some(_)) => PersonalBest::Stands(before),
    }
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
        let mark = Mark::from_steps;
        let plan =
            |a: &[i64], b: &[i64], better| plan_personal_best(&attempts(a), &attempts(b), better);
        assert_eq!(plan(&[150], &[149, 152], Better::More), PersonalBest::New(mark(152)));
        assert_eq!(plan(&[150], &[152], Better::Less), PersonalBest::Stands(mark(150)));
        assert_eq!(plan(&[150], &[149], Better::Less), PersonalBest::New(mark(149)));
        assert_eq!(plan(&[150], &[150], Better::More), PersonalBest::Equalled(mark(150)));
        assert_eq!(plan(&[], &[150], Better::More), PersonalBest::First(mark(150)));
        assert_eq!(plan(&[150], &[], Better::More).mark(), Some(mark(150)));
        assert_eq!(plan(&[], &[], Better::More), PersonalBest::None);
    }
}
