//! A mark as a share of a reference mark.
//!
//! The teacher names the reference and where it is from (an earlier mark of the child’s own, a
//! published median); populations differ widely, and no reference is “the” norm.

use super::Mark;
use crate::read::words::Better;

/// The share in tenths of a per cent, a half rounded up: mark ÷ reference where more is better,
/// reference ÷ mark where less is, so that above 1000 is always better than the reference.
/// Both marks are of the same rule. `None` where it would be a share of nothing.
pub fn plan_share(mark: Mark, reference: Mark, better: Better) -> Option<u32> {
    let (above, below) = match better {
        Better::More => (mark.steps(), reference.steps()),
        Better::Less => (reference.steps(), mark.steps()),
    };
    if above < 0 || below <= 0 {
        return None;
    }
    let (above, below) = (i128::from(above), i128::from(below));
    u32::try_from((2000 * above + below) / (2 * below)).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn better_than_the_reference_is_over_a_thousand() {
        let share = |mark, reference, better| {
            plan_share(Mark::from_steps(mark), Mark::from_steps(reference), better)
        };
        // 147.0 cm: median of the standing broad jump of boys of eleven in Hungary (PubMed 26054955).
        assert_eq!(share(160, 147, Better::More), Some(1088));
        assert_eq!(share(147, 147, Better::More), Some(1000));
        assert_eq!(share(90, 100, Better::Less), Some(1111));
        assert_eq!(share(1, 2000, Better::More), Some(1));
        assert_eq!(share(1, 0, Better::More), None);
        assert_eq!(share(0, 100, Better::Less), None);
        assert_eq!(share(i64::MAX, 1, Better::More), None);
    }
}
