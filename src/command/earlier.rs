//! The earlier edition that `--since` names: a published folder, a pack's folder, or a git revision.

use std::collections::BTreeMap;
use std::path::Path;

use super::git::read_revision;
use crate::edition::{LARGEST_RECORD, PackOutline, RECORD, read_record};
use crate::read::Selection;
use crate::render::{Earlier, outline_languages};
use crate::source::{Folder, Source};

/// Finds the earlier edition and what it said, in each of the languages of the pack now.
///
/// # Errors
/// A sentence for the teacher.
pub fn find_earlier(since: &str, pack: &Path, languages: &[String]) -> Result<Earlier, String> {
    let folder = Path::new(since);
    if folder.is_dir() {
        let name = folder.file_name().map_or(since.into(), |name| name.to_string_lossy());
        if folder.join(RECORD).is_file() {
            return Ok(Earlier {
                when: name.into_owned(),
                outlines: read_records(folder, languages)?,
            });
        }
        let outlines = outline_source(&Folder::new(folder), languages, since)?;
        return Ok(Earlier { when: name.into_owned(), outlines });
    }
    let (source, when) = read_revision(since, pack)?;
    let outlines = outline_source(&source, languages, since)?;
    Ok(Earlier { when, outlines })
}

/// The records of a published folder: its own language at the top, each other in its folder.
fn read_records(
    folder: &Path,
    languages: &[String],
) -> Result<BTreeMap<String, PackOutline>, String> {
    let mut outlines = BTreeMap::new();
    let places = std::iter::once(folder.to_owned());
    let places = places.chain(languages.iter().skip(1).map(|language| folder.join(language)));
    for (place, language) in places.zip(languages) {
        let path = place.join(RECORD);
        let Ok(about) = path.metadata() else { continue };
        let too_large = || format!("{} is too large to be a record of ours.", path.display());
        if about.len() > LARGEST_RECORD {
            return Err(too_large());
        }
        let unread = |_| format!("{} can’t be read.", path.display());
        let bytes = std::fs::read(&path).map_err(unread)?;
        let outline = read_record(&bytes).map_err(|why| format!("{}: {why}", path.display()))?;
        outlines.insert(language.clone(), outline);
    }
    Ok(outlines)
}

/// What the sessions of a pack said then. Files that can't be read are left out, as if they were not there.
fn outline_source(
    source: &dyn Source,
    languages: &[String],
    since: &str,
) -> Result<BTreeMap<String, PackOutline>, String> {
    let inspected = crate::inspect(source, &Selection::All)?;
    if inspected.pack.sessions.is_empty() {
        return Err(format!(
            "There are no sessions in {since}. After --since name a published folder, a pack’s folder or a git revision."
        ));
    }
    outline_languages(&inspected.pack, languages).map_err(|fault| fault.to_string())
}
