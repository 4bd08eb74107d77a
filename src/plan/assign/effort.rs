//! How much work a search may still do: counted in links looked at, not in time, so that the same question
//! always has the same answer.

/// Enough for any household; a hostile question ends within about a tenth of a second.
const LINKS: u64 = 8_000_000;

#[derive(Clone, Debug)]
pub struct Effort {
    left: u64,
}

impl Effort {
    pub fn of_one_assignment() -> Self {
        Self { left: LINKS }
    }

    /// Takes note of work that is done.
    pub fn spend(&mut self, links: usize) {
        self.left = self.left.saturating_sub(links as u64 + 1);
    }

    pub fn is_spent(&self) -> bool {
        self.left == 0
    }
}
