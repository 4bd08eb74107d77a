//! Points by a table of steps that the teacher makes: from this mark on, so many points.

use super::Mark;
use crate::read::words::Better;

/// A table of points, from the easiest step to the hardest.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PointsTable {
    steps: Vec<(Mark, u32)>,
    better: Better,
}

/// The place (from 0) of a step that is not harder, or not worth more, than the one before it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Unsorted(pub usize);

impl PointsTable {
    /// A table from its steps, the easiest first.
    ///
    /// # Errors
    /// The first step that is out of order.
    pub fn new(steps: Vec<(Mark, u32)>, better: Better) -> Result<Self, Unsorted> {
        let rises = |pair: &[(Mark, u32)]| {
            let harder = match better {
                Better::More => pair[1].0 > pair[0].0,
                Better::Less => pair[1].0 < pair[0].0,
            };
            harder && pair[1].1 > pair[0].1
        };
        match steps.windows(2).position(|pair| !rises(pair)) {
            Some(before) => Err(Unsorted(before + 1)),
            None => Ok(Self { steps, better }),
        }
    }

    /// The points of the hardest step that the mark reaches; 0 where it reaches none.
    pub fn points(&self, mark: Mark) -> u32 {
        let reached = self.steps.partition_point(|(step, _)| match self.better {
            Better::More => mark >= *step,
            Better::Less => mark <= *step,
        });
        reached.checked_sub(1).map_or(0, |last| self.steps[last].1)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn table(steps: &[(i64, u32)], better: Better) -> Result<PointsTable, Unsorted> {
        let steps = steps.iter().map(|(mark, points)| (Mark::from_steps(*mark), *points));
        PointsTable::new(steps.collect(), better)
    }

    #[test]
    fn the_hardest_step_reached_counts() {
        let jump = table(&[(100, 1), (120, 2), (150, 5)], Better::More).unwrap();
        for (mark, points) in [(99, 0), (100, 1), (119, 1), (120, 2), (150, 5), (300, 5)] {
            assert_eq!(jump.points(Mark::from_steps(mark)), points, "{mark}");
        }
        let run = table(&[(95, 1), (90, 2)], Better::Less).unwrap();
        for (mark, points) in [(96, 0), (95, 1), (91, 1), (90, 2), (0, 2)] {
            assert_eq!(run.points(Mark::from_steps(mark)), points, "{mark}");
        }
        assert_eq!(table(&[], Better::More).unwrap().points(Mark::from_steps(5)), 0);
    }

    #[test]
    fn a_table_out_of_order_is_refused() {
        assert_eq!(table(&[(100, 1), (100, 2)], Better::More), Err(Unsorted(1)));
        assert_eq!(table(&[(100, 1), (120, 2), (130, 2)], Better::More), Err(Unsorted(2)));
        assert_eq!(table(&[(90, 1), (95, 2)], Better::Less), Err(Unsorted(1)));
    }
}
