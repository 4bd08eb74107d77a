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

/// Finds the pack that the paths mean: one folder, or files of one pack.
///
/// # Errors
/// A sentence for the teacher.
pub fn choose_pack(paths: &[PathBuf]) -> Result<Chosen, String> {
    match paths {
        [folder] if folder.is_dir() => {
            Ok(Chosen { folder: folder.clone(), selection: Selection::All })
        }
        files => choose_files(files),
    }
}

fn choose_files(files: &[PathBuf]) -> Result<Chosen, String> {
    let mut folder: Option<PathBuf> = None;
    let mut chosen = BTreeSet::new();
    for file in files {
        if file.is_dir() {
            return Err(format!(
                "{} is a folder: inspect one pack at a time, or single files of one pack.",
                file.display()
            ));
        }
        if !file.exists() {
            return Err(format!("There is no file or folder {}.", file.display()));
        }
        let pack = pack_of(file);
        if folder.as_ref().is_some_and(|known| *known != pack) {
            return Err("These files belong to different packs: inspect one pack at a time.".into());
        }
        chosen.insert(path_inside(file, &pack));
        folder = Some(pack);
    }
    let folder = folder.ok_or("Name a pack or a file.")?;
    Ok(Chosen { folder, selection: Selection::Only(chosen) })
}

/// The nearest folder above a file that holds pack.yaml, else the file's own folder.
fn pack_of(file: &Path) -> PathBuf {
    let whole = std::path::absolute(file).unwrap_or_else(|_| file.to_owned());
    let own = whole.parent().unwrap_or(Path::new(".")).to_owned();
    own.ancestors()
        .find(|folder| folder.join("pack.yaml").is_file())
        .map_or(own.clone(), Path::to_owned)
}

fn path_inside(file: &Path, pack: &Path) -> String {
    let whole = std::path::absolute(file).unwrap_or_else(|_| file.to_owned());
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
