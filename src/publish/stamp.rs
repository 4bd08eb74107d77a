//! What a file system says of a file, to tell without reading it whether anybody has changed it.
//!
//! A stamp holds the time of the last change of the file or of what is said of it (`ctime`, POSIX.1-2017 4.9),
//! which no program can set back as it can the time of writing; with its number, length and time of writing it
//! tells whether the bytes are those that were once known. Two rules make it sure: a stamp is taken only when the
//! clock has gone on since that change, so that any later one has another time; and where the file system counts
//! whole seconds, or is of a kind that has no such time, there is no stamp, and the file is read.

use std::fmt;
use std::fs::Metadata;
use std::time::Duration;

/// The clocks of file systems go on at least so often (Linux: 1 to 10 ms).
pub(super) const TICK: Duration = Duration::from_millis(20);

/// Times are nanoseconds since 1970.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stamp {
    device: u64,
    number: u64,
    length: u64,
    written: i128,
    changed: i128,
}

impl Stamp {
    /// The stamp of a file, where one can be had.
    #[cfg(unix)]
    pub(super) fn of(about: &Metadata) -> Option<Self> {
        use std::os::unix::fs::MetadataExt;
        let time = |seconds: i64, rest: i64| i128::from(seconds) * 1_000_000_000 + i128::from(rest);
        let counts_seconds = about.ctime_nsec() == 0;
        (about.is_file() && !counts_seconds).then(|| Self {
            device: about.dev(),
            number: about.ino(),
            length: about.len(),
            written: time(about.mtime(), about.mtime_nsec()),
            changed: time(about.ctime(), about.ctime_nsec()),
        })
    }

    #[cfg(not(unix))]
    pub(super) fn of(_: &Metadata) -> Option<Self> {
        None
    }

    /// Whether it is the same file, written at the same time. A name more or less changes the other time only.
    pub(super) fn is_as_written(&self, other: &Self) -> bool {
        Self { changed: 0, ..*self } == Self { changed: 0, ..*other }
    }

    /// Reads one that was written; `None` where it is none.
    pub(super) fn read(text: &str) -> Option<Self> {
        let mut parts = text.split(':');
        let stamp = Self {
            device: parts.next()?.parse().ok()?,
            number: parts.next()?.parse().ok()?,
            length: parts.next()?.parse().ok()?,
            written: parts.next()?.parse().ok()?,
            changed: parts.next()?.parse().ok()?,
        };
        parts.next().is_none().then_some(stamp)
    }
}

impl fmt::Display for Stamp {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { device, number, length, written, changed } = self;
        write!(f, "{device}:{number}:{length}:{written}:{changed}")
    }
}

#[cfg(all(test, unix))]
mod tests {
    use super::*;
    use std::fs;

    fn stamp_of(path: &std::path::Path) -> Stamp {
        let about = fs::symlink_metadata(path).expect("it has just been written");
        // A file on a whole second is as likely as one in a thousand million.
        Stamp::of(&about).expect("this disk counts less than seconds")
    }

    #[test]
    fn bytes_changed_under_the_same_length_and_time_are_seen() {
        let room = tempfile::tempdir().unwrap();
        let path = room.path().join("a.html");
        fs::write(&path, "one").unwrap();
        std::thread::sleep(TICK);
        let before = stamp_of(&path);
        let written = fs::metadata(&path).unwrap().modified().unwrap();
        fs::write(&path, "two").unwrap();
        fs::File::options().write(true).open(&path).unwrap().set_modified(written).unwrap();
        let after = stamp_of(&path);
        assert!(after.is_as_written(&before) && after != before);
        assert_eq!(Stamp::read(&before.to_string()), Some(before));
        assert_eq!(Stamp::read("1:2:3:4"), None);
    }

    #[test]
    fn another_name_is_no_other_writing() {
        let room = tempfile::tempdir().unwrap();
        let (one, two) = (room.path().join("a"), room.path().join("b"));
        fs::write(&one, "one").unwrap();
        let before = stamp_of(&one);
        fs::hard_link(&one, &two).unwrap();
        assert!(stamp_of(&two).is_as_written(&before));
    }
}
