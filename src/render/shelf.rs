//! What was made before and can be had again. A renderer asks by a [`Key`] of everything that it would make
//! the files from; whoever keeps them (`publish`, in the folder published last) answers with their bytes.

use super::key::Key;

/// One file that was made: its bytes, and the ink of each page where it is a sheet.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Made {
    pub bytes: Vec<u8>,
    pub ink: Vec<f32>,
}

/// A file that stays as it was published, and need not even be read: the mark of its bytes, and the ink of each
/// page.
#[derive(Clone, Debug, PartialEq)]
pub struct Left {
    pub key: Key,
    pub ink: Vec<f32>,
}

/// Keeps what was made, and gives it back. Bytes that are not as they were made are never given.
pub trait Shelf: Sync {
    /// The files made under a key, in their order; `None` where one of them is lost or damaged.
    fn find(&self, key: Key) -> Option<Vec<Made>>;

    /// Takes note of files that were made.
    fn keep(&self, key: Key, made: &[Made]);

    /// Sees to it that the files made under a key are published at these paths, without anybody reading them;
    /// `None` where one of them is lost or damaged, or where there is nowhere to leave them.
    fn leave(&self, _key: Key, _paths: &[String]) -> Option<Vec<Left>> {
        None
    }

    /// A note that was made under a key, and is no file of its own.
    fn find_note(&self, _key: Key) -> Option<Vec<u8>> {
        None
    }

    /// Keeps a note.
    fn keep_note(&self, _key: Key, _note: &[u8]) {}
}

/// Finds what was made under a key, or makes it.
///
/// # Errors
/// Those of the making.
pub fn find_or_make<F>(
    shelf: Option<&dyn Shelf>,
    key: impl FnOnce() -> Key,
    make: impl FnOnce() -> Result<Vec<Made>, F>,
) -> Result<Vec<Made>, F> {
    let Some(shelf) = shelf else { return make() };
    let key = key();
    if let Some(made) = shelf.find(key) {
        return Ok(made);
    }
    let made = make()?;
    shelf.keep(key, &made);
    Ok(made)
}

/// Finds a note made under a key, or makes it.
pub fn find_or_note(shelf: Option<(&dyn Shelf, Key)>, make: impl FnOnce() -> Vec<u8>) -> Vec<u8> {
    let Some((shelf, key)) = shelf else { return make() };
    shelf.find_note(key).unwrap_or_else(|| {
        let note = make();
        shelf.keep_note(key, &note);
        note
    })
}
