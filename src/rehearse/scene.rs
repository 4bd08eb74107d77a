//! What is shown of a pack between two saves: the pack as it last was sound, its plans, and what is found
//! in it as it is now.

use std::collections::BTreeMap;
use std::fmt;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use crate::finding::{Finding, Severity};
use crate::pack::{Pack, SessionId};
use crate::place::Files;
use crate::plan::Plans;
use crate::render::Bundle;
use crate::render::shelf::Shelf;

/// One state of a pack. Its files are made when they are asked for, and then kept.
pub struct Scene {
    /// Counted from the first.
    pub number: u64,
    pub pack: Pack,
    pub plans: Vec<Arc<Plans>>,
    pub findings: Vec<Finding>,
    /// The files that the findings stand in, as they are now.
    pub files: Files,
    /// What the renderers made for this scene.
    pub(super) made: Mutex<Bundle>,
    pub(super) shelf: Arc<dyn Shelf + Send>,
}

impl fmt::Debug for Scene {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Scene").field("number", &self.number).finish_non_exhaustive()
    }
}

impl Scene {
    pub(super) fn made(&self) -> MutexGuard<'_, Bundle> {
        self.made.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// What is made of the look alone, to be kept for the next scene.
    pub(super) fn house_files(&self) -> Bundle {
        let made = self.made();
        let house = made.iter().filter(|(path, _)| {
            path.starts_with("static/") && !path.ends_with("choose.css") && !path.ends_with(".json")
        });
        house.map(|(path, bytes)| (path.clone(), bytes.clone())).collect()
    }

    /// The findings in the files of one session: its own and its translations.
    pub fn findings_of(&self, session: &str) -> Vec<&Finding> {
        let is_of = |path: &str| {
            let id = SessionId::of_path(path);
            let stem = path.rsplit_once('.').map_or(path, |(stem, _)| stem);
            let original =
                stem.rsplit_once('.').map(|(stem, _)| SessionId::of_path(&format!("{stem}.yaml")));
            id.as_str() == session || original.is_some_and(|id| id.as_str() == session)
        };
        let mut known: BTreeMap<u32, bool> = BTreeMap::new();
        self.findings
            .iter()
            .filter(|finding| {
                let file = finding.place.file;
                *known.entry(file.0).or_insert_with(|| is_of(&self.files.get(file).path))
            })
            .collect()
    }

    /// Whether a file of the pack is a session of this id, shown or not.
    pub fn has_file_of(&self, session: &str) -> bool {
        self.files.iter().any(|file| SessionId::of_path(&file.path).as_str() == session)
    }

    pub fn problems(&self) -> usize {
        crate::finding::count_severity(&self.findings, Severity::Problem)
    }
}
