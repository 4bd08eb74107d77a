//! What is asked of the renderers: which files, and where to look for those that were made before.

use std::fmt;

use super::shelf::Shelf;

/// What is asked for. Whoever renders a file may ask [`wants`](Order::wants) first; a file that is made
/// unasked costs time and does no harm.
#[derive(Clone, Copy)]
pub struct Order<'o> {
    /// The one file that is wanted, by its path below the published folder; every file where there is none.
    pub only: Option<&'o str>,
    pub shelf: Option<&'o dyn Shelf>,
    /// Called once for each session that a renderer has finished.
    pub on_session: &'o (dyn Fn() + Sync),
}

impl fmt::Debug for Order<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Order").field("only", &self.only).finish_non_exhaustive()
    }
}

impl Default for Order<'_> {
    fn default() -> Self {
        Self { only: None, shelf: None, on_session: &|| {} }
    }
}

impl Order<'_> {
    /// Whether a file is wanted.
    pub fn wants(&self, path: &str) -> bool {
        self.only.is_none_or(|only| only == path)
    }

    /// Whether something below a folder is wanted; the folder is written with its slash.
    pub fn wants_below(&self, folder: &str) -> bool {
        self.only.is_none_or(|only| only.starts_with(folder))
    }
}
