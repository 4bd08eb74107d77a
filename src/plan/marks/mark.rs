//! A mark, and an attempt that may have come to none.

/// A mark as a whole number of the smallest step of its [`MarkRule`](super::MarkRule): of
/// centimetres for a jump, of tenths of a second for a hand time. Marks of one rule compare and
/// subtract exactly; marks of different rules have nothing to do with each other.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Mark {
    steps: i64,
}

impl Mark {
    pub const fn from_steps(steps: i64) -> Self {
        Self { steps }
    }

    pub const fn steps(self) -> i64 {
        self.steps
    }
}

/// One attempt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Attempt {
    Valid(Mark),
    /// A foul, a miss or an attempt that was passed.
    NoMark,
}

impl Attempt {
    pub const fn mark(self) -> Option<Mark> {
        match self {
            Self::Valid(mark) => Some(mark),
            Self::NoMark => None,
        }
    }
}
