//! How much work a search may still do: counted in steps, not in time, so that the same question always has the
//! same answer. A step is about a link looked at: some nanoseconds.

#[derive(Clone, Debug)]
pub struct Effort {
    left: u64,
}

impl Effort {
    pub fn of(steps: u64) -> Self {
        Self { left: steps }
    }

    pub fn left(&self) -> u64 {
        self.left
    }

    /// Takes note of work that is done.
    pub fn spend(&mut self, steps: usize) {
        self.left = self.left.saturating_sub(steps as u64 + 1);
    }

    pub fn is_spent(&self) -> bool {
        self.left == 0
    }

    /// Gives a smaller task at most so many steps, and takes back what it leaves.
    pub fn lend<T>(&mut self, most: u64, task: impl FnOnce(&mut Self) -> T) -> T {
        let lent = most.min(self.left);
        let mut own = Self { left: lent };
        let result = task(&mut own);
        self.left -= lent - own.left;
        result
    }
}
