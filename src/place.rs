//! Where a value stands in a teacher's file.
//!
//! Every value that is read keeps its [`Place`] through all later stages, so that a finding can show
//! the line. A place is small and `Copy`; the [`Files`] table turns it into a path, line and column.

use std::fmt;
use std::ops::Deref;
use std::sync::Arc;

/// A file of the pack, by its number in [`Files`]: a file of a lower number has a path that comes before. There may be
/// gaps, so that a file that is added later changes the number of no other.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct FileId(pub u32);

/// A stretch of bytes in one file: `start` inclusive, `end` exclusive.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Place {
    pub file: FileId,
    pub start: u32,
    pub end: u32,
}

/// Nothing but with `{:#?}`: what is made from a value does not depend on where it stood, and keys of what
/// was made are taken from `{:?}` (`render::key`).
impl fmt::Debug for FileId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if f.alternate() { write!(f, "file {}", self.0) } else { f.write_str("file") }
    }
}

/// As that of a [`FileId`].
impl fmt::Debug for Place {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if f.alternate() {
            write!(f, "file {}, {} to {}", self.file.0, self.start, self.end)
        } else {
            f.write_str("place")
        }
    }
}

impl Place {
    /// The very beginning of a file, for findings about the file as a whole.
    pub fn top_of(file: FileId) -> Self {
        Self { file, start: 0, end: 0 }
    }
}

/// A value and where it was written.
#[derive(Clone, Copy, Debug)]
pub struct Placed<T> {
    pub value: T,
    pub place: Place,
}

impl<T> Placed<T> {
    pub fn new(value: T, place: Place) -> Self {
        Self { value, place }
    }

    /// The same place with another value.
    pub fn map<U>(self, change: impl FnOnce(T) -> U) -> Placed<U> {
        Placed { value: change(self.value), place: self.place }
    }
}

impl<T> Deref for Placed<T> {
    type Target = T;
    fn deref(&self) -> &T {
        &self.value
    }
}

impl<T: fmt::Display> fmt::Display for Placed<T> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.value.fmt(f)
    }
}

/// One file as it was read: its path inside the pack (with `/`) and its text.
#[derive(Clone, Debug)]
pub struct FileText {
    pub path: String,
    /// Shared, so that thousands of files are quickly copied.
    pub text: Arc<str>,
    /// Where it stands in the pack of a neighbour, if it is that neighbour’s.
    pub lent: Option<Lent>,
}

/// Where a file of a neighbour’s pack stands there, and the folder that its pictures have in this pack.
#[derive(Clone, Debug)]
pub struct Lent {
    pub path: String,
    pub under: String,
}

/// Every file that was read, in the order of their numbers; those of neighbours come last.
#[derive(Clone, Debug, Default)]
pub struct Files {
    files: Vec<(FileId, FileText)>,
}

/// Line and column, both counted from 1; the column counts characters.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LineColumn {
    pub line: usize,
    pub column: usize,
}

impl Files {
    /// Adds a file and gives its id: the next free one.
    pub fn add(&mut self, path: String, text: impl Into<Arc<str>>) -> FileId {
        let next = self.files.last().map_or(0, |(last, _)| last.0 + 1);
        self.add_as(FileId(next), path, text);
        FileId(next)
    }

    /// Adds a file under an id that is higher than all there are.
    pub(crate) fn add_as(&mut self, id: FileId, path: String, text: impl Into<Arc<str>>) {
        assert!(self.files.last().is_none_or(|(last, _)| *last < id), "files come in order");
        self.files.push((id, FileText { path, text: text.into(), lent: None }));
    }

    /// Adds a file of a neighbour’s pack.
    pub(crate) fn add_lent(&mut self, path: String, lent: Lent) -> FileId {
        let id = self.add(path, "");
        let at = self.at(id);
        self.files[at].1.lent = Some(lent);
        id
    }

    /// Gives a file the text that was read for it.
    pub(crate) fn set_text(&mut self, id: FileId, text: impl Into<Arc<str>>) {
        let at = self.at(id);
        self.files[at].1.text = text.into();
    }

    pub fn get(&self, id: FileId) -> &FileText {
        &self.files[self.at(id)].1
    }

    /// The file of an id, where there is one.
    pub fn find(&self, id: FileId) -> Option<&FileText> {
        self.files.get(self.at(id)).filter(|(there, _)| *there == id).map(|(_, file)| file)
    }

    pub fn iter(&self) -> impl Iterator<Item = &FileText> {
        self.files.iter().map(|(_, file)| file)
    }

    /// Every file with its id.
    pub fn each(&self) -> impl Iterator<Item = (FileId, &FileText)> {
        self.files.iter().map(|(id, file)| (*id, file))
    }

    /// Where a file stands: at its number, where there are no gaps before it.
    fn at(&self, id: FileId) -> usize {
        let direct = id.0 as usize;
        match self.files.get(direct) {
            Some((there, _)) if *there == id => direct,
            _ => self.files.partition_point(|(other, _)| *other < id),
        }
    }

    /// The text of a place as it was written.
    pub fn text_of(&self, place: Place) -> &str {
        let text = &self.get(place.file).text;
        text.get(place.start as usize..place.end as usize).unwrap_or_default()
    }

    /// Line and column of the start of a place.
    pub fn line_column(&self, place: Place) -> LineColumn {
        let text = &self.get(place.file).text;
        let mut at = (place.start as usize).min(text.len());
        while !text.is_char_boundary(at) {
            at -= 1;
        }
        let before = &text[..at];
        let line_start = before.rfind('\n').map_or(0, |newline| newline + 1);
        LineColumn {
            line: before.bytes().filter(|byte| *byte == b'\n').count() + 1,
            column: before[line_start..].chars().count() + 1,
        }
    }

    /// The place of `words` inside a larger place, or the larger place where they can't be found
    /// (YAML escapes and folded lines can hide them).
    pub fn place_within(&self, place: Place, words: &str) -> Place {
        match self.text_of(place).find(words) {
            Some(offset) if !words.is_empty() => {
                let start = place.start + u32::try_from(offset).unwrap_or(0);
                Place { start, end: start + u32::try_from(words.len()).unwrap_or(0), ..place }
            }
            _ => place,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_count_characters_not_bytes() {
        let mut files = Files::default();
        let file = files.add("a.yaml".into(), "é: 1\nfüße: 2\n");
        let start = u32::try_from("é: 1\nfüße: ".len()).unwrap();
        let place = Place { file, start, end: start + 1 };
        assert_eq!(files.line_column(place), LineColumn { line: 2, column: 7 });
        assert_eq!(files.text_of(place), "2");
    }
}
