//! The reading plan of a session: how hard its running sentences are for the child who reads them.
//! Titles and key points are no sentences and are left out of the scores.

use super::reading::{CountedText, ReadingReport, count_text, sum_up};
use crate::pack::{Session, children_texts, plain_paragraphs};
use crate::place::{Place, Placed};

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
    /// Every text, titles and key points too.
    pub texts: Vec<TextReading>,
}

impl SessionReading {
    /// Whether there are words enough for a score to mean something.
    pub fn is_enough(&self) -> bool {
        self.whole.counts.words >= FEWEST_WORDS
    }
}

/// One text that a child reads, with each of its paragraphs counted once.
#[derive(Clone, Debug)]
pub struct TextReading {
    pub place: Place,
    pub paragraphs: Vec<String>,
    counted: Vec<CountedText>,
}

impl TextReading {
    /// How hard all of it is to read.
    pub fn report(&self) -> ReadingReport {
        sum_up(&self.counted)
    }

    /// The paragraphs that are sentences: they end with a stop.
    fn running(&self) -> impl Iterator<Item = &CountedText> {
        let is_sentence = |line: &str| {
            line.trim_end_matches(['”', '’', '"', ')']).ends_with(['.', '!', '?', '…'])
        };
        let both = self.paragraphs.iter().zip(&self.counted);
        both.filter(move |(line, _)| is_sentence(line)).map(|(_, counted)| counted)
    }
}

/// Judges the texts that a child reads, as English.
pub fn plan_session_reading(session: &Session) -> SessionReading {
    let texts: Vec<TextReading> = children_texts(session).iter().map(read_text).collect();
    let whole = sum_up(texts.iter().flat_map(TextReading::running));
    let reports = texts.iter().map(|text| (text.place, sum_up(text.running())));
    let judged = reports.filter(|(_, report)| report.counts.words >= FEWEST_OF_TEXT);
    let age = |report: &ReadingReport| report.reading_age.unwrap_or_default();
    let hardest = judged.max_by(|(_, one), (_, other)| age(one).total_cmp(&age(other)));
    SessionReading { whole, hardest, texts }
}

fn read_text(text: &Placed<&str>) -> TextReading {
    let paragraphs = plain_paragraphs(text);
    let counted = paragraphs.iter().map(|paragraph| count_text(paragraph)).collect();
    TextReading { place: text.place, paragraphs, counted }
}
