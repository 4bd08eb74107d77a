//! Where a rising function passes through nothing.
//!
//! Source: T. R. Chandrupatla, A new hybrid quadratic/bisection algorithm for finding the zero of
//! a nonlinear function, Advances in Engineering Software 28 (1997).

/// Calls of the function at most; halving alone would need about fifty.
const MOST_CALLS: usize = 120;
/// How near the two ends come, relative to where they are.
const NEAR: f64 = 1e-13;

/// A place looked at: where, and what the function is there.
type Seen = (f64, f64);

/// Where `rising`, at most 0 at `low` and at least 0 at `high`, passes 0: the last place found at
/// which it is not above 0. `None` where the two ends don't enclose it, or a value can't be had.
pub(super) fn find_root(low: f64, high: f64, rising: impl Fn(f64) -> Option<f64>) -> Option<f64> {
    let look = |at: f64| Some((at, rising(at).filter(|value| !value.is_nan())?));
    let (mut newest, mut other) = (look(high)?, look(low)?);
    if other.1 > 0.0 || newest.1 < 0.0 {
        return None;
    }
    let mut share = 0.5;
    for _ in 0..MOST_CALLS {
        let seen = look(newest.0 + share * (other.0 - newest.0))?;
        let left = if (seen.1 > 0.0) == (newest.1 > 0.0) {
            newest
        } else {
            std::mem::replace(&mut other, newest)
        };
        newest = seen;
        let width = (other.0 - newest.0).abs();
        let finest = NEAR * newest.0.abs().max(other.0.abs());
        if width <= finest || seen.1 == 0.0 {
            break;
        }
        let edge = (finest / width).min(0.5);
        share = next_share(newest, other, left).clamp(edge, 1.0 - edge);
    }
    Some(if newest.1 <= 0.0 { newest.0 } else { other.0 })
}

/// Where to look next, between the newest place (0) and the other side (1): on the parabola
/// through the last three places where that is safe, half-way otherwise.
fn next_share(newest: Seen, other: Seen, left: Seen) -> f64 {
    let place = (newest.0 - other.0) / (left.0 - other.0);
    let value = (newest.1 - other.1) / (left.1 - other.1);
    if value * value < place && (1.0 - value) * (1.0 - value) < 1.0 - place {
        let across = newest.1 / (other.1 - newest.1) * left.1 / (other.1 - left.1);
        let beyond = (left.0 - newest.0) / (other.0 - newest.0) * newest.1 / (left.1 - newest.1)
            * other.1
            / (left.1 - other.1);
        return across + beyond;
    }
    0.5
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn finds_and_keeps_to_the_lower_side() {
        for target in [0.1, 2.0, 7.0, 999.0] {
            let found = find_root(0.0, 1000.0, |x| Some(x * x * x - target)).unwrap();
            assert!((found / f64::cbrt(target) - 1.0).abs() < 1e-12, "{target}: {found}");
            assert!(found * found * found <= target);
        }
    }

    #[test]
    fn a_step_is_found_too() {
        let found = find_root(0.0, 1.0, |x| Some(if x < 0.3 { -1.0 } else { 5.0 })).unwrap();
        assert!(found < 0.3 && found > 0.3 - 1e-12);
    }

    #[test]
    fn nothing_enclosed_is_no_root() {
        assert_eq!(find_root(1.0, 2.0, Some), None);
        assert_eq!(find_root(0.0, 1.0, |_| None), None);
        assert_eq!(find_root(0.0, 1.0, |_| Some(f64::NAN)), None);
    }
}
