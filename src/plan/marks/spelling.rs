//! How a mark is written: the one source from which this library reads marks and from which the script of
//! a session’s page is given its tables, so that a family hears the same verdict at home as the teacher.
//!
//! Each unit has lines, a pattern and what follows where it fits; the first that fits decides. A pattern
//! with one group has a number in it, one with two has minutes and seconds. Patterns keep to what the crate
//! `regex` and browsers understand alike. Out: [`Spelling`], as data; `reading` runs it.

use serde::Serialize;

use super::refusal::Refusal;
use super::rule::MarkUnit;

/// What follows where a pattern fits.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(untagged)]
pub enum Then {
    /// A number of a unit of this size, in millimetres, thousandths of a second, or things counted.
    Size(u32),
    Refuse(Refusal),
}

/// A pattern and what follows.
pub type Line = (String, Then);

/// Everything there is to know of how marks are written.
#[derive(Clone, Debug, Serialize)]
pub struct Spelling {
    /// Letters that families type, and what each stands for, in the same order.
    pub letters: [&'static str; 2],
    /// What is replaced in a mark from a family, and by what: unseen signs, a decimal comma.
    pub folds: [[&'static str; 2]; 2],
    /// Spaces around a mark.
    pub trim: &'static str,
    /// An attempt without a mark.
    pub no_mark: &'static str,
    /// The lines of each unit, in the order of [`MarkUnit::ALL`].
    pub units: [Vec<Line>; 6],
    /// The largest mark, in steps: far beyond any, and every sum of marks stays within 64 bits.
    pub most: u32,
}

/// Digits, decimal marks and spaces as they stand on keyboards in the languages of our labels (Unicode
/// CLDR, numbering systems arab and arabext).
const LETTERS: [&str; 2] =
    ["٠١٢٣٤٥٦٧٨٩۰۱۲۳۴۵۶۷۸۹٫،\u{a0}\u{2009}\u{202f}\t\n\r", "01234567890123456789.,      "];

/// Marks of direction and joining, which come along when text is pasted; then a comma between digits,
/// where there is one comma and no point: “1,47 m”.
const FOLDS: [[&str; 2]; 2] = [
    ["[\u{61c}\u{200b}-\u{200f}\u{202a}-\u{202e}\u{2060}-\u{2069}\u{feff}]", ""],
    ["^([^,.]*),([0-9][^,.]*)$", "$1.$2"],
];

const TRIM: &str = "^[ \t\n\r]+|[ \t\n\r]+$";

/// What stands on a sheet for an attempt without a mark: x for a foul or a miss (also the letter that looks
/// like it on a Ukrainian keyboard), a dash for one that was passed. Common practice of field events.
const NO_MARK: &str = "^(?:x|х|✗|×|-|–|—|foul|miss|no mark|nm|no throw|no jump)$";

/// Words of units as people write them, also in the languages of our labels, with their size.
const LENGTHS: [(&str, u32); 3] = [
    ("mm|мм|مم|ملی میٹر", 1),
    ("cm|centimetres?|centimeters?|см|سم|سینٹی میٹر", 10),
    ("m|metres?|meters?|м|م|متر|أمتار|میٹر", 1_000),
];
const MINUTES: &str = "min|mins|minutes?|mun|хв|دقيقة|دقائق|دقيقتان|منٹ";
const SECONDS: &str = "s|secs?|seconds?|eil|с|сек|ثانية|ثوان|ثوانٍ|ثواني|ثانيتان|سیکنڈ";

const MINUTE: u32 = MarkUnit::Minute.size();
const SECOND: u32 = MarkUnit::Second.size();

/// More digits than any mark has, few enough that no product leaves its type.
const WHOLE: &str = "[0-9]{1,9}";
const NUMBER: &str = "[0-9]{1,9}(?:[.][0-9]{1,9})?";

impl Spelling {
    /// Pieces that many patterns share, the longer ones first; they are written once where room matters.
    pub const PIECES: [&str; 4] = [SECONDS, MINUTES, NUMBER, WHOLE];

    /// The whole of it.
    pub fn of_marks() -> Self {
        Self {
            letters: LETTERS,
            folds: FOLDS,
            trim: TRIM,
            no_mark: NO_MARK,
            units: MarkUnit::ALL.map(lines_of),
            most: 1_000_000_000,
        }
    }
}

fn lines_of(unit: MarkUnit) -> Vec<Line> {
    let refuse = |pattern: &str, why| (pattern.to_owned(), Then::Refuse(why));
    let mut lines = vec![
        refuse("^$", Refusal::Empty),
        refuse("^[-−]", Refusal::Negative),
        refuse(&format!("^(?:{WHOLE}:)?{WHOLE},{WHOLE}(?:[^0-9,.]|$)"), Refusal::Comma),
    ];
    lines.extend(match unit {
        MarkUnit::Centimetre | MarkUnit::Metre => lengths(unit),
        MarkUnit::Second | MarkUnit::Minute => times(unit),
        MarkUnit::Count | MarkUnit::Points => wholes(unit),
    });
    lines.push(refuse(&format!("^{NUMBER} *[^0-9. ]"), Refusal::WrongUnit));
    lines.push(refuse("", Refusal::NoNumber));
    lines
}

fn number(words: &str, size: u32) -> Line {
    let word = if words.is_empty() { String::new() } else { format!(" *(?:{words})") };
    (format!("^({NUMBER}){word}$"), Then::Size(size))
}

fn no_time() -> Line {
    let pattern = format!(":|^{NUMBER} *(?:{MINUTES})[0-9. ]");
    (pattern, Then::Refuse(Refusal::NoTimeHere))
}

fn lengths(unit: MarkUnit) -> Vec<Line> {
    let mut lines = Vec::new();
    if unit == MarkUnit::Centimetre {
        // No tape shows hundredths of a centimetre: these are metres, most likely.
        let pattern = format!("^{WHOLE}[.][0-9]{{2,9}}$");
        lines.push((pattern, Then::Refuse(Refusal::MetresOrCentimetres)));
    }
    lines.push(number("", unit.size()));
    lines.extend(LENGTHS.map(|(words, size)| number(words, size)));
    lines.push(no_time());
    lines
}

/// After a colon the seconds have two digits: 1:5 may be 1:05 or 1:50.
fn times(unit: MarkUnit) -> Vec<Line> {
    let refuse = |pattern: String, why| (pattern, Then::Refuse(why));
    let part = "(?:[.][0-9]{1,9})?";
    let any = format!(" *(?:{SECONDS}|{MINUTES})?$");
    let own = match unit {
        MarkUnit::Minute => refuse(format!("^{NUMBER}$"), Refusal::DoubtfulMinutes),
        _ => number("", SECOND),
    };
    vec![
        (format!("^({WHOLE}):([0-5][0-9]{part}){any}"), Then::Size(SECOND)),
        refuse(format!("^{WHOLE}:[6-9][0-9]{part}{any}"), Refusal::TooManySeconds),
        refuse(":".into(), Refusal::NoClock),
        (
            format!("^({WHOLE}) *(?:{MINUTES}) *([0-5]?[0-9]{part}) *(?:{SECONDS})?$"),
            Then::Size(SECOND),
        ),
        refuse(
            format!("^{WHOLE} *(?:{MINUTES}) *{NUMBER} *(?:{SECONDS})?$"),
            Refusal::TooManySeconds,
        ),
        refuse(format!("^{NUMBER} *(?:{MINUTES})[0-9. ]"), Refusal::NoClock),
        refuse(format!("^{WHOLE}[.][0-9]{{1,9}} *(?:{MINUTES})$"), Refusal::DoubtfulMinutes),
        number(MINUTES, MINUTE),
        number(SECONDS, SECOND),
        own,
    ]
}

fn wholes(unit: MarkUnit) -> Vec<Line> {
    let mut lines = vec![number("", 1), no_time()];
    if unit == MarkUnit::Points {
        lines.push(number("points?", 1));
    }
    lines
}
