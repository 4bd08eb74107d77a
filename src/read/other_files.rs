//! What lies beside the documents of a pack: its pictures, and a look of its own.

use std::sync::Arc;

use super::Documents;
use super::paths::is_picture;
use crate::source::{Entry, EntryKind, Source};

/// Fonts of the large scripts are the largest files of a look.
const LARGEST_LOOK: u64 = 16 * 1024 * 1024;

/// A larger picture is for a camera, not for a phone on poor data.
pub(super) const LARGEST_PICTURE: u64 = 2 * 1024 * 1024;

pub(super) fn read_pictures(source: &dyn Source, entries: &[Entry], documents: &mut Documents) {
    let in_bounds = |entry: &&Entry| matches!(entry.kind, EntryKind::File { bytes } if bytes <= LARGEST_PICTURE);
    for entry in entries.iter().filter(|entry| is_picture(&entry.path)).filter(in_bounds) {
        if let Some(bytes) = bytes_of(source, &entry.path) {
            documents.pictures.insert(entry.path.clone(), bytes);
        }
    }
}

pub(super) fn read_look(source: &dyn Source, entries: &[Entry], documents: &mut Documents) {
    for entry in entries {
        let Some(path) = entry.path.strip_prefix("look/") else { continue };
        let is_small = matches!(entry.kind, EntryKind::File { bytes } if bytes <= LARGEST_LOOK);
        if is_small && let Some(bytes) = bytes_of(source, &entry.path) {
            documents.look.insert(path.to_owned(), bytes);
        }
    }
}

/// The bytes that the source holds, or else a copy.
fn bytes_of(source: &dyn Source, path: &str) -> Option<Arc<[u8]>> {
    source.held(path).or_else(|| Some(source.bytes(path).ok()?.into()))
}
