//! The reading plan of a session: how hard its running sentences are for the child who reads them.
//! Titles and key points are no sentences and are left out of the scores.

use super::reading::{ReadingReport, plan_reading};
use crate::pack::{Session, children_texts, plain_paragraphs};
use crate::place::Place;

/// With fewer words than this in running sentences a score says nothing: our own choice.
const FEWEST_WORDS: u32 = 100;

/// A text is named as the hardest where it has at least so many words.
const FEWEST_OF_TEXT: u32 = 20;

/// How hard a session is to read.
#[derive(Clone, Debug)]
pub struct SessionReading {
    pub whole: ReadingReport,
    /// The text with the highest reading age, and where it stands.
    pub hardest: Option<(Place, ReadingReport)>,
}

impl SessionReading {
    /// Whether there are words enough for a score to mean something.
    pub fn is_enough(&self) -> bool {
        self.whole.counts.words >= FEWEST_WORDS
    }
}

/// Judges the texts that a child reads, as English.
pub fn plan_session_reading(session: &Session) -> SessionReading {
    let texts = running_texts(session);
    let whole = plan_reading(&lines_of(texts.iter().flat_map(|(_, text)| text)));
    let reports = texts.iter().map(|(place, lines)| (*place, plan_reading(&lines_of(lines))));
    let judged = reports.filter(|(_, report)| report.counts.words >= FEWEST_OF_TEXT);
    let age = |report: &ReadingReport| report.reading_age.unwrap_or_default();
    let hardest = judged.max_by(|(_, one), (_, other)| age(one).total_cmp(&age(other)));
    SessionReading { whole, hardest }
}

/// The texts with their paragraphs that are sentences: they end with a stop.
fn running_texts(session: &Session) -> Vec<(Place, Vec<String>)> {
    let is_sentence =
        |line: &String| line.trim_end_matches(['”', '’', '"', ')']).ends_with(['.', '!', '?', '…']);
    children_texts(session)
        .into_iter()
        .map(|text| {
            let lines = plain_paragraphs(&text).into_iter().filter(is_sentence).collect();
            (text.place, lines)
        })
        .collect()
}

fn lines_of<'t>(lines: impl IntoIterator<Item = &'t String>) -> Vec<&'t str> {
    lines.into_iter().map(String::as_str).collect()
}
