//! The key points of a task: how many there are, and how long each is to call out.

use super::words::words_of;

/// At most three key points a task, and one at a time: common practice. (At ages 6 to 9 one motor cue
/// helped where none did not: Pontes 2023.)
pub const MOST_CUES: usize = 3;

/// How much a child is asked to think of in one task.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CueLoad {
    /// The words of each key point, in their order.
    pub words: Vec<usize>,
}

impl CueLoad {
    /// How many key points there are.
    pub fn number(&self) -> usize {
        self.words.len()
    }

    /// Whether there are more than [`MOST_CUES`].
    pub fn is_too_many(&self) -> bool {
        self.number() > MOST_CUES
    }

    /// The words of the longest key point; zero where there is none.
    pub fn longest(&self) -> usize {
        self.words.iter().copied().max().unwrap_or(0)
    }
}

/// Counts the key points of one task, given as plain words.
pub fn plan_cues(points: &[&str]) -> CueLoad {
    CueLoad { words: points.iter().map(|point| words_of(point).count()).collect() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn key_points_are_counted_with_their_words() {
        let load = plan_cues(&["Toes touch, knee bends", "Eyes up", "Sink – and hold", "Push"]);
        assert_eq!(load.words, [4, 2, 3, 1]);
        assert_eq!((load.number(), load.longest()), (4, 4));
        assert!(load.is_too_many() && !plan_cues(&["Push"]).is_too_many());
        assert_eq!(plan_cues(&[]).longest(), 0);
    }
}
