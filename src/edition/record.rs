//! The record of an edition, written beside its pages as JSON, so that a later one can be compared with it.
//!
//! It is a file like any other: bounded in size, unknown kinds are passed over, and nothing in it is taken for markup.

use serde::{Deserialize, Serialize};

use super::kind::{Audience, CardOf};
use super::{Fact, Mark, Outline, PackOutline, PartOutline, Sheets, kind_of};

/// Its name in the folder of each language.
pub const RECORD: &str = "edition.json";

/// The form of the record that this program writes.
const FORM: u32 = 1;

/// A pack of thousands of sessions stays far below.
pub const LARGEST_RECORD: u64 = 256 * 1024 * 1024;

#[derive(Serialize, Deserialize)]
struct Record {
    homeground_edition: u32,
    language: String,
    for_families: bool,
    says: Vec<(String, String)>,
    sessions: Vec<SessionRecord>,
}

#[derive(Serialize, Deserialize)]
struct SessionRecord {
    id: String,
    title: String,
    #[serde(default, skip_serializing_if = "is_no")]
    retired: bool,
    marks: Vec<(String, String)>,
    says: Vec<(String, String)>,
    parts: Vec<PartRecord>,
}

#[derive(Serialize, Deserialize)]
struct PartRecord {
    kind: String,
    title: String,
    says: Vec<(String, String)>,
}

#[allow(clippy::trivially_copy_pass_by_ref, reason = "serde asks for a reference")]
const fn is_no(truth: &bool) -> bool {
    !*truth
}

/// The record as JSON; in the families’ folder without what only teachers see.
///
/// # Panics
/// Never: texts and lists can always be written as JSON.
pub fn write_record(pack: &PackOutline, is_for_families: bool) -> Vec<u8> {
    // A retired session is no page for families.
    let sessions = pack.sessions.iter().filter(|s| !(s.is_retired && is_for_families));
    let parts: Vec<_> = sessions.map(|s| write_session(s, is_for_families)).collect();
    write_parts(pack, is_for_families, &parts)
}

/// A session’s part of the record.
///
/// # Panics
/// Never: texts and lists can always be written as JSON.
pub fn write_session(session: &Outline, is_for_families: bool) -> Vec<u8> {
    let facts = |facts: &[Fact]| written(facts, is_for_families);
    let mark = |(sheets, mark): &(Sheets, Mark)| (sheets.name().to_owned(), mark.to_string());
    let part = |part: &PartOutline| PartRecord {
        kind: part.kind.clone(),
        title: part.title.clone(),
        says: facts(&part.facts),
    };
    let record = SessionRecord {
        id: session.id.clone(),
        title: session.title.clone(),
        retired: session.is_retired,
        marks: session.marks.iter().map(mark).collect(),
        says: facts(&session.facts),
        parts: session.parts.iter().map(part).collect(),
    };
    serde_json::to_vec(&record).expect("texts and lists can be written as JSON")
}

/// The record of what all sessions share, with the parts of the sessions, which are written already.
///
/// # Panics
/// Never: texts and lists can always be written as JSON.
pub fn write_parts(shared: &PackOutline, is_for_families: bool, parts: &[Vec<u8>]) -> Vec<u8> {
    let record = Record {
        homeground_edition: FORM,
        language: shared.language.clone(),
        for_families: is_for_families,
        says: written(&shared.facts, is_for_families),
        sessions: Vec::new(),
    };
    let mut whole = serde_json::to_vec(&record).expect("texts and lists can be written as JSON");
    // The list of sessions stands last: they go in before its end.
    whole.truncate(whole.len() - END.len());
    whole.extend(parts.join(&b','));
    whole.extend_from_slice(END);
    whole
}

/// How a record ends.
const END: &[u8] = b"]}";

fn written(facts: &[Fact], is_for_families: bool) -> Vec<(String, String)> {
    // What stands in the foot of every card is no secret, and tells whether a card is as it was.
    let is_hidden = |fact: &Fact| {
        is_for_families
            && fact.kind.audience == Audience::Reviewers
            && fact.kind.card != CardOf::Every
    };
    let shown = facts.iter().filter(|fact| !is_hidden(fact));
    shown.map(|fact| (fact.kind.key.to_owned(), fact.says.clone())).collect()
}

/// Reads a record.
///
/// # Errors
/// A sentence, where it is none of ours.
pub fn read_record(bytes: &[u8]) -> Result<PackOutline, String> {
    let record: Record = serde_json::from_slice(bytes)
        .map_err(|_| "It is no record of published pages.".to_owned())?;
    if record.homeground_edition != FORM {
        return Err("It was published by a newer homeground.".into());
    }
    Ok(PackOutline {
        language: record.language,
        is_for_families: record.for_families,
        facts: facts_of(record.says),
        sessions: record.sessions.into_iter().map(session_of).collect(),
    })
}

fn session_of(record: SessionRecord) -> Outline {
    let mark =
        |(sheets, mark): &(String, String)| Some((Sheets::named(sheets)?, Mark::read(mark)?));
    Outline {
        id: record.id,
        title: record.title,
        is_retired: record.retired,
        marks: record.marks.iter().filter_map(mark).collect(),
        facts: facts_of(record.says),
        parts: record
            .parts
            .into_iter()
            .map(|part| PartOutline {
                kind: part.kind,
                title: part.title,
                facts: facts_of(part.says),
            })
            .collect(),
    }
}

fn facts_of(says: Vec<(String, String)>) -> Vec<Fact> {
    let fact = |(key, says): (String, String)| Some(Fact { kind: kind_of(&key)?, says });
    says.into_iter().filter_map(fact).collect()
}
