//! The sound pack that the rules' examples are laid over, so that each can be short and still be
//! tested as it is written in the reference.

use std::collections::BTreeMap;

use crate::quantity::{Date, Quantity};
use crate::source::Memory;

/// Where an example's session stands in its pack.
const SESSION: &str = "games/example.yaml";

const SOUND_PACK: &str = include_str!("sound/pack.yaml");
const SOUND_EQUIPMENT: &str = include_str!("sound/equipment.yaml");
const SOUND_CURRICULUM: &str = include_str!("sound/curriculum.yaml");
const SOUND_SESSION: &str = include_str!("sound/session.yaml");

/// The pack that an example makes: the sound files, with the example's keys in place of theirs.
pub fn example_pack(example: &str) -> Memory {
    let mut files: BTreeMap<String, String> = [
        ("pack.yaml", SOUND_PACK),
        ("equipment.yaml", SOUND_EQUIPMENT),
        ("curriculum.yaml", SOUND_CURRICULUM),
        (SESSION, SOUND_SESSION),
    ]
    .map(|(path, text)| (path.to_owned(), text.to_owned()))
    .into();
    for (path, is_whole, text) in files_of(example) {
        let sound = files.get(&path).map_or(SOUND_SESSION, String::as_str);
        let text = if is_whole { text } else { lay_over(sound, &text) };
        files.insert(path, text);
    }
    let today = Date::read_quantity("2026-06-01").expect("a date in the calendar");
    Memory { files: files.into_iter().map(|(path, text)| (path, text.into_bytes())).collect(), today }
}

/// The files of an example: path, whether it stands alone, and text.
fn files_of(example: &str) -> Vec<(String, bool, String)> {
    let mut files = vec![(SESSION.to_owned(), false, String::new())];
    for line in example.lines() {
        if let Some(path) = line.strip_prefix("# file: ") {
            files.push((path.trim().to_owned(), false, String::new()));
        } else if let Some(path) = line.strip_prefix("# whole file: ") {
            files.push((path.trim().to_owned(), true, String::new()));
        } else if let Some((_, _, text)) = files.last_mut() {
            text.push_str(line);
            text.push('\n');
        }
    }
    files
}

/// Replaces the top-level keys of `sound` by those of `over`; a key that `over` gives as `key: ~`
/// is taken out.
fn lay_over(sound: &str, over: &str) -> String {
    let over_groups = groups(over);
    let replaced: Vec<String> = over_groups.iter().map(|(key, _)| key.clone()).collect();
    let kept = groups(sound).into_iter().filter(|(key, _)| !replaced.contains(key));
    let is_written = |(_, text): &(String, String)| !text.trim_end().ends_with(": ~");
    let laid = over_groups.into_iter().filter(is_written);
    kept.chain(laid).map(|(_, text)| text).collect()
}

/// Top-level keys with all the lines that belong to each.
fn groups(text: &str) -> Vec<(String, String)> {
    let mut found: Vec<(String, String)> = Vec::new();
    for line in text.lines() {
        let starts_key = line.starts_with(|c: char| c.is_ascii_alphabetic());
        let key = line.split(':').next().unwrap_or_default();
        if starts_key || found.is_empty() {
            found.push((key.to_owned(), String::new()));
        }
        if let Some((_, lines)) = found.last_mut() {
            lines.push_str(line);
            lines.push('\n');
        }
    }
    found.retain(|(_, lines)| !lines.trim().is_empty());
    found
}
