//! On which floor each kept part is done: with the fewest moves from floor to floor, and among those on the
//! floors that the home names first.

/// One floor a part, from the floors it fits; parts that are left out have none.
pub fn plan_floors(parts: &[Option<Vec<usize>>]) -> Vec<Option<usize>> {
    let kept: Vec<&Vec<usize>> = parts.iter().flatten().collect();
    // Going on with the floor that serves longest makes the fewest moves (interval stabbing is greedy).
    let mut chosen = Vec::with_capacity(kept.len());
    while chosen.len() < kept.len() {
        let rest = &kept[chosen.len()..];
        let serves = |floor: &usize| rest.iter().take_while(|fits| fits.contains(floor)).count();
        let best = rest[0].iter().copied().max_by_key(|floor| (serves(floor), usize::MAX - floor));
        let Some(floor) = best else { break };
        chosen.extend(std::iter::repeat_n(floor, serves(&floor).max(1)));
    }
    let mut chosen = chosen.into_iter();
    parts.iter().map(|fits| fits.as_ref().and_then(|_| chosen.next())).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn stays_where_it_can() {
        let parts =
            [Some(vec![0, 1]), None, Some(vec![1]), Some(vec![0, 1]), Some(vec![0]), Some(vec![0])];
        let chosen = plan_floors(&parts);
        assert_eq!(chosen, [Some(1), None, Some(1), Some(1), Some(0), Some(0)]);
    }
}
