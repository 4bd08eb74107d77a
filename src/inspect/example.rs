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
/// A picture that examples can show; the sound session itself has none.
const SOUND_PICTURE: &[u8] = include_bytes!("sound/pictures/hop.png");
const PICTURE: &str = "games/pictures/hop.png";

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
    for section in sections_of(example) {
        let sound = files.get(&section.path).map_or(SOUND_SESSION, String::as_str);
        match section.form {
            Form::Over => files.insert(section.path, lay_over(sound, &section.text)),
            Form::Whole => files.insert(section.path, section.text),
            Form::Absent => files.remove(&section.path),
        };
    }
    let mut files: BTreeMap<String, Vec<u8>> =
        files.into_iter().map(|(path, text)| (path, text.into_bytes())).collect();
    files.entry(PICTURE.to_owned()).or_insert_with(|| SOUND_PICTURE.to_vec());
    let today = Date::read_quantity("2026-06-01").expect("a date in the calendar");
    Memory { files, today }
}

/// How a section of an example becomes a file.
enum Form {
    /// Laid over the sound file.
    Over,
    /// As it stands.
    Whole,
    /// The file is left out.
    Absent,
}

struct Section {
    path: String,
    form: Form,
    text: String,
}

/// The sections of an example; what stands before the first heading belongs to the session.
fn sections_of(example: &str) -> Vec<Section> {
    let section =
        |path: &str, form| Section { path: path.trim().into(), form, text: String::new() };
    let mut sections = vec![section(SESSION, Form::Over)];
    for line in example.lines() {
        if let Some(path) = line.strip_prefix("# file: ") {
            sections.push(section(path, Form::Over));
        } else if let Some(path) = line.strip_prefix("# whole file: ") {
            sections.push(section(path, Form::Whole));
        } else if let Some(path) = line.strip_prefix("# no file: ") {
            sections.push(section(path, Form::Absent));
        } else if let Some(section) = sections.last_mut() {
            section.text.push_str(line);
            section.text.push('\n');
        }
    }
    sections
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
