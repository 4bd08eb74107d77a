//! Which pack, and which of its files, the paths on the command line mean.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use crate::quantity::{Date, Quantity};
use crate::read::Selection;
use crate::source::Folder;

/// A pack's folder and the sessions asked for.
#[derive(Debug)]
pub struct Chosen {
    pub folder: PathBuf,
    pub selection: Selection,
}

/// Finds the pack that the paths mean: a pack’s folder, or folders and files inside one pack.
///
/// # Errors
/// A sentence for the teacher.
pub fn choose_pack(paths: &[PathBuf]) -> Result<Chosen, String> {
    let mut packs = BTreeSet::new();
    let mut chosen = BTreeSet::new();
    for path in paths {
        if !path.exists() {
            return Err(format!("There is no file or folder {}.", path.display()));
        }
        if path.is_file() && !is_session_name(path) {
            return Err(format!(
                "{} is no session file: their names end in .yaml and don’t begin with “_” or a dot.",
                path.display()
            ));
        }
        let pack = pack_of(path);
        chosen.insert(path_inside(path, &pack));
        packs.insert(pack);
    }
    let folder = packs.pop_first().ok_or("Name a pack or a file.")?;
    if !packs.is_empty() {
        return Err("These belong to different packs: inspect one pack at a time.".into());
    }
    let is_whole = chosen.contains("");
    let selection = if is_whole { Selection::All } else { Selection::Only(chosen) };
    Ok(Chosen { folder, selection })
}

fn is_session_name(path: &Path) -> bool {
    let name = path.file_name().map(|name| name.to_string_lossy().to_lowercase());
    name.is_some_and(|name| {
        (name.ends_with(".yaml") || name.ends_with(".yml")) && !name.starts_with(['_', '.'])
    })
}

/// The nearest folder, from a path upwards, that holds pack.yaml; else the folder itself, or the one
/// that the file stands in.
fn pack_of(path: &Path) -> PathBuf {
    let whole = std::path::absolute(path).unwrap_or_else(|_| path.to_owned());
    let own =
        if whole.is_dir() { whole.as_path() } else { whole.parent().unwrap_or(Path::new(".")) };
    let has_pack = |folder: &&Path| folder.join("pack.yaml").is_file();
    own.ancestors().find(has_pack).unwrap_or(own).to_owned()
}

fn path_inside(path: &Path, pack: &Path) -> String {
    let whole = std::path::absolute(path).unwrap_or_else(|_| path.to_owned());
    let inside = whole.strip_prefix(pack).unwrap_or(&whole);
    inside.iter().map(|part| part.to_string_lossy()).collect::<Vec<_>>().join("/")
}

/// The folder as a source, on the date that was asked for.
///
/// # Errors
/// Where the date can't be read.
pub fn open_folder(folder: &Path, as_of: Option<&str>) -> Result<Folder, String> {
    let source = Folder::new(folder);
    match as_of.map(Date::read_quantity).transpose() {
        Ok(None) => Ok(source),
        Ok(Some(today)) => Ok(source.on(today)),
        Err(fault) => Err(format!("After --as-of: {}. {}", fault.says, fault.way_out)),
    }
}
