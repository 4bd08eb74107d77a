//! What was made before and can be had again. A renderer asks by a [`Key`] of everything that it would make
//! the files from; whoever keeps them (`publish`, in the folder published last) answers with their bytes.

use super::key::Key;

/// One file that was made: its bytes, and the ink of each page where it is a sheet.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Made {
    pub bytes: Vec<u8>,
    pub ink: Vec<f32>,
}

/// Keeps what was made, and gives it back. Bytes that are not as they were made are never given.
pub trait Shelf: Sync {
    /// The files made under a key, in their order; `None` where one of them is lost or damaged.
    fn find(&self, key: Key) -> Option<Vec<Made>>;

    /// Takes note of files that were made.
    fn keep(&self, key: Key, made: &[Made]);
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
