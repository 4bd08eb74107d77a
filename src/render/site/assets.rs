//! What the pages load: style sheets, drawings, fonts, and the pack's pictures.

use std::collections::BTreeSet;

use super::home_rules::{self, fill_rules};
use crate::pack::{Lead, Pack, Session};
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
    for text in pack.sessions.iter().flat_map(Session::texts).chain(pack.texts()) {
        for link in links_of(text.value) {
            if let Lead::Picture(path) = pack.lead(text.place.file, &link) {
                used.insert(path.to_owned());
            }
        }
    }
    used
}

/// Takes whole lines of comment (`//`), indentation and empty lines out of a script. Our scripts hold no
/// text of several lines in one pair of quotes, so that nothing else can be met.
pub(super) fn tighten_script(bytes: &[u8]) -> Vec<u8> {
    let text = String::from_utf8_lossy(bytes);
    let kept =
        text.lines().map(str::trim).filter(|line| !line.is_empty() && !line.starts_with("//"));
    kept.fold(String::new(), |script, line| script + line + "\n").into_bytes()
}

/// Takes comments and needless spaces out of a style sheet; what stands in quotes stays.
fn tighten_sheet(bytes: &[u8]) -> Vec<u8> {
    let text = String::from_utf8_lossy(bytes);
    let mut sheet = String::with_capacity(text.len());
    let mut letters = without_comments(&text).into_iter().peekable();
    let mut quote = None;
    while let Some(letter) = letters.next() {
        if quote.is_some() || !letter.is_whitespace() {
            quote = match (quote, letter) {
                (None, '"' | '\'') => Some(letter),
                (Some(open), _) if open == letter && !sheet.ends_with('\\') => None,
                _ => quote,
            };
            sheet.push(letter);
        } else if !is_open(&sheet) && !matches!(letters.peek(), Some('{' | '}') | None) {
            sheet.push(' ');
        }
    }
    sheet.into_bytes()
}

/// Whether a space would say nothing here.
fn is_open(sheet: &str) -> bool {
    sheet.is_empty() || sheet.ends_with(['{', '}', ';', ':', ',', ' '])
}

fn without_comments(text: &str) -> Vec<char> {
    let mut kept = Vec::with_capacity(text.len());
    let mut rest = text;
    while let Some((before, after)) = rest.split_once("/*") {
        kept.extend(before.chars());
        rest = after.split_once("*/").map_or("", |(_, after)| after);
    }
    kept.extend(rest.chars());
    kept
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_script_keeps_every_line_that_does_something() {
        let script = "// What it does.\n\n(() => {\n  // why\n  say(`a // b`);\n})();\n";
        assert_eq!(tighten_script(script.as_bytes()), b"(() => {\nsay(`a // b`);\n})();\n");
    }

    #[test]
    fn comments_are_left_at_home() {
        let tight = |sheet: &str| String::from_utf8(tighten_sheet(sheet.as_bytes())).unwrap();
        assert_eq!(
            tight("/* a\n b */\n\np { color: red } /* c */\n  a > b, i { b: c }\n/* open"),
            "p{color:red}a > b,i{b:c}"
        );
        assert_eq!(
            tight("p::after { content: \" a; b \" counter(c) }"),
            "p::after{content:\" a; b \" counter(c)}"
        );
        assert_eq!(
            tight("p { margin: 0 calc(1px + 2px) }\n@media (min-width: 4em) { a :is(b) { c: d } }"),
            "p{margin:0 calc(1px + 2px)}@media (min-width:4em){a :is(b){c:d}}"
        );
    }
}
