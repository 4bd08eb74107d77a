//! `homeground inspect --mend`: writes the files that mending changes, each beside itself and then in its place.

use std::io::Write;
use std::path::Path;

use super::console::Console;
use crate::Inspected;
use crate::mend::{MendedFile, mend_pack};
use crate::read::Selection;
use crate::source::Source;

/// Mends a pack in a folder and says what was changed; gives what is found in it afterwards.
///
/// # Errors
/// A sentence for the teacher; a file that could not be written is as it was.
pub fn mend_folder(
    folder: &Path,
    source: &dyn Source,
    selection: &Selection,
    console: &Console,
) -> Result<Inspected, String> {
    let mended = mend_pack(source, selection)?;
    for file in &mended.files {
        write_in_place(&folder.join(&file.path), file)?;
        for change in &file.changes {
            console.message(&format!("{}:{}: {}", file.path, change.line, change.says));
        }
    }
    let changes: usize = mended.files.iter().map(|file| file.changes.len()).sum();
    console.message(&if changes == 0 {
        "Mended nothing: what can be mended safely is in the house way.".to_owned()
    } else {
        let files = counted(mended.files.len(), "file");
        format!("Mended {} in {files}.", counted(changes, "place"))
    });
    Ok(mended.inspected)
}

fn counted(count: usize, one: &str) -> String {
    if count == 1 { format!("1 {one}") } else { format!("{count} {one}s") }
}

/// The new file is written beside the old one and takes its name when it is whole.
fn write_in_place(path: &Path, file: &MendedFile) -> Result<(), String> {
    let fault = |_| format!("{} could not be written, and is as it was.", path.display());
    // Where the name is a link inside the pack, the file it leads to is mended.
    let target = path.canonicalize().map_err(fault)?;
    let folder = target.parent().unwrap_or(Path::new("."));
    let mut fresh = tempfile::NamedTempFile::new_in(folder).map_err(fault)?;
    fresh.write_all(&file.bytes).map_err(fault)?;
    let rights = target.metadata().map_err(fault)?.permissions();
    fresh.as_file().set_permissions(rights).map_err(fault)?;
    fresh.as_file().sync_all().map_err(fault)?;
    fresh.persist(&target).map_err(|why| fault(why.error))?;
    Ok(())
}
