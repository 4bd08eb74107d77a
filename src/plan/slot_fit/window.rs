//! The largest value in a window that slides over every `step`-th place.
//!
//! From values, a step and a count to `best[u] = max(values[u], values[u − step], …, values[u − count·step])`
//! in one pass whatever the count. Places are taken as rows of `step`; rows are cut into blocks of
//! `count + 1`, so that a window is the end of one block and the beginning of the next (van Herk 1992; Gil and
//! Werman 1993). Each residue class of the step is a column, and all columns go along together.

/// The best of each window. `step` is at least 1.
pub fn best_in_windows(values: &[i64], step: usize, count: usize) -> Vec<i64> {
    let count = count.min(values.len() / step);
    let mut best = from_block_start(values, step, count + 1);
    if let Some(reach) = count.checked_mul(step).filter(|reach| (1..values.len()).contains(reach)) {
        let ends = to_block_end(values, step, count + 1);
        for (best, end) in best[reach..].iter_mut().zip(ends) {
            *best = (*best).max(end);
        }
    }
    best
}

/// The largest value from the beginning of the block up to each place.
fn from_block_start(values: &[i64], step: usize, block: usize) -> Vec<i64> {
    let mut best = values.to_vec();
    for (row, at) in (0..values.len()).step_by(step).enumerate() {
        if row % block != 0 {
            let (before, here) = best.split_at_mut(at);
            raise(&mut here[..step.min(values.len() - at)], &before[at - step..]);
        }
    }
    best
}

/// The largest value from each place to the end of the block.
fn to_block_end(values: &[i64], step: usize, block: usize) -> Vec<i64> {
    let mut best = values.to_vec();
    for (row, at) in (0..values.len().saturating_sub(step)).step_by(step).enumerate().rev() {
        if row % block != block - 1 {
            let (here, after) = best.split_at_mut(at + step);
            raise(&mut here[at..], after);
        }
    }
    best
}

fn raise(values: &mut [i64], others: &[i64]) {
    for (value, other) in values.iter_mut().zip(others) {
        *value = (*value).max(*other);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn agrees_with_looking_at_every_place() {
        let values: Vec<i64> = (0..61).map(|n| (n * n * 7919) % 101 - 50).collect();
        for len in [1, 2, 7, 30, 61] {
            for step in 1..9 {
                for count in 0..12 {
                    let plain: Vec<i64> = (0..len)
                        .map(|u| {
                            (0..=count.min(u / step)).map(|k| values[u - k * step]).max().unwrap()
                        })
                        .collect();
                    assert_eq!(
                        best_in_windows(&values[..len], step, count),
                        plain,
                        "{step}, {count}"
                    );
                }
            }
        }
    }
}
