//! A mark of everything that a file is made from: the same mark means the same bytes. SHA-256 (FIPS 180-4).

use std::fmt;
use std::io;

use sha2::{Digest, Sha256};

/// 32 bytes; written as 64 figures and letters.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Key([u8; 32]);

impl Key {
    /// The mark of some bytes.
    pub fn of(bytes: &[u8]) -> Self {
        Self(Sha256::digest(bytes).into())
    }

    /// Reads one that was written; `None` where it is none.
    pub fn read(text: &str) -> Option<Self> {
        let figures: &[u8; 64] = text.as_bytes().try_into().ok()?;
        let mut bytes = [0; 32];
        for (byte, pair) in bytes.iter_mut().zip(figures.chunks_exact(2)) {
            *byte = value_of(pair[0])? << 4 | value_of(pair[1])?;
        }
        Some(Self(bytes))
    }
}

const FIGURES: &[u8; 16] = b"0123456789abcdef";

fn value_of(figure: u8) -> Option<u8> {
    match figure {
        b'0'..=b'9' => Some(figure - b'0'),
        b'a'..=b'f' => Some(figure - b'a' + 10),
        _ => None,
    }
}

impl fmt::Display for Key {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut figures = [0; 64];
        for (pair, byte) in figures.chunks_exact_mut(2).zip(self.0) {
            pair[0] = FIGURES[usize::from(byte >> 4)];
            pair[1] = FIGURES[usize::from(byte & 15)];
        }
        f.write_str(std::str::from_utf8(&figures).unwrap_or_default())
    }
}

impl fmt::Debug for Key {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, f)
    }
}

/// Gathers what a file is made from. Each thing goes in with its length, so that no two lists of things
/// run into the same bytes.
#[derive(Clone, Default)]
pub struct KeyMaker {
    digest: Sha256,
    room: Vec<u8>,
}

impl fmt::Debug for KeyMaker {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("KeyMaker").finish_non_exhaustive()
    }
}

impl KeyMaker {
    /// Adds some bytes.
    #[must_use]
    pub fn with(mut self, bytes: impl AsRef<[u8]>) -> Self {
        self.add(bytes.as_ref());
        self
    }

    /// Adds a value by all that its `Debug` shows, which grows with the type: nobody need remember a new
    /// field. Places in files show nothing there, so a line that moved is no change.
    #[must_use]
    pub fn with_all_of(mut self, value: &impl fmt::Debug) -> Self {
        let mut room = std::mem::take(&mut self.room);
        room.clear();
        // Writing to memory does not fail.
        let _ = io::Write::write_fmt(&mut room, format_args!("{value:?}"));
        self.add(&room);
        self.room = room;
        self
    }

    pub fn add(&mut self, bytes: &[u8]) {
        self.digest.update((bytes.len() as u64).to_le_bytes());
        self.digest.update(bytes);
    }

    pub fn finish(self) -> Key {
        Key(self.digest.finalize().into())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_key_is_read_as_it_is_written() {
        // FIPS 180-4, example of one block: SHA-256 of “abc”.
        let known = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
        assert_eq!(Key::of(b"abc").to_string(), known);
        assert_eq!(Key::read(known), Some(Key::of(b"abc")));
        for no_key in ["", "ba78", &known.replace('b', "g"), &format!("+{}", &known[1..])] {
            assert_eq!(Key::read(no_key), None);
        }
    }

    #[test]
    fn things_do_not_run_into_one_another() {
        let of = |one: &str, two: &str| KeyMaker::default().with(one).with(two).finish();
        assert_ne!(of("ab", "c"), of("a", "bc"));
        assert_eq!(of("ab", "c"), of("ab", "c"));
    }
}
