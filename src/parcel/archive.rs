//! Files → a zip (PKWARE APPNOTE 6.3), the same bytes each time: one order, one date, no extra fields.

use std::io::{Cursor, Write};

use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, DateTime, ZipWriter};

use crate::quantity::Date;
use crate::render::Bundle;

/// The bytes of an archive.
pub type Packed = Vec<u8>;

/// Readable by all, writable by their owner.
const PERMISSIONS: u32 = 0o644;

/// Packs files in the order given. Those named first may be stored as they are.
///
/// # Panics
/// Where a name is none that a zip can hold, or the whole is over four gigabytes: our own slip.
pub fn pack_files(files: &[(String, &[u8], bool)], date: Option<Date>) -> Packed {
    let mut writer = ZipWriter::new(Cursor::new(Vec::new()));
    let date = dos_date(date);
    for (path, bytes, is_stored) in files {
        // What is packed already would only grow.
        let is_stored = *is_stored || is_packed(path);
        let method =
            if is_stored { CompressionMethod::Stored } else { CompressionMethod::Deflated };
        let options = SimpleFileOptions::default()
            .compression_method(method)
            .last_modified_time(date)
            .unix_permissions(PERMISSIONS);
        writer.start_file(path.as_str(), options).expect("paths of a bundle are plain names");
        writer.write_all(bytes).expect("memory takes what is written");
    }
    writer.finish().expect("memory takes what is written").into_inner()
}

/// Packs a bundle below one folder, so that unpacking leaves one thing and not hundreds.
pub fn pack_folder(bundle: &Bundle, folder: &str, date: Option<Date>) -> Packed {
    // The page to open comes first in lists that keep the order of the archive.
    let mut paths: Vec<&String> = bundle.keys().collect();
    paths.sort_by_key(|path| (path.as_str() != "index.html", path.contains('/'), path.as_str()));
    let files: Vec<_> = paths
        .into_iter()
        .map(|path| (format!("{folder}/{path}"), bundle[path].as_slice(), false))
        .collect();
    pack_files(&files, date)
}

fn is_packed(path: &str) -> bool {
    let path = path.to_lowercase();
    [".png", ".jpg", ".jpeg", ".woff2"].iter().any(|ending| path.ends_with(ending))
}

/// Midnight of a day; the first day that a zip knows where there is none.
fn dos_date(date: Option<Date>) -> DateTime {
    let (year, month, day) = date.map_or((1980, 1, 1), Date::parts);
    DateTime::from_date_and_time(year, month, day, 0, 0, 0).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_same_files_are_the_same_bytes() {
        let bundle = Bundle::from([
            ("index.html".to_owned(), b"<p>".to_vec()),
            ("a/b.png".to_owned(), vec![1, 2, 3]),
        ]);
        let once = pack_folder(&bundle, "pack", None);
        assert_eq!(once, pack_folder(&bundle, "pack", None));
        assert!(once.starts_with(b"PK\x03\x04"));
        let name = b"pack/index.html";
        assert_eq!(&once[30..30 + name.len()], name);
        // Extra field length of the first local header (APPNOTE 4.3.7).
        assert_eq!(&once[28..30], &[0, 0]);
    }
}
