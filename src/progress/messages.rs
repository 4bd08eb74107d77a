//! Messages from home → a table of marks, as if a teacher had typed them.
//!
//! In: the text of mails or chats with messages that a session’s page wrote, several in one file, quoted,
//! broken into other lines, with anything around them:
//!
//! ```text
//! {homeground 1 | K07 | athletics/brook-leap | sent 2027-05-11 18:05
//! | 2027-05-11 challenge 1: 124 cm, x, 131 cm
//! | answer 1: From the line to the heel
//! | check 568A}
//! ```
//!
//! Out: a [`Table`] a file. The latest message counts: what a family sent again for the same day and part,
//! or the same question, takes the place of what it sent before. A message whose code does not fit is not
//! read at all, since nobody knows which figure is wrong.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use regex::Regex;

use super::check_code::check_code;
use super::resolve::plain_key;
use super::table::{Row, Table, read_keep_date};
use crate::quantity::Date;

/// How a message begins, with or without its brace, and the number of its kind.
static BEGINNING: LazyLock<Regex> = LazyLock::new(|| {
    ready(r"(\{)?[> \t\r\n\x{a0}]*[Hh]omeground[> \t\r\n\x{a0}]+([0-9]+)[> \t\r\n\x{a0}]*\|")
});
static CHECK: LazyLock<Regex> = LazyLock::new(|| {
    ready(r"\|[> \t\r\n\x{a0}]*[Cc]heck[> \t\r\n\x{a0}]+([0-9A-Fa-f]{4})[> \t\r\n\x{a0}]*$")
});
/// A mark of quotation at the begin of a line.
static QUOTED: LazyLock<Regex> = LazyLock::new(|| ready(r"\n[> \t]*"));
static SENT: LazyLock<Regex> =
    LazyLock::new(|| ready(r"^sent ([0-9]{4}-[0-9]{2}-[0-9]{2} [0-9]{2}:[0-9]{2})$"));
static TRIES: LazyLock<Regex> =
    LazyLock::new(|| ready(r"^([0-9]{4}-[0-9]{2}-[0-9]{2}) ([^:]{1,40}): ?(.*)$"));
static ANSWER: LazyLock<Regex> = LazyLock::new(|| ready(r"^answer ([0-9]{1,3}): ?(.*)$"));

fn ready(pattern: &str) -> Regex {
    Regex::new(pattern).expect("our own patterns are sound")
}

/// The only kind of message there is so far.
const KIND: &str = "1";

/// One file of messages.
#[derive(Clone, Debug, Default)]
pub struct Letters {
    pub messages: Vec<Message>,
    /// What is no whole message, by its line.
    pub broken: Vec<(usize, String)>,
    pub keep_until: Option<Date>,
}

/// One message whose code fits.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Message {
    /// From 1, where it begins.
    pub line: usize,
    pub code: String,
    pub session: String,
    /// “2027-05-11 18:05”: sorts as time does.
    pub sent: String,
    pub says: Vec<Said>,
}

/// One thing that a message says, with its line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Said {
    pub line: usize,
    pub what: What,
}

#[derive(Clone, Debug, PartialEq, Eq)]
pub enum What {
    Tries { date: String, part: String, tries: Vec<String> },
    Answer { question: String, text: String },
    Strange(String),
}

/// Finds messages in a text; `None` where there is no trace of one.
///
/// # Errors
/// Where a line says until when the file is kept, and the date can’t be read.
pub fn read_messages(text: &str) -> Result<Option<Letters>, String> {
    let starts: Vec<_> = BEGINNING.captures_iter(text).collect();
    if starts.is_empty() {
        return Ok(None);
    }
    let mut letters = Letters { keep_until: read_keep_date(text)?, ..Letters::default() };
    for (at, start) in starts.iter().enumerate() {
        let whole = start.get(0).map_or(0..0, |found| found.range());
        let next =
            starts.get(at + 1).and_then(|next| next.get(0)).map_or(text.len(), |n| n.start());
        let line = line_at(text, whole.start + leading(&text[whole.clone()]));
        let has_brace = start.get(1).is_some();
        let kind = start.get(2).map_or("", |kind| kind.as_str());
        match read_message(&text[whole.start..next], line, has_brace, kind) {
            Ok(message) => letters.messages.push(message),
            Err(why) => letters.broken.push((line, why)),
        }
    }
    Ok(Some(letters))
}

fn leading(text: &str) -> usize {
    text.len() - text.trim_start_matches(|c: char| c.is_whitespace() || c == '>').len()
}

fn line_at(text: &str, at: usize) -> usize {
    text[..at].matches('\n').count() + 1
}

fn read_message(text: &str, line: usize, has_brace: bool, kind: &str) -> Result<Message, String> {
    if kind != KIND {
        return Err(format!(
            "this message is of kind {kind}, which a newer program writes. Get the newest one."
        ));
    }
    let cut_off = "this message is cut off: it begins with { and ends with }. Ask for it again.";
    let end = text.find('}').filter(|_| has_brace).ok_or(cut_off)?;
    let begin = text.find('{').map_or(0, |at| at + 1);
    let inside = text.get(begin..end).ok_or(cut_off)?;
    let check = CHECK.captures(inside).ok_or(cut_off)?;
    let counted = &inside[..check.get(0).map_or(0, |found| found.start())];
    if !check_code(counted).eq_ignore_ascii_case(&check[1]) {
        return Err("the check code of this message does not fit, so something in it was changed \
                    or lost. Nothing of it is read; ask for it again."
            .into());
    }
    Ok(message_of(counted, line))
}

/// The fields between bars. The first says what it is.
fn message_of(counted: &str, line: usize) -> Message {
    let mut message = Message {
        line,
        code: String::new(),
        session: String::new(),
        sent: String::new(),
        says: vec![],
    };
    let mut line = line;
    for (at, piece) in counted.split('|').enumerate() {
        let field = QUOTED.replace_all(piece, " ");
        let field = field.split_whitespace().collect::<Vec<_>>().join(" ");
        match at {
            0 => {}
            1 => message.code = field,
            2 => message.session = field,
            _ => match SENT.captures(&field) {
                Some(sent) => message.sent = sent[1].to_owned(),
                None => message.says.push(Said { line, what: what_of(&field) }),
            },
        }
        line += piece.matches('\n').count();
    }
    message
}

fn what_of(field: &str) -> What {
    if let Some(found) = TRIES.captures(field) {
        let tries = found[3].split(',').map(|mark| mark.trim().to_owned());
        return What::Tries {
            date: found[1].to_owned(),
            part: found[2].to_owned(),
            tries: tries.collect(),
        };
    }
    match ANSWER.captures(field) {
        Some(found) => What::Answer { question: found[1].to_owned(), text: found[2].to_owned() },
        None => What::Strange(field.to_owned()),
    }
}

/// What tells two sayings of one child apart: the same key again takes the place of the first.
type Key = (String, String, String);

fn key_of(message: &Message, what: &What) -> Option<Key> {
    let about = match what {
        What::Tries { date, part, .. } => format!("{date} {}", plain_key(part)),
        What::Answer { question, .. } => format!("answer {question}"),
        What::Strange(_) => return None,
    };
    Some((
        message.code.replace([' ', '-', '_'], "").to_lowercase(),
        plain_key(&message.session),
        about,
    ))
}

/// Leaves of everything that was said twice only what was sent last, over all files.
pub fn keep_latest(files: &mut [Letters]) {
    let mut latest: BTreeMap<Key, (String, usize, usize)> = BTreeMap::new();
    let spoken = |files: &[Letters]| -> Vec<(Key, (String, usize, usize))> {
        let mut all = Vec::new();
        for (file, letters) in files.iter().enumerate() {
            for (at, message) in letters.messages.iter().enumerate() {
                let keys = message.says.iter().filter_map(|said| key_of(message, &said.what));
                all.extend(keys.map(|key| (key, (message.sent.clone(), file, at))));
            }
        }
        all
    };
    for (key, sent) in spoken(files) {
        let known = latest.entry(key).or_insert_with(|| sent.clone());
        *known = sent.max(known.clone());
    }
    for (file, letters) in files.iter_mut().enumerate() {
        for (at, message) in letters.messages.iter_mut().enumerate() {
            let whole = message.clone();
            let is_last = |said: &Said| {
                key_of(&whole, &said.what).is_none_or(|key| {
                    latest.get(&key).is_some_and(|(_, f, m)| (*f, *m) == (file, at))
                })
            };
            message.says.retain(is_last);
        }
    }
}

/// What messages say that nothing can be made of, by its line.
pub fn strange_of(letters: &Letters) -> impl Iterator<Item = (usize, String)> + '_ {
    let said = letters.messages.iter().flat_map(|message| &message.says);
    let strange = said.filter_map(|said| match &said.what {
        What::Strange(field) => {
            Some((said.line, format!("“{field}” in this message says nothing that is known.")))
        }
        _ => None,
    });
    letters.broken.iter().cloned().chain(strange)
}

/// Messages as the table that the reader of entries knows.
pub fn table_of(letters: &Letters) -> Table {
    let rows = letters
        .messages
        .iter()
        .flat_map(|message| message.says.iter().filter_map(move |said| row_of(message, said)));
    let rows: Vec<Row> = rows.collect();
    let widest = rows.iter().map(|row| row.cells.len()).max().unwrap_or(0).max(FIRST_TRY + 1);
    let mut cells: Vec<String> =
        ["code", "session", "question", "answer", "date", "part"].map(str::to_owned).to_vec();
    cells.extend((FIRST_TRY..widest).map(|at| format!("attempt {}", at + 1 - FIRST_TRY)));
    Table { head: Row { number: 1, cells }, rows, keep_until: letters.keep_until }
}

/// The column of the first try.
const FIRST_TRY: usize = 6;

fn row_of(message: &Message, said: &Said) -> Option<Row> {
    let mut cells = vec![message.code.clone(), message.session.clone()];
    match &said.what {
        What::Tries { date, part, tries } => {
            cells.extend([String::new(), String::new(), date.clone(), part.clone()]);
            cells.extend(tries.iter().cloned());
        }
        What::Answer { question, text } => cells.extend([question.clone(), text.clone()]),
        What::Strange(_) => return None,
    }
    Some(Row { number: said.line, cells })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn message(fields: &str) -> String {
        let whole = format!("homeground 1 | {fields}");
        format!("{{{whole} | check {}}}", check_code(&whole))
    }

    fn rows(text: &str) -> Vec<(usize, Vec<String>)> {
        let mut letters = [read_messages(text).unwrap().unwrap()];
        keep_latest(&mut letters);
        table_of(&letters[0]).rows.into_iter().map(|row| (row.number, row.cells)).collect()
    }

    const ONE: &str =
        "K07 | athletics/leap | sent 2027-05-11 18:05 | 2027-05-11 challenge 1: 124 cm, , x";

    #[test]
    fn messages_are_found_in_quoted_mail() {
        let whole = message(ONE).replace("| 2027-05-11", "\n> | 2027-05-11");
        let text = format!("Hello!\n\n> {whole}\n> Best wishes {{}}\n");
        let found = rows(&text);
        assert_eq!(found.len(), 1);
        assert_eq!(found[0].0, 4);
        assert_eq!(
            found[0].1,
            ["K07", "athletics/leap", "", "", "2027-05-11", "challenge 1", "124 cm", "", "x"]
        );
    }

    #[test]
    fn the_latest_counts_and_what_is_broken_is_told() {
        let newer = ONE.replace("18:05", "18:09").replace("124", "142").replace("K07", "k 07");
        let text = format!("{}\n{}\n{}", message(&newer), message(ONE), message(ONE));
        assert_eq!(rows(&text)[0].1[6], "142 cm");
        assert_eq!(rows(&text).len(), 1);
        let broken = |text: &str| read_messages(text).unwrap().unwrap().broken[0].1.clone();
        assert!(broken(&message(ONE).replace("124", "142")).contains("check code"));
        assert!(broken(&message(ONE)[..60]).contains("cut off"));
        assert!(broken(&message(ONE)[1..]).contains("cut off"));
        assert!(broken(&message(ONE).replace("ground 1", "ground 2")).contains("newer"));
        assert!(read_messages("code,session\nK07,leap\n").unwrap().is_none());
    }
}
