//! Where something that is measured along an angle crosses zero: how a stance is found.

/// So near is near enough, in degrees.
const NEAR_ENOUGH: f64 = 1e-7;

/// The steps in which crossings are looked for.
const STEPS: u32 = 30;

/// Finds where `height` crosses zero between two angles: of several crossings, the one nearest to `near`.
pub fn find_crossing(from: f64, to: f64, near: f64, height: impl Fn(f64) -> f64) -> Option<f64> {
    let at = |step: u32| from + (to - from) * f64::from(step) / f64::from(STEPS);
    let mut seen = [None; STEPS as usize + 1];
    let mut height_at = |step: u32| *seen[step as usize].get_or_insert_with(|| height(at(step)));
    let mut outwards: Vec<u32> = (0..STEPS).collect();
    outwards.sort_by(|a, b| (at(*a) - near).abs().total_cmp(&(at(*b) - near).abs()));
    for step in outwards {
        let heights = (height_at(step), height_at(step + 1));
        if (heights.0 < 0.0) != (heights.1 < 0.0) {
            return Some(narrow((at(step), at(step + 1)), heights, height));
        }
    }
    None
}

/// Narrows a crossing by interpolating, truncating and projecting: never more steps than halving takes, few
/// where the curve is nearly straight, and sure where it jumps. Source: Oliveira and Takahashi, An
/// Enhancement of the Bisection Method Average Performance Preserving Minmax Optimality, ACM Transactions on
/// Mathematical Software 47 (2020), with κ₁ = 0.2 over the width, κ₂ = 2, n₀ = 1.
fn narrow(
    (mut low, mut high): (f64, f64),
    (mut below, mut above): (f64, f64),
    height: impl Fn(f64) -> f64,
) -> f64 {
    let rises = if below < 0.0 { 1.0 } else { -1.0 };
    (below, above) = (below * rises, above * rises);
    let bend = 0.2 / (high - low);
    let halvings = ((high - low) / (2.0 * NEAR_ENOUGH)).log2().ceil();
    let mut room = NEAR_ENOUGH * (halvings + 1.0).exp2();
    while high - low > 2.0 * NEAR_ENOUGH {
        let middle = f64::midpoint(low, high);
        let straight = (above * low - below * high) / (above - below);
        let toward = (middle - straight).signum();
        let give = bend * (high - low) * (high - low);
        let cut = if give <= (middle - straight).abs() { straight + toward * give } else { middle };
        let reach = (room - (high - low) / 2.0).max(0.0);
        let tried = if (cut - middle).abs() <= reach { cut } else { middle - toward * reach };
        let found = height(tried) * rises;
        if found < 0.0 {
            (low, below) = (tried, found);
        } else {
            (high, above) = (tried, found);
        }
        room /= 2.0;
    }
    f64::midpoint(low, high)
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::cell::Cell;

    #[test]
    fn the_crossing_nearest_by_is_found_in_few_steps() {
        let tried = Cell::new(0);
        let found = find_crossing(-100.0, 400.0, 170.0, |degrees| {
            tried.set(tried.get() + 1);
            degrees.to_radians().sin()
        });
        assert!((found.expect("it crosses") - 180.0).abs() < 1e-6, "{found:?}");
        assert!(tried.get() < 14, "{}", tried.get());
    }

    #[test]
    fn a_jump_is_found_and_no_crossing_is_none() {
        let jump = find_crossing(0.0, 90.0, 0.0, |degrees| if degrees < 61.7 { -3.0 } else { 0.1 });
        assert!((jump.expect("it jumps") - 61.7).abs() < 1e-6, "{jump:?}");
        assert_eq!(find_crossing(0.0, 90.0, 0.0, |_| 1.0), None);
    }
}
