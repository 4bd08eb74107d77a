//! What was found in a session, as a note that is kept from one run to the next, and the keys of such notes.
//!
//! A key holds all that a rule of sessions may look at: what the session comes from, what all share, the list of
//! files, pictures, the pack’s own look and the day.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::rules::find_rule;
use crate::finding::Finding;
use crate::pack::{Origins, Pack, Session, mark_of_files};
use crate::place::{FileId, Place};
use crate::render::key::{Key, KeyMaker};

/// The notes of the sessions of one pack.
#[derive(Debug)]
pub(super) struct Notebook<'p> {
    pack: &'p Pack,
    origins: Origins,
    shared: KeyMaker,
    /// Something may be found in a shared file: in what is used by name.
    files: BTreeMap<&'p str, FileId>,
}

impl<'p> Notebook<'p> {
    pub(super) fn of(pack: &'p Pack) -> Self {
        let origins = Origins::of(pack);
        let shared = KeyMaker::default()
            .with("found")
            .with(origins.shared().to_string())
            .with_all_of(&pack.shared_alone())
            .with_all_of(&pack.paths)
            .with(mark_of_files(&pack.pictures).to_string())
            .with(mark_of_files(&pack.look).to_string())
            .with(pack.today.to_string());
        let files = pack.files.each().map(|(id, file)| (file.path.as_str(), id)).collect();
        Self { pack, origins, shared, files }
    }

    pub(super) fn key(&self, session: &Session) -> Option<Key> {
        let own = self.origins.of_session(session)?;
        Some(self.shared.clone().with(own.to_string()).finish())
    }

    /// The note of what was found in a session.
    pub(super) fn write(&self, found: &[Finding], session: &Session) -> Option<Vec<u8>> {
        let path = |file: FileId| self.pack.files.get(file).path.clone();
        let noted = |finding: &Finding| Noted {
            code: finding.code.to_owned(),
            file: Some(finding.place.file).filter(|file| *file != session.file).map(path),
            start: finding.place.start,
            end: finding.place.end,
            says: finding.says.clone(),
            way_out: finding.way_out.clone(),
        };
        let all: Vec<Noted> = found.iter().map(noted).collect();
        serde_json::to_vec(&all).ok()
    }

    /// What a note says; nothing where it can’t be read.
    pub(super) fn read(&self, note: &[u8], session: &Session) -> Option<Vec<Finding>> {
        let all: Vec<Noted> = serde_json::from_slice(note).ok()?;
        let finding = |noted: Noted| {
            let rule = find_rule(&noted.code)?;
            let file = match &noted.file {
                Some(path) => *self.files.get(path.as_str())?,
                None => session.file,
            };
            Some(Finding {
                code: rule.code,
                severity: rule.severity,
                place: Place { file, start: noted.start, end: noted.end },
                says: noted.says,
                way_out: noted.way_out,
            })
        };
        all.into_iter().map(finding).collect()
    }
}

/// A finding, with its file where that is not the session’s own.
#[derive(Serialize, Deserialize)]
struct Noted {
    code: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    file: Option<String>,
    start: u32,
    end: u32,
    says: String,
    way_out: String,
}
