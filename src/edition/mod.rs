//! What a session says and prints, fact by fact, so that two editions of it can be told apart.
//!
//! A resolved session and its plans become an [`Outline`]: a list of [`Fact`]s, each of a [`Kind`] that says on
//! which sheets it is printed and whom its change concerns. From the facts of a sheet comes its edition
//! [`Mark`], the four characters in its foot; from two outlines come the [`Changes`] in words. An outline is
//! written beside the published pages (`edition.json`), so that a later run can be compared with it.
//! Everything here is pure.

mod compare;
mod kind;
mod mark;
mod outline;
mod outline_part;
mod record;
mod reworded;
mod sheets;
mod stale;

pub use compare::{Change, Changes, Happened, PartRef, SessionChange, SessionRef, compare_packs};
pub use kind::{Audience, CardOf, KINDS, Kind, Shape, kind_of};
pub use mark::{ALPHABET, Mark};
pub use outline::{outline_pack, outline_session, outline_shared};
pub use record::{LARGEST_RECORD, RECORD, read_record, write_parts, write_record, write_session};
pub use reworded::{Piece, is_small_correction, mark_words, shorten};
pub use sheets::Sheets;
pub use stale::{StaleCard, StaleSheet};

/// One thing that a session says.
#[derive(Clone, Debug, PartialEq)]
pub struct Fact {
    pub kind: &'static Kind,
    /// In the words of its language, with nothing left of the marks of CommonMark.
    pub says: String,
}

/// The facts of one part.
#[derive(Clone, Debug, PartialEq)]
pub struct PartOutline {
    /// `warm-up`, `technique` …
    pub kind: String,
    pub title: String,
    pub facts: Vec<Fact>,
}

/// The facts of one session.
#[derive(Clone, Debug, PartialEq)]
pub struct Outline {
    pub id: String,
    pub title: String,
    pub is_retired: bool,
    pub facts: Vec<Fact>,
    pub parts: Vec<PartOutline>,
    /// The mark of each sheet that is printed of it.
    pub marks: Vec<(Sheets, Mark)>,
}

/// The facts of a whole pack in one language.
#[derive(Clone, Debug, PartialEq)]
pub struct PackOutline {
    pub language: String,
    /// What only teachers see was left out of it.
    pub is_for_families: bool,
    /// What every session shares.
    pub facts: Vec<Fact>,
    /// In the order of their ids.
    pub sessions: Vec<Outline>,
}

impl Outline {
    /// The mark of the sheets of a kind; nothing where none are printed.
    pub fn mark_of(&self, sheets: Sheets) -> Option<Mark> {
        self.marks.iter().find(|(of, _)| *of == sheets).map(|(_, mark)| *mark)
    }
}
