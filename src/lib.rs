//! homeground plans, checks and prints physical-education sessions for pupils who are at home.
//!
//! One way through the house, each stage with a type of its own, none looking back:
//!
//! | stage | from → to |
//! |---|---|
//! | [`read`] | files → [`read::Documents`], as written, every value with its place |
//! | [`resolve`] | documents → [`pack::Pack`], with everything shared filled in |
//! | [`inspect`](mod@inspect) | pack → [`finding::Finding`]s |
//! | [`plan`] | session → [`plan::Plans`], pure computation |
//! | [`render`] | pack and plans → [`render::Bundle`], an ordered map of path → bytes |
//! | [`publish`] | bundle → a folder, swapped in whole |

pub mod command;
pub mod drawing;
pub mod edition;
pub mod figure;
pub mod finding;
pub mod fit;
pub mod homes;
pub mod inspect;
mod letters;
pub mod mend;
pub mod pack;
pub mod parcel;
pub mod picture;
pub mod place;
pub mod plan;
pub mod progress;
pub mod prose;
pub mod publish;
pub mod quantity;
pub mod read;
pub mod rehearse;
pub mod render;
pub mod report;
pub mod resolve;
pub mod schema;
pub mod source;
pub mod words;

use std::sync::Arc;

use finding::Finding;
use inspect::{Allowed, Judged};
use pack::Pack;
use plan::Plans;
use read::Selection;
use render::shelf::Shelf;
use source::Source;

/// A pack and everything that was found in it.
#[derive(Debug)]
pub struct Inspected {
    pub pack: Pack,
    /// The plans of each session, in the order of `pack.sessions`.
    pub plans: Vec<Arc<Plans>>,
    pub findings: Vec<Finding>,
    /// What was found and is allowed to stay; it counts for nothing.
    pub allowed: Vec<Allowed>,
}

/// Reads, resolves and inspects a pack: the way every command begins.
///
/// # Errors
/// A sentence for the teacher, where the pack can't be looked into at all.
pub fn inspect(source: &dyn Source, selection: &Selection) -> Result<Inspected, String> {
    let (pack, met_while_reading) = read_resolved(source, selection)?;
    let (plans, judged) = inspect::inspect_pack(&pack, met_while_reading);
    let Judged { mut findings, allowed } = judged;
    findings.retain(|finding| selection.asks_for(&pack.files.get(finding.place.file).path));
    Ok(Inspected { pack, plans, findings, allowed })
}

/// Reads and resolves a pack, with what was met while reading.
///
/// # Errors
/// A sentence for the teacher, where the pack can't be looked into at all.
pub fn read_resolved(
    source: &dyn Source,
    selection: &Selection,
) -> Result<(Pack, Vec<Finding>), String> {
    let mut documents = read::read_pack(source, selection)?;
    let met_while_reading = std::mem::take(&mut documents.findings);
    Ok((resolve::resolve_pack(documents), met_while_reading))
}

/// Inspects a whole pack that is read; what was found in a session is looked for on a shelf first.
pub fn inspect_noting(pack: Pack, met_while_reading: Vec<Finding>, shelf: &dyn Shelf) -> Inspected {
    let (plans, judged) = inspect::inspect_pack_noting(&pack, met_while_reading, shelf);
    let Judged { findings, allowed } = judged;
    Inspected { pack, plans, findings, allowed }
}

/// The same for a pack that was inspected before: only what changed is read and inspected.
///
/// # Errors
/// A sentence for the teacher, where the pack can't be looked into at all.
pub fn inspect_again(
    source: &dyn Source,
    read_before: &mut read::ReadBefore,
    found_before: &mut inspect::FoundBefore,
) -> Result<Inspected, String> {
    let mut documents = read::read_pack_again(source, &Selection::All, Some(read_before))?;
    let met_while_reading = std::mem::take(&mut documents.findings);
    let pack = resolve::resolve_pack(documents);
    read_before.note_resolved(&pack);
    let (plans, judged) = inspect::inspect_pack_again(&pack, met_while_reading, found_before);
    let Judged { findings, allowed } = judged;
    Ok(Inspected { pack, plans, findings, allowed })
}
