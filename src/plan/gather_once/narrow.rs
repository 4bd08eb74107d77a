//! Narrows the limits of a node by what is known of every set that meets all demands.

use super::bound::Node;
use super::hall::Cover;
use super::meet::Clause;

/// Narrows the limits; none if nothing is left between them.
pub fn narrow(node: &mut Node, covers: &[Cover], clauses: &[Clause]) -> Option<()> {
    for cover in covers {
        narrow_by_cover(node, cover)?;
    }
    for clause in clauses {
        narrow_by_clause(node, clause)?;
    }
    node.least.iter().zip(&node.most).all(|(least, most)| least <= most).then_some(())
}

/// Each thing of a cover must make up for what the others can't give.
fn narrow_by_cover(node: &mut Node, cover: &Cover) -> Option<()> {
    let most: u64 = cover.things.iter().map(|thing| u64::from(node.most[*thing])).sum();
    let to_spare = most.checked_sub(cover.least)?;
    for thing in &cover.things {
        let least = u64::from(node.most[*thing]).saturating_sub(to_spare);
        node.least[*thing] = node.least[*thing].max(u32::try_from(least).ok()?);
    }
    Some(())
}

/// If only one thing of a clause can still be more, it must be.
fn narrow_by_clause(node: &mut Node, clause: &Clause) -> Option<()> {
    if clause.more_than.iter().any(|(thing, than)| node.least[*thing] > *than) {
        return Some(());
    }
    let mut open = clause.more_than.iter().filter(|(thing, than)| node.most[*thing] > *than);
    let (thing, than) = open.next()?;
    if open.next().is_none() {
        node.least[*thing] = than + 1;
    }
    Some(())
}
