//! What a file of a pack is, by its path alone.

use std::collections::BTreeSet;

use super::translation::original_of;

/// The files that all sessions share, at the top of a pack.
const SHARED: [&str; 5] =
    ["pack.yaml", "equipment.yaml", "curriculum.yaml", "shared.yaml", "poses.yaml"];

/// Whether a file is a unit of work.
pub(super) fn is_unit(path: &str) -> bool {
    path.starts_with("units/")
}

/// Whether a file is written in YAML, by its name.
pub(super) fn is_yaml(path: &str) -> bool {
    let path = path.to_lowercase();
    path.ends_with(".yaml") || path.ends_with(".yml")
}

/// Whether a path, or a folder that it stands in, is among those asked for.
pub(super) fn stands_in(path: &str, asked: &BTreeSet<String>) -> bool {
    asked.contains(path) || path.rmatch_indices('/').any(|(at, _)| asked.contains(&path[..at]))
}

/// Whether a file is shared by all sessions.
pub fn is_shared(path: &str) -> bool {
    SHARED.contains(&path)
}

/// The right name of a shared file that stands under a near one: pack.yml, games/equipment.yaml.
pub(super) fn misnamed(path: &str) -> Option<&'static str> {
    let name = path.rsplit('/').next()?.to_lowercase();
    let stem = name.rsplit_once('.').map_or(name.as_str(), |(stem, _)| stem);
    SHARED.into_iter().find(|right| right.strip_suffix(".yaml") == Some(stem) && *right != path)
}

/// Whether a file of a pack is meant to be a session.
pub fn is_session(path: &str, paths: &BTreeSet<String>) -> bool {
    is_yaml(path)
        && !is_set_aside(path)
        && !is_shared(path)
        && !is_unit(path)
        && original_of(path, paths).is_none()
}

/// Folders of a pack that hold no sessions.
pub(super) fn is_set_aside(path: &str) -> bool {
    path.starts_with("look/") || path.split('/').rev().skip(1).any(|folder| folder == "pictures")
}

/// Whether a file is a picture, by its name.
pub(super) fn is_picture(path: &str) -> bool {
    let path = path.to_lowercase();
    [".png", ".jpg", ".jpeg"].iter().any(|ending| path.ends_with(ending))
}
