//! What surrounds every page.

use serde::Serialize;

use super::Site;
use super::feed::{FEED, has_feed};
use super::html::{Html, Scribe};
use crate::pack::{Pack, Session, Unit};
use crate::prose::plain_line;
use crate::render::borrowed_phrases::say_borrowed;
use crate::render::phrases::is_right_to_left;
use crate::render::unit::unit_page;
use crate::render::{Edition, page_path};

/// The page's way round, head and foot.
#[derive(Serialize, Clone, Debug)]
pub(super) struct Frame {
    /// From this page up to the top folder: nothing, `../`, `../../` …
    root: String,
    /// From this page up to the folder of style sheets and pictures.
    top: String,
    /// The same page in every language it is in; empty where there is one.
    versions: Vec<Version>,
    language: String,
    direction: &'static str,
    /// The page’s own address on the web, where the pack says where it will stand.
    address: Option<String>,
    /// `en_GB`, as Open Graph writes a language.
    locale: String,
    /// The feed of this language, from the top folder.
    feed: Option<&'static str>,
    /// For the window's title.
    title: String,
    /// One plain sentence.
    description: String,
    pack: String,
    school: Option<String>,
    /// Which page this is.
    here: &'static str,
    /// It stands in the teachers’ folder: `root` then leads to the families’, `top` to its own.
    is_for_teachers: bool,
    /// There is a page about what changed since an earlier edition.
    has_changes: bool,
    contact: Option<Html>,
    licence: Option<Licence>,
    credit: Option<Html>,
    /// Where a session was borrowed, and who changed it.
    borrowed: Option<String>,
}

/// A page in one language.
#[derive(Serialize, Clone, Debug)]
struct Version {
    language: String,
    direction: &'static str,
    name: String,
    href: String,
    /// Its address on the web, where the pack says where it will stand.
    address: Option<String>,
    is_here: bool,
}

/// A licence by its name, with its text's address where it is one of the well-known ones.
#[derive(Serialize, Clone, Debug)]
pub(super) struct Licence {
    name: String,
    pub(super) href: Option<String>,
}

/// The frame of a page at the top of the site.
pub(super) fn frame_of_page(
    site: &Site<'_>,
    here: &'static str,
    title: &str,
    about: &str,
) -> Frame {
    let pack = site.publication.pack;
    let path = if here == "front" { "index.html".to_owned() } else { format!("{here}.html") };
    let is_shared = matches!(here, "front" | "things" | "changes");
    let mut frame = bare_frame(site, (&path, is_shared), "", here, (title, about));
    // A page about many sessions names a licence and a maker only where all of them share it.
    frame.licence =
        shared(pack, |session| session.licence.as_deref()).map(|name| licence_of(&name));
    if shared(pack, |session| session.credit.as_deref()).is_some() {
        let credit = pack.sessions.iter().find_map(|session| session.credit.as_ref());
        frame.credit = Scribe::new(pack, &frame.root).line_if_any(credit);
    }
    frame
}

/// The frame of a session's page, the families’ or the teachers’.
pub(super) fn frame_of_session(site: &Site<'_>, here: &'static str, session: &Session) -> Frame {
    let pack = site.publication.pack;
    let root = root_of(session);
    let title = plain_line(&session.title);
    let about = plain_line(&session.summary);
    let path = page_path(&session.id);
    let mut frame = bare_frame(site, (&path, true), &root, here, (&title, &about));
    frame.licence = session.licence.as_ref().map(|name| licence_of(name));
    let scribe = Scribe::new(pack, &frame.root);
    frame.credit = session.credit.as_ref().map(|credit| scribe.line(credit));
    frame.borrowed = say_borrowed(session, &site.words);
    frame
}

/// The frame of a unit’s page, the families’ or the teachers’.
pub(super) fn frame_of_unit(site: &Site<'_>, here: &'static str, unit: &Unit) -> Frame {
    let title = plain_line(&unit.title);
    let about = unit.summary.as_ref().map_or_else(|| title.clone(), |summary| plain_line(summary));
    bare_frame(site, (&unit_page(unit), true), &unit_root(unit), here, (&title, &about))
}

/// The way up from a unit's page.
pub(super) fn unit_root(unit: &Unit) -> String {
    "../".repeat(unit.id.depth() + 1)
}

fn bare_frame(
    site: &Site<'_>,
    (path, is_shared): (&str, bool),
    up: &str,
    here: &'static str,
    (title, about): (&str, &str),
) -> Frame {
    let pack = site.publication.pack;
    let (root, top) = site.ways_from(up);
    let name = plain_line(&pack.title);
    Frame {
        versions: if is_shared && site.families.is_none() {
            versions_of(site, path, &top)
        } else {
            Vec::new()
        },
        top,
        contact: pack.contact.as_ref().map(|contact| Scribe::new(pack, &root).line(contact)),
        root,
        language: pack.language.to_string(),
        address: site.address_of(if path == "index.html" { "" } else { path }),
        locale: pack.language.replace('-', "_"),
        feed: has_feed(site).then_some(FEED),
        direction: direction_of(&pack.language),
        title: if title == name { name.clone() } else { format!("{title} – {name}") },
        description: about.to_owned(),
        pack: name,
        school: pack.school.as_deref().map(plain_line),
        here,
        is_for_teachers: site.families.is_some(),
        has_changes: pack.has_changes,
        licence: None,
        credit: None,
        borrowed: None,
    }
}

/// The same page in every language. Search engines are told of full addresses only.
fn versions_of(site: &Site<'_>, path: &str, top: &str) -> Vec<Version> {
    let editions = &site.publication.editions;
    if editions.len() < 2 {
        return Vec::new();
    }
    let address = site.publication.pack.address.as_ref();
    let version = |(at, edition): (usize, &Edition)| Version {
        language: edition.language.clone(),
        direction: direction_of(&edition.language),
        name: edition.name.clone(),
        href: format!("{top}{}{path}", edition.folder),
        address: address
            .map(|site| format!("{}/{}{path}", site.trim_end_matches('/'), edition.folder)),
        is_here: at == site.publication.edition,
    };
    editions.iter().enumerate().map(version).collect()
}

/// The way up from a session's page: one step for `sessions`, one for each folder of its id.
pub(super) fn root_of(session: &Session) -> String {
    "../".repeat(session.id.depth() + 1)
}

/// What all offered sessions say alike.
fn shared<'p>(pack: &'p Pack, says: impl Fn(&'p Session) -> Option<LineOf<'p>>) -> Option<String> {
    let sessions = pack.sessions.iter().map(AsRef::as_ref);
    let mut said = sessions.filter(|session: &&Session| !session.is_retired()).map(says);
    let first = said.next()??;
    said.all(|other| other == Some(first)).then(|| first.to_string())
}

type LineOf<'p> = &'p crate::read::Line;

pub(super) fn direction_of(language: &str) -> &'static str {
    if is_right_to_left(language) { "rtl" } else { "ltr" }
}

pub(super) fn licence_of(name: &str) -> Licence {
    Licence { name: name.to_owned(), href: licence_address(name) }
}

/// Where the text of a licence stands, by its SPDX name.
fn licence_address(name: &str) -> Option<String> {
    match name {
        "CC0-1.0" => Some("https://creativecommons.org/publicdomain/zero/1.0/".into()),
        "OGL-UK-3.0" => Some(
            "https://www.nationalarchives.gov.uk/doc/open-government-licence/version/3/".into(),
        ),
        _ => {
            let (kind, version) = name
                .strip_prefix("CC-")?
                .to_lowercase()
                .rsplit_once('-')
                .map(|(kind, version)| (kind.to_owned(), version.to_owned()))?;
            let known = ["by", "by-sa", "by-nc", "by-nd", "by-nc-sa", "by-nc-nd"];
            let is_known =
                known.contains(&kind.as_str()) && ["3.0", "4.0"].contains(&version.as_str());
            is_known.then(|| format!("https://creativecommons.org/licenses/{kind}/{version}/"))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn well_known_licences_are_linked() {
        // SPDX licence list: the addresses under "Other web pages for this license".
        let by = licence_address("CC-BY-4.0");
        assert_eq!(by.as_deref(), Some("https://creativecommons.org/licenses/by/4.0/"));
        let share = licence_address("CC-BY-NC-SA-4.0");
        assert_eq!(share.as_deref(), Some("https://creativecommons.org/licenses/by-nc-sa/4.0/"));
        assert_eq!(licence_address("CC-X-9"), None);
        assert_eq!(licence_address("ask us"), None);
    }

    #[test]
    fn direction_follows_the_language() {
        assert_eq!(direction_of("ar-EG"), "rtl");
        assert_eq!(direction_of("en-GB"), "ltr");
    }
}
