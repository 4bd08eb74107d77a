//! The library of poses: those shipped with the program and a pack’s own, by the trade’s names.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use super::pose::{Pose, blend};
use super::strip::{Caption, Figure, Moment};
use crate::place::{FileId, Place, Placed};
use crate::read::Line;
use crate::read::desk::{Desk, FromNode};
use crate::read::figure_file::{MomentDoc, PosesDoc};
use crate::read::yaml::read_tree;

const SHIPPED: &str = include_str!("../../static/poses/poses.yaml");

static LIBRARY: LazyLock<Library> = LazyLock::new(|| {
    let tree = read_tree(SHIPPED, FileId(0)).expect("the shipped poses are YAML");
    let mut desk = Desk::default();
    let doc = PosesDoc::from_node(&tree, &mut desk).expect("the shipped poses are a list");
    assert!(desk.findings.is_empty(), "the shipped poses are sound: {:?}", desk.findings);
    let mut library = Library::default();
    library.add(&doc);
    library
});

/// A pose of the library.
#[derive(Clone, Debug)]
pub struct Named {
    pub name: String,
    pub pose: Pose,
    /// Where a pack’s own file has it; `None` for those shipped.
    pub place: Option<Place>,
}

/// Poses in the order they were written, with their places by name.
#[derive(Clone, Debug, Default)]
pub struct Library {
    pub poses: Vec<Named>,
    by_name: BTreeMap<String, usize>,
    /// A pack’s own poses that begin from a pose there is none of.
    pub unknown: Vec<Placed<Line>>,
}

impl Library {
    /// The poses that come with the program.
    pub fn shipped() -> &'static Self {
        &LIBRARY
    }

    /// Those with a pack’s own; one of the same name takes the place of ours.
    pub fn with_own(doc: Option<&PosesDoc>) -> Self {
        let mut library = Self::shipped().clone();
        let shipped = library.poses.len();
        if let Some(doc) = doc {
            library.add(doc);
            for named in library.poses.iter_mut().take(shipped) {
                named.place = None;
            }
        } else {
            for named in &mut library.poses {
                named.place = None;
            }
        }
        library
    }

    fn add(&mut self, doc: &PosesDoc) {
        for written in &doc.poses {
            let Some(name) = &written.keys.name else { continue };
            let (pose, unknown) = self.pose_of(written);
            self.unknown.extend(unknown);
            self.by_name.insert(name.to_string(), self.poses.len());
            self.poses.push(Named { name: name.to_string(), pose, place: Some(written.place) });
        }
    }

    pub fn find(&self, name: &str) -> Option<&Pose> {
        self.by_name.get(name).and_then(|at| self.poses.get(*at)).map(|named| &named.pose)
    }

    pub fn names(&self) -> Vec<&str> {
        self.by_name.keys().map(String::as_str).collect()
    }

    /// The figure of a part.
    pub fn figure(&self, docs: Vec<MomentDoc>) -> Figure {
        Figure { moments: docs.into_iter().map(|doc| self.moment(doc)).collect() }
    }

    fn moment(&self, doc: MomentDoc) -> Moment {
        let (pose, unknown) = self.pose_of(&doc);
        let keys = doc.keys;
        let words = keys.says.map(Caption::Words);
        Moment {
            place: doc.place,
            name: keys.pose.map(|name| name.to_string()),
            is_changed: doc.angles.each().next().is_some() || keys.towards.is_some(),
            pose,
            unknown,
            holds: keys.holds,
            caption: keys.point.map(Caption::Point).or(words),
            arrows: keys.arrow.into_iter().map(|arrow| arrow.value).collect(),
        }
    }

    /// A pose with its changes, and the names that there is no pose of.
    fn pose_of(&self, doc: &MomentDoc) -> (Pose, Vec<Placed<Line>>) {
        let keys = &doc.keys;
        let mut unknown = Vec::new();
        let mut find = |name: &Option<Placed<Line>>| {
            let name = name.as_ref()?;
            let found = self.find(name).cloned();
            if found.is_none() {
                unknown.push(name.clone());
            }
            found
        };
        let mut pose = find(&keys.pose).unwrap_or_default();
        if let Some(other) = find(&keys.towards) {
            let share = keys.share.as_ref().map_or(50, |share| share.value.min(100));
            pose = blend(&pose, &other, f64::from(share) / 100.0);
        }
        pose.angles = pose.angles.with(&doc.angles);
        pose.on = keys.on.as_ref().map_or(pose.on, |on| on.value);
        pose.view = keys.view.as_ref().map_or(pose.view, |view| view.value);
        pose.hold = keys.hand.as_ref().map(|hand| hand.value).or(pose.hold);
        pose.with.extend(keys.with.iter().map(|scene| scene.value));
        pose.is_handed = keys.handed.as_ref().map_or(pose.is_handed, |handed| handed.value);
        if keys.mirror.as_ref().is_some_and(|mirror| mirror.value) {
            pose = pose.mirrored();
        }
        (pose, unknown)
    }
}
