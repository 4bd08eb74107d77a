//! The kinds of facts: what each is called, on which sheets and cards it is printed, whom its change concerns.
//! This table is the one place that says so; `tests/outside/check_editions.py` holds it against the text of
//! the PDFs.

use super::sheets::Sheets;

/// How a fact is compared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shape {
    /// One short value: “30 s became 40 s”.
    One,
    /// A text, shown before and after.
    Text,
    /// One of several: entries come and go.
    List,
}

/// Whom a change concerns.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Audience {
    /// Families and teachers.
    Families,
    /// Whoever reviews sessions.
    Reviewers,
    /// Nobody is told: it follows from other facts, or shows in a drawing. It counts for the marks.
    Nobody,
}

/// The card that a fact stands on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum CardOf {
    /// The first card, with what to know before.
    Opening,
    /// The card of its own part.
    Part,
    Floor,
    /// The card for whoever helps, or the back of the part’s card.
    Helper,
    Adaptations,
    /// The foot of every card.
    Every,
}

/// One kind of fact.
#[derive(Debug, PartialEq)]
pub struct Kind {
    /// Its name in the record.
    pub key: &'static str,
    /// The label of its name in the catalogue of words.
    pub label: &'static str,
    pub shape: Shape,
    pub audience: Audience,
    pub sheets: Sheets,
    pub card: CardOf,
}

const CARDS: Sheets = Sheets::CARDS;
const GUIDE: Sheets = Sheets::GUIDE;
const BOTH: Sheets = Sheets::CARDS.and(Sheets::GUIDE);
const MARKED: Sheets = Sheets::CARDS.and(Sheets::RECORD);
const NONE: Sheets = Sheets::NONE;

const fn kind(
    (key, label): (&'static str, &'static str),
    shape: Shape,
    audience: Audience,
    sheets: Sheets,
    card: CardOf,
) -> Kind {
    Kind { key, label, shape, audience, sheets, card }
}

/// Every kind, those of sessions before those of parts.
pub static KINDS: [Kind; 89] = {
    use Audience::{Families, Nobody, Reviewers};
    use CardOf::{Adaptations, Every, Floor, Helper, Opening, Part};
    use Shape::{List, One, Text};
    [
        kind(("title", "says-title"), One, Families, Sheets::ALL, Every),
        kind(("summary", "says-summary"), Text, Families, BOTH, Opening),
        kind(("ages", "fact-ages"), One, Families, GUIDE, Opening),
        kind(("minutes", "fact-minutes"), One, Families, GUIDE, Opening),
        kind(("activity", "front-activity"), One, Reviewers, NONE, Opening),
        kind(("space", "fact-space"), One, Families, GUIDE, Opening),
        kind(("headroom", "fact-headroom"), One, Families, GUIDE, Opening),
        kind(("where", "fact-place"), One, Families, GUIDE, Opening),
        kind(("surface", "says-surface"), One, Families, GUIDE, Opening),
        kind(("effort-mostly", "fact-effort"), One, Nobody, GUIDE, Opening),
        kind(("objectives", "teachers-objectives"), List, Reviewers, NONE, Opening),
        kind(("success", "success"), List, Families, MARKED, Opening),
        kind(("curriculum", "teachers-codes"), List, Reviewers, NONE, Opening),
        kind(("things", "things"), List, Families, BOTH, Opening),
        kind(("things-limits", "says-limits"), List, Families, GUIDE, Opening),
        kind(("things-instead", "says-instead"), List, Families, GUIDE, Opening),
        kind(("things-note", "says-note"), List, Families, GUIDE, Opening),
        kind(("things-for", "says-things-for"), List, Reviewers, NONE, Opening),
        kind(("things-together", "things-together"), List, Nobody, GUIDE, Opening),
        kind(("cautions", "cautions"), List, Families, BOTH, Opening),
        kind(("usual-cautions", "cautions"), List, Families, GUIDE, Opening),
        kind(("contact", "foot-contact"), One, Families, GUIDE, Opening),
        kind(("school", "says-school"), One, Reviewers, Sheets::PAGES, Opening),
        kind(("shared", "cautions"), One, Nobody, GUIDE, Opening),
        kind(("letterhead", "says-school"), One, Nobody, Sheets::PAGES, Opening),
        kind(("adult-nearby", "adult-nearby"), One, Families, GUIDE, Opening),
        kind(("adult-helping", "adult-helping"), One, Families, GUIDE, Opening),
        kind(("adult-why", "adult"), Text, Families, GUIDE, Opening),
        kind(("film", "film"), Text, Families, GUIDE, Opening),
        kind(("film-link", "film"), One, Families, BOTH, Opening),
        kind(("address", "scan-page"), One, Nobody, BOTH, Opening),
        kind(("pictures", "says-picture"), List, Families, CARDS, Opening),
        kind(("picture-bytes", "says-picture"), List, Nobody, CARDS, Opening),
        kind(("licence", "licence"), One, Reviewers, Sheets::ALL, Every),
        kind(("credit", "credit"), One, Reviewers, Sheets::ALL, Every),
        kind(("adapt-space", "adapt-space"), Text, Families, CARDS, Adaptations),
        kind(("adapt-task", "adapt-task"), Text, Families, CARDS, Adaptations),
        kind(("adapt-equipment", "adapt-equipment"), Text, Families, CARDS, Adaptations),
        kind(("adapt-people", "adapt-people"), Text, Families, CARDS, Adaptations),
        kind(("other-slots", "slots"), List, Nobody, CARDS, Adaptations),
        kind(("floor", "plan"), List, Nobody, CARDS, Floor),
        kind(("questions", "review"), List, Families, Sheets::REVIEW, Opening),
        kind(("question-kinds", "review"), List, Reviewers, Sheets::REVIEW, Opening),
        kind(("answers", "review-answers"), List, Reviewers, Sheets::REVIEW, Opening),
        kind(("review-help", "review"), One, Nobody, Sheets::REVIEW, Opening),
        kind(("standing", "teachers-standing"), One, Reviewers, NONE, Opening),
        kind(("standing-by", "says-by"), One, Reviewers, NONE, Opening),
        kind(("standing-on", "date"), One, Reviewers, NONE, Opening),
        kind(("look-again", "says-look-again"), One, Reviewers, NONE, Opening),
        kind(("standing-changed", "teachers-changed"), List, Reviewers, NONE, Opening),
        // Of parts.
        kind(("part-title", "says-title"), One, Families, BOTH, Part),
        kind(("record-title", "says-title"), One, Nobody, Sheets::RECORD, Part),
        kind(("part-name", "says-title"), One, Nobody, BOTH, Part),
        kind(("part-start", "fact-time"), One, Nobody, GUIDE, Part),
        kind(("part-total", "fact-time"), One, Nobody, BOTH, Part),
        kind(("time", "fact-time"), One, Families, BOTH, Part),
        kind(("explain", "says-explain"), One, Families, CARDS, Part),
        kind(("set-up", "says-set-up"), One, Families, CARDS, Part),
        kind(("work", "says-work"), One, Families, CARDS, Part),
        kind(("rest", "says-rest"), One, Families, CARDS, Part),
        kind(("rounds", "says-rounds"), One, Families, CARDS, Part),
        kind(("recover", "says-recover"), One, Families, CARDS, Part),
        kind(("part-effort", "says-effort"), One, Families, BOTH, Part),
        kind(("part-adult", "adult"), One, Families, CARDS, Part),
        kind(("landing-zone", "landing-zone"), Text, Families, CARDS, Part),
        kind(("stop-and-collect", "stop-and-collect"), Text, Families, CARDS, Part),
        kind(("how", "says-how"), Text, Families, CARDS, Part),
        kind(("key-points", "says-key-point"), List, Families, CARDS, Part),
        kind(("measure", "how-measured"), One, Families, MARKED, Part),
        kind(("attempts", "says-attempts"), One, Families, MARKED, Part),
        kind(("points", "marks-points"), One, Families, MARKED, Part),
        kind(("criteria", "record-look-for"), List, Families, MARKED, Part),
        kind(("easier", "easier"), Text, Families, CARDS, Part),
        kind(("harder", "harder"), Text, Families, CARDS, Part),
        kind(("faults", "faults"), List, Families, CARDS, Helper),
        kind(("part-pictures", "says-picture"), List, Families, CARDS, Part),
        kind(("part-picture-bytes", "says-picture"), List, Nobody, CARDS, Part),
        kind(("figure-words", "says-picture"), List, Families, CARDS, Part),
        kind(("figure", "says-picture"), List, Nobody, BOTH, Part),
        kind(("figure-numbers", "says-picture"), List, Nobody, CARDS, Part),
        kind(("part-floor", "plan"), One, Families, NONE, Part),
        kind(("movements", "says-movements"), One, Reviewers, NONE, Part),
        kind(("task", "teachers-task"), One, Reviewers, NONE, Part),
        kind(("versions", "says-version"), List, Reviewers, NONE, Part),
        kind(("flight", "says-flight"), One, Reviewers, NONE, Part),
        kind(("like", "says-like"), One, Reviewers, NONE, Part),
        kind(("step", "says-step"), One, Reviewers, NONE, Part),
        kind(("reference", "says-reference"), One, Reviewers, NONE, Part),
        kind(("lengths", "says-lengths"), One, Reviewers, NONE, Part),
    ]
};

/// The kind of a name in a record.
pub fn kind_of(key: &str) -> Option<&'static Kind> {
    KINDS.iter().find(|kind| kind.key == key)
}
