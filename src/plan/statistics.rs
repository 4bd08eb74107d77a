//! Figures that say how marks lie: middle, spread, noise and places.
//!
//! In: plain numbers, all of one rule. Out: numbers in the same unit. Sources: quartiles by Hyndman
//! and Fan (1996), type 7, which spreadsheets and numpy use; typical error and smallest worthwhile
//! change by Hopkins, W. G. (2000), Measures of reliability in sports medicine and science, Sports
//! Medicine 30(1).

/// The mean; `None` of nothing.
pub fn mean(values: &[f64]) -> Option<f64> {
    (!values.is_empty()).then(|| values.iter().sum::<f64>() / count(values.len()))
}

/// The standard deviation of a sample (divided by n − 1); `None` of fewer than two values.
pub fn standard_deviation(values: &[f64]) -> Option<f64> {
    let middle = mean(values)?;
    let squares: f64 = values.iter().map(|value| (value - middle).powi(2)).sum();
    (values.len() > 1).then(|| (squares / count(values.len() - 1)).sqrt())
}

/// The value below which a share of the values lies, from 0 to 1: between two neighbours it is drawn
/// straight (type 7). `None` of nothing.
pub fn quantile(values: &[f64], share: f64) -> Option<f64> {
    let mut sorted = values.to_vec();
    sorted.sort_by(f64::total_cmp);
    let last = sorted.len().checked_sub(1)?;
    let at = share.clamp(0.0, 1.0) * count(last);
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "0 to the last place"
    )]
    let below = at.floor() as usize;
    let above = (below + 1).min(last);
    Some(sorted[below] + (at - count(below)) * (sorted[above] - sorted[below]))
}

/// The median; `None` of nothing.
pub fn median(values: &[f64]) -> Option<f64> {
    quantile(values, 0.5)
}

/// The typical error of one measurement: the standard deviation of the differences between two
/// trials, divided by √2 (Hopkins 2000). `None` of fewer than two differences.
pub fn typical_error(differences: &[f64]) -> Option<f64> {
    standard_deviation(differences).map(|deviation| deviation / std::f64::consts::SQRT_2)
}

/// The typical error over several pairs of trials: the root of the mean of their squares, each pair
/// weighed by its degrees of freedom (Hopkins 2000, reliability over more than two trials).
pub fn pooled_typical_error(pairs: &[Vec<f64>]) -> Option<f64> {
    let errors =
        pairs.iter().filter_map(|pair| Some((typical_error(pair)?, count(pair.len() - 1))));
    let (squares, freedom) = errors.fold((0.0, 0.0), |(squares, freedom), (error, own)| {
        (squares + own * error * error, freedom + own)
    });
    (freedom > 0.0).then(|| (squares / freedom).sqrt())
}

/// The smallest change that is worth anything: 0.2 of the standard deviation between people (Hopkins).
pub fn smallest_worthwhile_change(between: f64) -> f64 {
    0.2 * between
}

/// The place of each value from 1, the greatest first; equal values share the best of their places
/// and the next ones stay empty.
pub fn places(values: &[f64]) -> Vec<usize> {
    let ahead = |value: &f64| values.iter().filter(|other| *other > value).count();
    values.iter().map(|value| ahead(value) + 1).collect()
}

/// Whole numbers of a class are exact in an `f64`.
#[allow(clippy::cast_precision_loss, reason = "there are fewer marks than 2^52")]
const fn count(number: usize) -> f64 {
    number as f64
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_worked_example_of_a_typical_error() {
        // Differences 2, −1, 3, 0, 1: standard deviation 1.5811, typical error 1.1180 (Hopkins’ method).
        let differences = [2.0, -1.0, 3.0, 0.0, 1.0];
        assert!((standard_deviation(&differences).unwrap() - 1.5811).abs() < 5e-5);
        assert!((typical_error(&differences).unwrap() - 1.1180).abs() < 5e-5);
        let twice = [differences.to_vec(), differences.to_vec(), vec![4.0]];
        assert!((pooled_typical_error(&twice).unwrap() - 1.1180).abs() < 5e-5);
        assert_eq!(typical_error(&[1.0]), None);
    }

    #[test]
    fn quartiles_lie_between_neighbours() {
        // numpy.percentile([1, 2, 3, 4], [25, 50, 75]) is [1.75, 2.5, 3.25].
        let values = [4.0, 1.0, 3.0, 2.0];
        assert_eq!(
            [0.25, 0.5, 0.75].map(|share| quantile(&values, share)),
            [Some(1.75), Some(2.5), Some(3.25)]
        );
        assert_eq!((median(&[]), median(&[7.0])), (None, Some(7.0)));
    }

    #[test]
    fn equal_values_share_a_place() {
        assert_eq!(places(&[5.0, 7.0, 7.0, 1.0]), [3, 1, 1, 4]);
    }
}
