//! Files of marks → entries: tables that a teacher made and messages that families sent, in any order.

use super::entries::{Entries, EntryReader};
use super::messages::{Letters, keep_latest, read_messages};
use super::table::{read_letters, read_table};
use crate::pack::Pack;

/// Reads every file, each with its name. Of what messages say twice the latest counts, over all files.
///
/// # Errors
/// A sentence for the teacher, where a file can’t be used at all.
pub fn read_files(files: &[(String, Vec<u8>)], pack: &Pack) -> Result<Entries, String> {
    let mut reader = EntryReader::new(pack);
    let (mut names, mut letters) = (Vec::new(), Vec::<Letters>::new());
    for (name, bytes) in files {
        let found = read_messages(&read_letters(bytes)).map_err(|why| format!("{name}: {why}"))?;
        if let Some(found) = found {
            names.push(name);
            letters.push(found);
        } else {
            let table = read_table(bytes).map_err(|why| format!("{name}: {why}"))?;
            reader.read_file(name, table)?;
        }
    }
    keep_latest(&mut letters);
    for (name, letters) in names.into_iter().zip(&letters) {
        reader.read_letters(name, letters)?;
    }
    Ok(reader.entries)
}
