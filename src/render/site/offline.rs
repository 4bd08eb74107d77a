//! The worker that keeps pages for when there is no network. A browser takes it only over http(s).
//!
//! Its text is `static/offline/worker.js` with two constants before it: an edition, which is a mark of every
//! byte of this language’s pages, and the files to keep from the start. The same pages give the same bytes;
//! any change gives another edition, whose worker puts away what the last one kept.

use std::collections::BTreeMap;

use rayon::prelude::*;

use super::Site;
use super::assets::{FOLDERS, house_assets};
use crate::render::Bundle;
use crate::render::key::{Key, KeyMaker};

/// The path of the worker below the folder of its language, so that it answers for all pages there.
pub(super) const WORKER: &str = "sw.js";

/// What every visit needs. Other letters, sheets and pages are kept once they have been asked for.
const USUAL_FONTS: [&str; 2] = ["static/fonts/andika-400.woff2", "static/fonts/andika-700.woff2"];

/// The worker for the pages in a bundle, and for those that stay as they were published.
pub(super) fn render_worker(
    site: &Site<'_>,
    pages: &Bundle,
    left: &BTreeMap<String, Key>,
) -> Vec<u8> {
    let house = &site.publication.house;
    let shared = house_assets(house, &FOLDERS, false);
    let made: Vec<_> = pages.iter().chain(&shared).collect();
    let made = made.into_par_iter().map(|(path, bytes)| (path.as_str(), Key::of(bytes)));
    let mut marks: BTreeMap<&str, Key> = made.collect();
    marks.extend(left.iter().map(|(path, key)| (path.as_str(), *key)));
    let edition = mark_of(&marks);
    let up = site.up();
    let is_usual = |path: &&String| {
        USUAL_FONTS.contains(&path.as_str())
            || path.ends_with(".css")
            || path.ends_with(".js")
            || path.ends_with(".svg")
    };
    let mut files: Vec<String> =
        shared.keys().filter(is_usual).map(|path| format!("{up}{path}")).collect();
    files.extend(["index.html", "things.html", "static/choose.css"].map(str::to_owned));
    files.sort();
    let list = serde_json::to_string(&files).unwrap_or_default();
    let body = house.text("static/offline/worker.js");
    let body = super::tighten::tighten_script(body.as_bytes());
    let head = format!("\"use strict\";\nconst EDITION = \"{edition}\";\nconst FILES = {list};\n");
    [head.into_bytes(), body].concat()
}

/// A mark of paths and bytes, in the order of the paths: the first half of the SHA-256 of what the files’ own are.
fn mark_of(files: &BTreeMap<&str, Key>) -> String {
    let all = files.iter();
    let all =
        all.fold(KeyMaker::default(), |all, (path, key)| all.with(path).with(key.to_string()));
    all.finish().to_string().chars().take(32).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn any_change_gives_another_mark() {
        let mark = |path, text: &str| mark_of(&[(path, Key::of(text.as_bytes()))].into());
        assert_eq!(mark("a", "b"), mark("a", "b"));
        assert_ne!(mark("a", "b"), mark("a", "c"));
        assert_ne!(mark("a", "b"), mark("b", "b"));
        // The beginning of the SHA-256 of nothing (NIST’s example of an empty message).
        assert_eq!(mark_of(&BTreeMap::new()), "e3b0c44298fc1c149afbf4c8996fb924");
    }
}
