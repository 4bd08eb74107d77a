//! Points by formula: INT(A·(B − T)^C) for times, INT(A·(M − B)^C) for jumps and throws.
//!
//! Source: World Athletics, Scoring Tables for Combined Events.

use super::Mark;
use super::rule::{MarkRule, MarkUnit};

/// What the formula is for, and the unit its mark is put in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// A time in seconds; less is better.
    Track,
    /// A jump in centimetres.
    Jump,
    /// A throw in metres.
    Throw,
}

/// The formula of one event.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Formula {
    pub kind: Kind,
    pub a: f64,
    /// The mark worth nothing, as a whole number of thousandths of a second or of millimetres:
    /// the difference from it is then exact before it is raised to a power.
    pub b: i64,
    pub c: f64,
}

impl Formula {
    /// The points for a mark; 0 from the mark worth nothing on. `None` where the rule keeps
    /// marks of another kind: a count has no points for a jump.
    pub fn points(&self, mark: Mark, rule: MarkRule) -> Option<u32> {
        let fits = match self.kind {
            Kind::Track => matches!(rule.unit, MarkUnit::Second | MarkUnit::Minute),
            Kind::Jump | Kind::Throw => {
                matches!(rule.unit, MarkUnit::Centimetre | MarkUnit::Metre)
            }
        };
        fits.then(|| self.points_for(rule.thousandths(mark)))
    }

    fn points_for(&self, mark: i128) -> u32 {
        let over = match self.kind {
            Kind::Track => i128::from(self.b) - mark,
            Kind::Jump | Kind::Throw => mark - i128::from(self.b),
        };
        // Far past any mark the points stay at their most.
        let over = i32::try_from(over.clamp(0, i128::from(i32::MAX))).unwrap_or(i32::MAX);
        let units = f64::from(over) / self.kind.units();
        whole(self.a * units.powf(self.c))
    }
}

impl Kind {
    /// Thousandths in the unit of the formula.
    const fn units(self) -> f64 {
        match self {
            Self::Track | Self::Throw => 1000.0,
            Self::Jump => 10.0,
        }
    }
}

/// INT: what is after the point is dropped.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "dropping the fraction is the rule; the conversion stops at both ends of the type"
)]
fn whole(points: f64) -> u32 {
    points as u32
}
