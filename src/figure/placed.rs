//! Bodies that were placed before. Sessions use the same poses often, and one session’s figures are asked for by
//! rules, pages and sheets: finding a stance takes a hundred times as long as looking it up.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::hash::{DefaultHasher, Hash, Hasher};

use super::body::Body;
use super::joint::Angles;
use super::pose::Pose;
use super::proportions::Proportions;
use super::stance::find_stance;
use super::support::Support;

/// When so many are kept, they are forgotten.
const MOST_KEPT: usize = 2_000;

/// A body with what it was placed from.
struct Kept {
    from: (Angles, Support, Proportions),
    placed: (Body, Angles),
}

thread_local! {
    /// By the hash of what they were placed from: those of one hash lie side by side.
    static KEPT: RefCell<BTreeMap<u64, Vec<Kept>>> = const { RefCell::new(BTreeMap::new()) };
}

/// The body of a pose, standing, lying or flying over the floor z = 0. The middle of what carries it lies
/// near x = 0. Gives the angles with all that was found.
pub fn place_body(pose: &Pose, proportions: Proportions) -> (Body, Angles) {
    let from = (pose.angles, pose.on, proportions);
    let hash = hash_of(&from);
    KEPT.with_borrow_mut(|kept| {
        let alike = kept.get(&hash).into_iter().flatten();
        if let Some(known) = alike.into_iter().find(|known| known.from == from) {
            return known.placed.clone();
        }
        if kept.len() == MOST_KEPT {
            kept.clear();
        }
        let placed = find_stance(pose, proportions);
        kept.entry(hash).or_default().push(Kept { from, placed: placed.clone() });
        placed
    })
}

fn hash_of((angles, on, proportions): &(Angles, Support, Proportions)) -> u64 {
    let mut hasher = DefaultHasher::new();
    for (turn, degrees) in angles.each() {
        (turn, degrees.to_bits()).hash(&mut hasher);
    }
    (*on as u8, proportions.head.to_bits()).hash(&mut hasher);
    hasher.finish()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::figure::library::Library;

    #[test]
    fn a_body_is_the_same_when_it_is_looked_up() {
        for years in [6.0, 10.0] {
            let proportions = Proportions::of_age(years);
            for named in &Library::shipped().poses {
                let found = find_stance(&named.pose, proportions);
                assert_eq!(place_body(&named.pose, proportions), found, "{}", named.name);
                assert_eq!(place_body(&named.pose, proportions), found, "{}", named.name);
            }
        }
    }
}
