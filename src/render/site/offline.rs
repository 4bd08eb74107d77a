//! The worker that keeps pages for when there is no network. A browser takes it only over http(s).
//!
//! Its text is `static/offline/worker.js` with two constants before it: an edition, which is a mark of every
//! byte of this language’s pages, and the files to keep from the start. The same pages give the same bytes;
//! any change gives another edition, whose worker puts away what the last one kept.

use super::Site;
use super::assets::{FOLDERS, house_assets};
use crate::render::Bundle;

/// The path of the worker below the folder of its language, so that it answers for all pages there.
pub(super) const WORKER: &str = "sw.js";

/// What every visit needs. Other letters, sheets and pages are kept once they have been asked for.
const USUAL_FONTS: [&str; 2] = ["static/fonts/andika-400.woff2", "static/fonts/andika-700.woff2"];

/// The worker for the pages in a bundle.
pub(super) fn render_worker(site: &Site<'_>, pages: &Bundle) -> Vec<u8> {
    let house = &site.publication.house;
    let shared = house_assets(house, &FOLDERS, false);
    let edition = mark_of(pages.iter().chain(&shared));
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

/// A mark of paths and bytes, in order: the hash FNV-1a (Fowler, Noll and Vo; 128 bits).
fn mark_of<'b>(files: impl Iterator<Item = (&'b String, &'b Vec<u8>)>) -> String {
    const BASIS: u128 = 0x6c62_272e_07bb_0142_62b8_2175_6295_c58d;
    const PRIME: u128 = 0x0000_0000_0100_0000_0000_0000_0000_013b;
    let mut mark = BASIS;
    for (path, bytes) in files {
        let length = (bytes.len() as u64).to_be_bytes();
        for byte in path.as_bytes().iter().chain(&[0]).chain(&length).chain(bytes) {
            mark = (mark ^ u128::from(*byte)).wrapping_mul(PRIME);
        }
    }
    format!("{mark:032x}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn any_change_gives_another_mark() {
        let mark = |path: &str, text: &str| mark_of([(&path.to_owned(), &text.into())].into_iter());
        assert_eq!(mark("a", "b"), mark("a", "b"));
        assert_ne!(mark("a", "b"), mark("a", "c"));
        assert_ne!(mark("a", "b"), mark("b", "b"));
        // FNV-1a of nothing is its offset basis (draft-eastlake-fnv).
        assert_eq!(mark_of(std::iter::empty()), "6c62272e07bb014262b821756295c58d");
    }
}
