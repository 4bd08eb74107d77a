//! Places of several competitors, with ties.
//!
//! Source: World Athletics, Technical Rules, field events: a tie is decided by the second best
//! mark, then the third, and so on; who has no next mark is placed below. A true tie shares the
//! place, and the next places stay empty. The rule is for throws and horizontal jumps; used for
//! other marks it is this project’s own choice.

use std::cmp::Reverse;

use super::{Attempt, Mark};
use crate::read::words::Better;

/// The place of each competitor, from 1, in the order they came in; `None` for one without any
/// mark, who has no place. They may have had different numbers of attempts.
pub fn plan_places(competitors: &[Vec<Attempt>], better: Better) -> Vec<Option<usize>> {
    let series: Vec<Vec<i64>> =
        competitors.iter().map(|attempts| best_first(attempts, better)).collect();
    let mut order: Vec<&Vec<i64>> = series.iter().filter(|goods| !goods.is_empty()).collect();
    order.sort_by_key(|goods| Reverse(*goods));
    let ahead = |goods: &Vec<i64>| order.partition_point(|other| *other > goods);
    series.iter().map(|goods| (!goods.is_empty()).then(|| ahead(goods) + 1)).collect()
}

/// The marks from the best on, turned so that more is better: lists of them then compare as the
/// rule says, and a list that ends first is the lesser.
fn best_first(attempts: &[Attempt], better: Better) -> Vec<i64> {
    let marks = attempts.iter().filter_map(|attempt| attempt.mark());
    let mut goods: Vec<i64> = match better {
        Better::More => marks.map(Mark::steps).collect(),
        Better::Less => marks.map(|mark| mark.steps().saturating_neg()).collect(),
    };
    goods.sort_unstable_by_key(|good| Reverse(*good));
    goods
}

#[cfg(test)]
mod tests {
    use super::*;

    fn places(competitors: &[&[i64]], better: Better) -> Vec<Option<usize>> {
        let attempts = |marks: &&[i64]| {
            let attempt = |steps: &i64| match steps {
                0 => Attempt::NoMark,
                steps => Attempt::Valid(Mark::from_steps(*steps)),
            };
            marks.iter().map(attempt).collect()
        };
        plan_places(&competitors.iter().map(attempts).collect::<Vec<_>>(), better)
    }

    #[test]
    fn the_next_best_decides_and_none_is_below() {
        let competitors: &[&[i64]] =
            &[&[150, 140], &[140, 0, 150, 130], &[150, 141], &[0, 0], &[151], &[130, 150, 140]];
        let expected = [Some(5), Some(3), Some(2), None, Some(1), Some(3)];
        assert_eq!(places(competitors, Better::More), expected);
    }

    #[test]
    fn times_rank_the_other_way() {
        let competitors: &[&[i64]] = &[&[97, 95], &[94], &[95, 96], &[95]];
        assert_eq!(places(competitors, Better::Less), [Some(3), Some(1), Some(2), Some(4)]);
        assert!(places(&[], Better::Less).is_empty());
    }
}
