//! The printed sheets of a session: which there are, what they are called and where they stand.

use crate::edition::Sheets;
use crate::pack::{Printing, SessionId};
use crate::read::print_choices::{RecordKind, Sides};
use crate::words::{Filling, Words};

/// A printed sheet of a session.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sheet {
    Cards,
    LargePrint,
    ClassSet,
    Booklet,
    Poster,
    HomeGuide,
    Record,
    ClassRecord,
    WeekRecord,
    Review,
}

impl Sheet {
    /// The sheets that are made, in the order they are offered.
    pub fn chosen(printing: &Printing) -> Vec<Self> {
        let record = |kind| printing.records.contains(&kind);
        let all = [
            (Self::Cards, true),
            (Self::LargePrint, printing.large_print),
            (Self::ClassSet, printing.copies.is_some()),
            (Self::Booklet, printing.booklet),
            (Self::Poster, printing.poster),
            (Self::HomeGuide, true),
            (Self::Record, record(RecordKind::Child)),
            (Self::ClassRecord, record(RecordKind::Class)),
            (Self::WeekRecord, record(RecordKind::Week)),
            (Self::Review, true),
        ];
        all.into_iter().filter_map(|(sheet, is_made)| is_made.then_some(sheet)).collect()
    }

    /// Its name in a path, and the end of the keys of its words.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Cards => "cards",
            Self::LargePrint => "large-print",
            Self::ClassSet => "class-set",
            Self::Booklet => "booklet",
            Self::Poster => "poster",
            Self::HomeGuide => "home-guide",
            Self::Record => "record",
            Self::ClassRecord => "record-class",
            Self::WeekRecord => "record-week",
            Self::Review => "review",
        }
    }

    /// The path of a session's sheet below the published folder.
    pub fn path(self, session: &SessionId) -> String {
        format!("print/{session}/{}.pdf", self.name())
    }

    /// The kind of sheet whose edition mark it carries: large cards, booklet and poster say what cards say.
    pub const fn of_edition(self) -> Sheets {
        match self {
            Self::Cards | Self::LargePrint | Self::ClassSet | Self::Booklet | Self::Poster => {
                Sheets::CARDS
            }
            Self::HomeGuide => Sheets::GUIDE,
            Self::Record | Self::ClassRecord | Self::WeekRecord => Sheets::RECORD,
            Self::Review => Sheets::REVIEW,
        }
    }

    /// The key of its name in the catalogue of words.
    pub fn word_key(self) -> String {
        format!("sheet-{}", self.name())
    }

    /// What is on it, and how it is to be printed where that matters.
    pub fn about(self, printing: &Printing, words: &Words) -> String {
        let about = |key: &str| words.say_with(key, &fillings_of(printing));
        let key = format!("sheet-{}-about", self.name());
        let has_cards = matches!(self, Self::Cards | Self::ClassSet);
        match printing.sides {
            Sides::LongEdge if has_cards => format!("{}; {}", about(&key), about("both-long")),
            Sides::ShortEdge if has_cards => format!("{}; {}", about(&key), about("both-short")),
            _ => about(&key),
        }
    }
}

/// The figures in the words about sheets.
fn fillings_of(printing: &Printing) -> [(&'static str, Filling<'static>); 2] {
    let cards = Filling::Text(printing.cards.word());
    [("cards", cards), ("copies", Filling::Count(printing.copies.unwrap_or(1)))]
}
