//! Which session asks for which things: a row a session, a column a thing, for the teacher who gathers,
//! lends and buys.

use serde::Serialize;

use super::Site;
use super::things::{Link, link_to};
use crate::pack::Session;
use crate::prose::plain_line;

#[derive(Serialize, Clone, Debug)]
pub(super) struct EquipmentMatrix {
    things: Vec<String>,
    rows: Vec<MatrixRow>,
    /// The most that any one session asks for, in the order of `things`.
    most: Vec<u32>,
}

#[derive(Serialize, Clone, Debug)]
struct MatrixRow {
    session: Link,
    /// In the order of the things; nothing where the session does not ask for it.
    cells: Vec<Option<Cell>>,
}

/// How many of a thing a session asks for at once.
#[derive(Serialize, Clone, Debug)]
struct Cell {
    count: u32,
    /// It can be done without.
    optional: bool,
}

/// The matrix of every session that is offered.
pub(super) fn show_matrix(site: &Site<'_>) -> EquipmentMatrix {
    let things = &site.publication.gathering().things;
    let cell_of = |session: &Session, name: &str| {
        let need = session.needs.iter().find(|need| need.name.0 == name)?;
        Some(Cell { count: need.count, optional: need.optional })
    };
    let row_of = |session: &Session| MatrixRow {
        session: link_to(session),
        cells: things.iter().map(|thing| cell_of(session, &thing.name)).collect(),
    };
    EquipmentMatrix {
        things: things.iter().map(|thing| plain_line(&thing.name)).collect(),
        rows: site.offered().map(|(session, _)| row_of(session)).collect(),
        most: things.iter().map(|thing| thing.count).collect(),
    }
}
