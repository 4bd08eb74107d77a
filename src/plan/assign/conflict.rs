//! Which wants can get in each other’s way: those that are held at one moment and share a thing, and those
//! that hang together through others. Each group is a problem of its own.

use std::collections::BTreeMap;

/// When something is held, first and last moment included, and which things suit it.
#[derive(Clone, Debug)]
pub struct Span<'a> {
    pub from: usize,
    pub to: usize,
    pub things: &'a [usize],
}

/// The groups of spans that hang together, each in order, by their first members.
pub fn conflicts(spans: &[Span]) -> Vec<Vec<usize>> {
    let mut by_thing: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
    for (at, span) in spans.iter().enumerate() {
        for thing in span.things {
            by_thing.entry(*thing).or_default().push(at);
        }
    }
    let mut roots: Vec<usize> = (0..spans.len()).collect();
    for sharers in by_thing.values_mut() {
        join_overlapping(spans, sharers, &mut roots);
    }
    let mut groups: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
    for at in 0..spans.len() {
        groups.entry(root_of(&mut roots, at)).or_default().push(at);
    }
    groups.into_values().collect()
}

fn join_overlapping(spans: &[Span], sharers: &mut [usize], roots: &mut [usize]) {
    sharers.sort_by_key(|at| spans[*at].from);
    let mut held: Option<(usize, usize)> = None;
    for at in sharers.iter().copied() {
        held = match held {
            Some((other, to)) if spans[at].from <= to => {
                join(roots, at, other);
                Some((other, to.max(spans[at].to)))
            }
            _ => Some((at, spans[at].to)),
        };
    }
}

/// The smaller root wins, so that a group is named after its first member.
fn join(roots: &mut [usize], one: usize, other: usize) {
    let (one, other) = (root_of(roots, one), root_of(roots, other));
    roots[one.max(other)] = one.min(other);
}

fn root_of(roots: &mut [usize], mut at: usize) -> usize {
    while roots[at] != at {
        roots[at] = roots[roots[at]];
        at = roots[at];
    }
    at
}
