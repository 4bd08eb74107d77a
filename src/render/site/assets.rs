//! What the pages load: style sheets, drawings, fonts, and the pack's pictures.

use std::collections::BTreeSet;

use super::home_rules::{self, fill_rules};
use super::tighten::{tighten_script, tighten_sheet};
use crate::pack::{Lead, Pack};
use crate::picture::pixels_of;
use crate::prose::links_of;
use crate::render::house::House;
use crate::render::{Bundle, Publication};

/// House folders and where their files are published. Fonts for paper lie elsewhere and stay at home.
pub(super) const FOLDERS: [(&str, &str); 2] =
    [("static/site/", "static/"), ("static/fonts/", "static/fonts/")];

pub(super) fn gather_assets(publication: &Publication<'_>) -> Bundle {
    let mut bundle = house_assets(&publication.house, &FOLDERS, uses_arabic(publication));
    if !publication.wants_below("pictures/") {
        return bundle;
    }
    // Only what is a picture is published: a file may be named .png and be anything.
    let used = used_pictures(publication.pack);
    let pictures = publication.pack.pictures.iter();
    let pictures =
        pictures.filter(|(path, bytes)| used.contains(*path) && pixels_of(bytes).is_some());
    bundle.extend(pictures.map(|(path, bytes)| (format!("pictures/{path}"), bytes.to_vec())));
    bundle
}

/// The fonts for Arabic letters are large: they are published where a page is written with them.
fn uses_arabic(publication: &Publication<'_>) -> bool {
    let is_written =
        |language: &str| ["ar", "ur", "fa", "ps"].iter().any(|tag| language.starts_with(tag));
    publication.editions.iter().any(|edition| is_written(&edition.language))
}

fn is_arabic(path: &str) -> bool {
    path.contains("/scheherazade")
}

/// The house files of some folders, each with where it is published.
pub(super) fn house_assets(house: &House<'_>, folders: &[(&str, &str)], arabic: bool) -> Bundle {
    let mut bundle = Bundle::new();
    for (home, published) in folders {
        let paths = house.paths_below(home.trim_end_matches('/'));
        let is_wanted = |path: &String| !path.ends_with(".md") && (arabic || !is_arabic(path));
        for path in paths.into_iter().filter(is_wanted) {
            let bytes = house.file(&path).unwrap_or_default();
            let to = path.replacen(home, published, 1);
            let bytes = match path.rsplit_once('.') {
                Some((_, "css")) => tighten_sheet(bytes),
                Some((_, "js")) if to == home_rules::SCRIPT => fill_rules(&tighten_script(bytes)),
                Some((_, "js")) => tighten_script(bytes),
                _ => bytes.to_vec(),
            };
            bundle.insert(to, bytes);
        }
    }
    bundle
}

/// The pictures that something shown uses. Others may lie beside the sessions, even of children: they
/// stay at home.
fn used_pictures(pack: &Pack) -> BTreeSet<String> {
    let mut used = BTreeSet::new();
    for session in &pack.sessions {
        let parts = session.parts.iter().flat_map(|part| &part.pictures);
        used.extend(
            session.pictures.iter().chain(parts).filter_map(|picture| picture.path.clone()),
        );
    }
    for text in pack.sessions.iter().flat_map(|session| session.texts()).chain(pack.texts()) {
        for link in links_of(text.value) {
            if let Lead::Picture(path) = pack.lead(text.place.file, &link) {
                used.insert(path.to_owned());
            }
        }
    }
    used
}
