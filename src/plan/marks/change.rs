//! The change against an earlier mark of the same child and rule.
//!
//! A change alone is no progress yet: marks differ from day to day by themselves.

use super::{Mark, MarkRule};
use crate::read::words::Better;

/// What changed, and whether it is for the better.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Change {
    /// Now less then, in steps of the rule: negative where the number fell.
    pub steps: i64,
    /// How many steps better; negative where it is worse.
    pub gain: i64,
}

/// The change from one mark to a later one.
pub fn plan_change(earlier: Mark, now: Mark, better: Better) -> Change {
    let steps = now.steps().saturating_sub(earlier.steps());
    let gain = match better {
        Better::More => steps,
        Better::Less => steps.saturating_neg(),
    };
    Change { steps, gain }
}

impl Change {
    /// The change with its sign, in the rule’s unit: "+5 cm", "−0.3 s", "0 cm".
    pub fn show(self, rule: MarkRule) -> String {
        let size = rule.show(Mark::from_steps(self.steps.saturating_abs()));
        match self.steps.signum() {
            1 => format!("+{size}"),
            -1 => format!("−{size}"),
            _ => size,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn less_is_better_for_times() {
        let (then, now) = (Mark::from_steps(97), Mark::from_steps(94));
        let change = plan_change(then, now, Better::Less);
        assert_eq!(change, Change { steps: -3, gain: 3 });
        assert_eq!(change.show(MarkRule::HAND_TIME_IN_S), "−0.3 s");
        assert_eq!(plan_change(then, now, Better::More).gain, -3);
        assert_eq!(plan_change(now, then, Better::More).show(MarkRule::DISTANCE_IN_CM), "+3 cm");
        assert_eq!(plan_change(now, now, Better::More).show(MarkRule::DISTANCE_IN_M), "0.00 m");
    }
}
