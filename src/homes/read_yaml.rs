//! One home in a file of its own: `home.yaml`.

use super::headings::MOST_FLOORS;
use super::privacy::{is_code, personal_heading, personal_value};
use super::things::read_thing;
use super::{Home, HomeFloor, HomeNeed, Reads};
use crate::finding::Finding;
use crate::place::{FileId, Placed};
use crate::plan::Floor;
use crate::quantity::Length;
use crate::read::Line;
use crate::read::desk::{Desk, FromNode};
use crate::read::node::{Node, Value};
use crate::read::record::record;
use crate::read::words::Surface;
use crate::read::yaml::read_tree;

record! {
    /// A home as it is written.
    pub struct HomeDoc = "a home" {
        /// Letters, digits and hyphens, with a digit.
        code: Placed<Line> = "H31",
        /// Minutes in a day.
        minutes: Placed<u32>,
        /// Clear floors.
        floors: Vec<FloorDoc>,
        /// Things at home, each with its number before it.
        things: Vec<Placed<Line>> = "8 pairs of rolled socks",
        /// People who can join in or stay near.
        helpers: Option<Placed<u32>>,
        /// Seated, low vision, quiet.
        needs: Vec<Placed<HomeNeed>>,
        /// BCP 47.
        language: Option<Placed<Line>> = "en-GB",
        /// Paper or phone.
        reads: Option<Placed<Reads>>,
    }
}

record! {
    /// A clear floor.
    pub struct FloorDoc = "a floor of a home" {
        /// Its length.
        length: Placed<Length>,
        /// Its width.
        width: Placed<Length>,
        /// Up to the ceiling.
        height: Option<Placed<Length>>,
        /// What is underfoot.
        surface: Option<Placed<Surface>>,
        /// Whether it is outdoors.
        outdoors: Option<Placed<bool>>,
        /// The corner that is missing from an L.
        corner: Option<CornerDoc>,
    }
}

record! {
    /// The corner that is missing from an L-shaped floor.
    pub struct CornerDoc = "the missing corner" {
        /// Along the length.
        length: Placed<Length>,
        /// Along the width.
        width: Placed<Length>,
    }
}

/// Reads one home.
pub fn read_home(text: &str, file: FileId) -> (Vec<Home>, Vec<Finding>) {
    let tree = match read_tree(text, file) {
        Ok(tree) => tree,
        Err(fault) => return (Vec::new(), vec![*fault]),
    };
    let mut desk = Desk::default();
    refuse_people(&tree, &mut desk);
    if !desk.findings.is_empty() {
        return (Vec::new(), desk.findings);
    }
    let home = HomeDoc::from_node(&tree, &mut desk).and_then(|doc| home_of(doc, &mut desk));
    (home.into_iter().collect(), desk.findings)
}

/// Refuses keys and values that are about people, at any depth.
fn refuse_people(node: &Node, desk: &mut Desk) {
    let way_out = "Take it out. A home goes by a code such as H07; keep the list of who is who somewhere safe.";
    let mut refuse = |place, what: &str| {
        let says = format!("This looks like {what}.");
        desk.findings.push(Finding::problem("homes-personal", place, says, way_out));
    };
    match &node.value {
        Value::Scalar(text) => {
            if let Some(what) = personal_value(text) {
                refuse(node.place, what);
            }
        }
        Value::Fields(fields) => {
            for field in fields {
                if let Some(what) = personal_heading(&field.key) {
                    refuse(field.key_place, what);
                }
            }
            for field in fields {
                refuse_people(&field.node, desk);
            }
        }
        Value::List(items) => {
            for item in items {
                refuse_people(item, desk);
            }
        }
        Value::Empty => {}
    }
}

fn home_of(doc: HomeDoc, desk: &mut Desk) -> Option<Home> {
    if !is_code(&doc.code) {
        let says = format!("“{}” may be a name.", doc.code.value);
        let way_out =
            "Write a code of letters, digits and hyphens with a digit in it, such as H07.";
        desk.refuse(doc.code.place, says, way_out);
        return None;
    }
    Some(Home {
        code: doc.code.map(|code| code.0),
        minutes: crate::quantity::Duration::from_minutes(doc.minutes.value),
        floors: doc.floors.into_iter().take(MOST_FLOORS).map(|doc| floor_of(&doc)).collect(),
        things: doc.things.iter().map(|thing| read_thing(thing, thing.place)).collect(),
        helpers: doc.helpers.map_or(0, |helpers| helpers.value),
        needs: doc.needs.iter().map(|need| need.value).collect(),
        language: doc.language.map(|language| language.value.0),
        reads: doc.reads.map_or(Reads::Paper, |reads| reads.value),
    })
}

fn floor_of(doc: &FloorDoc) -> HomeFloor {
    let (length, width) = (doc.length.value, doc.width.value);
    let corner = doc.corner.as_ref().map(|corner| (corner.length.value, corner.width.value));
    let notch = corner.filter(|(l, w)| *l < length && *w < width);
    HomeFloor {
        floor: Floor { length, width, notch },
        height: doc.height.as_ref().map(|height| height.value),
        surface: doc.surface.as_ref().map(|surface| surface.value),
        is_outdoors: doc.outdoors.as_ref().is_some_and(|outdoors| outdoors.value),
    }
}
