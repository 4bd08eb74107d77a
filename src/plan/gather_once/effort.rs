//! How much work the searches of a pack may still do: counted in steps, not in time, so that the same pack
//! always has the same answer.

/// Enough for any real pack; a hostile one ends within about half a second.
const STEPS: u64 = 300_000_000;

#[derive(Clone, Debug)]
pub struct Effort {
    left: u64,
}

impl Effort {
    pub fn of_one_pack() -> Self {
        Self { left: STEPS }
    }

    /// Takes note of work that is done.
    pub fn spend(&mut self, steps: usize) {
        self.left = self.left.saturating_sub(steps as u64 + 1);
    }

    pub fn is_spent(&self) -> bool {
        self.left == 0
    }
}
