//! shared.yaml: parts, spaces, cautions and key points that are said once and used by name from any session
//! (`use: river crossing`), and what became of names that are no longer there.

use super::desk::{Desk, FromNode};
use super::node::{Node, Value};
use super::part_file::PartDoc;
use super::record::record;
use super::session_file::SpaceDoc;
use super::shape::Shape;
use super::text::{Line, Prose};
use crate::finding::Finding;
use crate::place::Placed;
use crate::quantity::Date;

record! {
    /// What is said once for many sessions.
    pub struct SharedDoc = "shared.yaml" {
        /// Warm-ups, steps, challenges, stretch tasks and cool-downs.
        parts: Vec<SharedPartDoc>,
        /// Floors and headrooms.
        spaces: Vec<SharedSpaceDoc>,
        /// Cautions.
        cautions: Vec<SharedCautionDoc>,
        /// Sets of key points.
        key_points: Vec<SharedPointsDoc>,
        /// Names that were here once.
        gone: Vec<GoneDoc>,
    }
}

record! {
    /// A part that sessions use by name.
    pub struct SharedPartDoc = "a shared part" {
        /// The name that sessions use.
        name: Placed<Line> = "river crossing",
        /// The part, with the keys that it has in a session.
        part: PartDoc,
    }
}

record! {
    /// A space that sessions use by name.
    pub struct SharedSpaceDoc = "a shared space" {
        /// The name that sessions use.
        name: Placed<Line> = "front room",
        /// The space, with the keys that it has in a session.
        space: SpaceDoc,
    }
}

record! {
    /// A caution that sessions use by name.
    pub struct SharedCautionDoc = "a shared caution" {
        /// The name that sessions use.
        name: Placed<Line> = "socks",
        /// The caution.
        says: Placed<Prose> = "Hop in bare feet or grippy shoes, never in socks.",
    }
}

record! {
    /// Key points that sessions use by name.
    pub struct SharedPointsDoc = "shared key points" {
        /// The name that sessions use.
        name: Placed<Line> = "soft landing",
        /// The key points.
        points: Vec<Placed<Line>> = "Knees over toes",
    }
}

record! {
    /// A name that is no longer there.
    pub struct GoneDoc = "a name that is gone" {
        /// The name it had.
        name: Placed<Line> = "stepping stones",
        /// The name to use now, if there is one.
        now: Option<Placed<Line>> = "river crossing",
        /// When it went.
        on: Option<Placed<Date>>,
        /// Why.
        why: Option<Placed<Line>> = "Two warm-ups were much alike.",
    }
}

record! {
    /// A text that is used by its name in shared.yaml.
    pub struct UseDoc = "a shared text" {
        /// Its name in shared.yaml.
        r#use: Placed<Line> = "soft landing",
    }
}

/// Notes every name that stands twice in its list.
pub(super) fn note_twice(doc: &SharedDoc, findings: &mut Vec<Finding>) {
    let lists: [Vec<&Placed<Line>>; 4] = [
        doc.parts.iter().map(|entry| &entry.name).collect(),
        doc.spaces.iter().map(|entry| &entry.name).collect(),
        doc.cautions.iter().map(|entry| &entry.name).collect(),
        doc.key_points.iter().map(|entry| &entry.name).collect(),
    ];
    for names in &lists {
        for (at, name) in names.iter().enumerate() {
            if names[..at].iter().any(|earlier| earlier.value == name.value) {
                let says = format!("“{}” stands twice in this list.", name.value);
                let way_out = "Give one of the two another name, or take it out.";
                findings.push(Finding::problem("shared-twice", name.place, says, way_out));
            }
        }
    }
}

/// A text of the session’s own, or one of shared.yaml by its name. Names are replaced by what they stand for
/// before the session is read, so that this only ever reads the text itself.
#[derive(Clone, Debug)]
pub struct OrShared<T>(pub T);

impl<T: FromNode> FromNode for OrShared<T> {
    fn from_node(node: &Node, desk: &mut Desk) -> Option<Self> {
        match &node.value {
            // A name that led nowhere has been told of.
            Value::Fields(fields) if fields.iter().any(|field| field.key == "use") => None,
            _ => T::from_node(node, desk).map(Self),
        }
    }
    fn shape() -> Shape {
        Shape::Either(Box::new(T::shape()), &UseDoc::GROUP)
    }
}
