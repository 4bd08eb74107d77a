//! The tables by which the page’s script reads marks and codes: the library’s own, written as JSON into the
//! script when it is published, so that nothing of them is written twice.

use std::collections::BTreeMap;

use serde::Serialize;

use crate::plan::marks::{Refusal, STANDINGS, Spelling, Standing};
use crate::progress::check_code::{BEGIN, LEFT_OUT, POLYNOMIAL};
use crate::progress::code::{CODE_LINES, CodeLine, PERSONAL_WORDS};
use crate::progress::words::LONGEST;

/// Where the tables stand in the script.
const PLACE: &str = "\"{rules}\"";

/// The script they are written into.
pub(super) const SCRIPT: &str = "static/marks-reading.js";

#[derive(Serialize)]
struct Rules {
    #[serde(flatten)]
    spelling: Spelling,
    standings: [Standing; 3],
    codes: [CodeLine; 7],
    personal: &'static str,
    check: Check,
    /// Which words of the page a family hears for a refusal.
    hear: BTreeMap<&'static str, &'static str>,
    /// Letters of an answer.
    longest: usize,
}

#[derive(Serialize)]
struct Check {
    left_out: &'static str,
    polynomial: u16,
    begin: u16,
}

/// Fills the tables into the script.
pub(super) fn fill_rules(script: &[u8]) -> Vec<u8> {
    String::from_utf8_lossy(script).replace(PLACE, &write_rules()).into_bytes()
}

fn write_rules() -> String {
    let rules = Rules {
        spelling: Spelling::of_marks(),
        standings: STANDINGS,
        codes: CODE_LINES,
        personal: PERSONAL_WORDS,
        check: Check { left_out: LEFT_OUT, polynomial: POLYNOMIAL, begin: BEGIN },
        hear: Refusal::ALL.map(|why| (why.key(), heard(why))).into(),
        longest: LONGEST,
    };
    let json = serde_json::to_string(&rules).expect("plain tables are JSON");
    let script = share_pieces(&json);
    script.chars().fold(String::new(), |text, letter| text + &visible(letter))
}

/// JSON in which pieces that come again and again are named: `((p0, p1) => ({ … "^" + p0 … }))("…", "…")`.
fn share_pieces(json: &str) -> String {
    let pieces = Spelling::PIECES;
    let names: Vec<String> = (0..pieces.len()).map(|at| format!("p{at}")).collect();
    let named = pieces.iter().zip(&names);
    let short = named
        .fold(json.to_owned(), |json, (piece, name)| json.replace(piece, &format!("\"+{name}+\"")));
    let given: Vec<String> = pieces.iter().map(|piece| format!("\"{piece}\"")).collect();
    format!("(({})=>({short}))({})", names.join(","), given.join(","))
}

/// Signs that nobody sees are written as numbers: a script must not look other than it is.
fn visible(letter: char) -> String {
    let is_seen =
        letter.is_ascii() || letter.is_alphanumeric() || matches!(letter, '’' | '−' | '–' | '—');
    if is_seen { letter.to_string() } else { format!("\\u{:04x}", u32::from(letter)) }
}

/// Families hear fewer kinds of refusal than teachers.
const fn heard(why: Refusal) -> &'static str {
    match why {
        Refusal::Empty | Refusal::NoNumber | Refusal::Negative | Refusal::Comma => "number",
        Refusal::WrongUnit | Refusal::NoTimeHere => "unit",
        Refusal::MetresOrCentimetres | Refusal::DoubtfulMinutes => "doubt",
        Refusal::NoClock | Refusal::TooManySeconds => "seconds",
        Refusal::NotWhole => "whole",
        Refusal::TooLarge => "large",
    }
}
