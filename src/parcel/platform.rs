//! Pages and questions → a package that learning platforms import (1EdTech Common Cartridge 1.3): the pages as web
//! content in the folders they have anyway, so that every link holds, and one assessment a session.

use std::collections::BTreeSet;

use super::archive::{Packed, pack_files};
use super::manifest::{ASSESSMENT, About, Entry, PAGE, Resource, SHARED, write_manifest};
use super::questions::{AskedQuestion, write_assessment};
use crate::quantity::Date;
use crate::render::Bundle;

/// A session or a unit as the cartridge shows it.
#[derive(Clone, Debug)]
pub struct CartridgeFolder {
    pub title: String,
    /// Its page and its sheets: path and title, the page first.
    pub files: Vec<(String, String)>,
    /// What its assessment is called.
    pub review: String,
    /// None for a unit: its questions are those of its sessions.
    pub questions: Vec<AskedQuestion>,
}

/// Packs the cartridge: units first, then sessions, each in the order given.
pub fn write_cartridge(
    bundle: &Bundle,
    about: &About,
    (units, sessions): (&[CartridgeFolder], &[CartridgeFolder]),
    date: Option<Date>,
) -> Packed {
    let mut assessments = Bundle::new();
    let (mut entries, mut resources) = (Vec::new(), Vec::new());
    resources.push(page_resource("front", "index.html", true));
    entries.push(Entry {
        identifier: "item-front".into(),
        title: about.title.clone(),
        opens: Some("front".into()),
        inside: Vec::new(),
    });
    for (number, unit) in (1..).zip(units) {
        let (entry, own) = folder_entry("unit", number, unit);
        entries.push(entry);
        resources.extend(own);
    }
    for (number, session) in (1..).zip(sessions) {
        let (entry, own) = folder_entry("session", number, session);
        entries.push(entry);
        resources.extend(own);
        if !session.questions.is_empty() {
            let bytes = write_assessment(number, &session.title, &session.questions);
            assessments.insert(assessment_path(number), bytes);
        }
    }
    let listed: BTreeSet<&String> = resources.iter().flat_map(|resource| &resource.files).collect();
    let shared = bundle.keys().filter(|path| !listed.contains(path)).cloned().collect();
    resources.push(Resource {
        identifier: SHARED.into(),
        kind: PAGE,
        href: None,
        files: shared,
        needs_shared: false,
    });
    let manifest = write_manifest(about, &entries, &resources);
    let mut files = vec![("imsmanifest.xml".to_owned(), manifest.as_slice(), false)];
    let rest = bundle.iter().chain(&assessments);
    files.extend(rest.map(|(path, bytes)| (path.clone(), bytes.as_slice(), false)));
    pack_files(&files, date)
}

fn assessment_path(number: usize) -> String {
    format!("questions/session-{number}/assessment.xml")
}

fn page_resource(identifier: &str, path: &str, needs_shared: bool) -> Resource {
    Resource {
        identifier: identifier.to_owned(),
        kind: PAGE,
        href: Some(path.to_owned()),
        files: vec![path.to_owned()],
        needs_shared,
    }
}

/// A folder with the page, the sheets and the questions of a session or a unit.
fn folder_entry(kind: &str, number: usize, folder: &CartridgeFolder) -> (Entry, Vec<Resource>) {
    let (mut inside, mut resources) = (Vec::new(), Vec::new());
    let mut add = |name: String, title: &str, resource: Resource| {
        inside.push(Entry {
            identifier: format!("item-{name}"),
            title: title.to_owned(),
            opens: Some(resource.identifier.clone()),
            inside: Vec::new(),
        });
        resources.push(resource);
    };
    for (at, (path, title)) in folder.files.iter().enumerate() {
        let name = format!("{kind}-{number}-{at}");
        let is_page = path.ends_with(".html");
        add(name.clone(), title, page_resource(&name, path, is_page));
    }
    if !folder.questions.is_empty() {
        let (name, path) = (format!("questions-{number}"), assessment_path(number));
        let resource = Resource { kind: ASSESSMENT, ..page_resource(&name, &path, false) };
        add(name, &folder.review, Resource { href: None, ..resource });
    }
    let entry = Entry {
        identifier: format!("folder-{kind}-{number}"),
        title: folder.title.clone(),
        opens: None,
        inside,
    };
    (entry, resources)
}
