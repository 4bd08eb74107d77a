//! `rehearse`: a pack’s pages on this computer alone, made anew at each save, with what `inspect` finds
//! over them.
//!
//! [`snapshot`] holds the files of a pack still; [`rehearsal`] reads, plans and inspects what changed and
//! puts the next [`scene`]; [`watch`] says when; [`page`] makes a file of a scene when a browser asks for it;
//! [`panel`] writes the findings over it; [`serve`] answers browsers. Nothing is written to the disk.

mod lent;
mod page;
mod panel;
mod rehearsal;
mod scene;
mod serve;
mod shelf;
mod snapshot;
mod watch;

pub use rehearsal::{News, Rehearsal};
pub use scene::Scene;
pub use serve::{Doors, open_doors, serve_scenes};
pub use watch::{Watched, watch_pack};
