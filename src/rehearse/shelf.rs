//! What was made in earlier scenes, kept in memory for later ones; the oldest goes where it grows too large.

use std::collections::{BTreeMap, VecDeque};
use std::sync::{Mutex, MutexGuard, PoisonError};

use crate::render::key::Key;
use crate::render::shelf::{Made, Shelf};

/// Bytes that are kept at most.
const LARGEST: usize = 64 * 1024 * 1024;

#[derive(Debug, Default)]
pub struct MemoryShelf {
    kept: Mutex<Kept>,
}

#[derive(Debug, Default)]
struct Kept {
    made: BTreeMap<Key, Vec<Made>>,
    order: VecDeque<Key>,
    bytes: usize,
}

impl MemoryShelf {
    fn kept(&self) -> MutexGuard<'_, Kept> {
        self.kept.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

fn size(made: &[Made]) -> usize {
    made.iter().map(|made| made.bytes.len()).sum()
}

impl Shelf for MemoryShelf {
    fn find(&self, key: Key) -> Option<Vec<Made>> {
        self.kept().made.get(&key).cloned()
    }

    fn keep(&self, key: Key, made: &[Made]) {
        let mut kept = self.kept();
        kept.bytes += size(made);
        kept.order.push_back(key);
        if let Some(old) = kept.made.insert(key, made.to_vec()) {
            kept.bytes -= size(&old);
        }
        while kept.bytes > LARGEST {
            let Some(oldest) = kept.order.pop_front() else { break };
            let gone = kept.made.remove(&oldest);
            kept.bytes -= gone.as_deref().map_or(0, size);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_oldest_goes_first() {
        let shelf = MemoryShelf::default();
        let made = |size: usize| [Made { bytes: vec![0; size], ink: Vec::new() }];
        let key = |name: &str| Key::of(name.as_bytes());
        shelf.keep(key("a"), &made(LARGEST / 2));
        shelf.keep(key("b"), &made(LARGEST / 2));
        assert!(shelf.find(key("a")).is_some());
        shelf.keep(key("c"), &made(1));
        assert!(shelf.find(key("a")).is_none());
        assert!(shelf.find(key("b")).is_some() && shelf.find(key("c")).is_some());
    }
}
