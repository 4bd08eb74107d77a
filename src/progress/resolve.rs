//! What the words in a row mean in a pack: which session, part, fault, question and day.

use std::sync::Arc;

use crate::pack::{Fault, Session};
use crate::prose::{plain_line, plain_words};
use crate::quantity::{Date, Quantity};
use crate::read::nearest;

/// Words without case, marks and doubled spaces: what two spellings of the same have in common.
pub fn plain_key(text: &str) -> String {
    let kept: String = text
        .chars()
        .map(|c| if c.is_alphanumeric() || c == '/' { c } else { ' ' })
        .flat_map(char::to_lowercase)
        .collect();
    kept.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// The session of an id (whole, or its last piece) or of a title.
///
/// # Errors
/// What is wrong, with the nearest name.
pub fn resolve_session(text: &str, sessions: &[Arc<Session>]) -> Result<usize, String> {
    let asked = plain_key(text);
    let id = |session: &Session| plain_key(session.id.as_str());
    let names = |session: &Session| {
        let id = id(session);
        let last = id.rsplit('/').next().unwrap_or_default().to_owned();
        [id, last, plain_key(&plain_line(&session.title))]
    };
    let found: Vec<usize> =
        (0..sessions.len()).filter(|at| names(&sessions[*at]).contains(&asked)).collect();
    match found.as_slice() {
        [only] => Ok(*only),
        [] => {
            let titles = sessions.iter().map(|session| plain_line(&session.title));
            let ids = sessions.iter().map(|session| session.id.to_string());
            let names: Vec<String> = titles.chain(ids).collect();
            let last = |id: &String| id.rsplit('/').next().is_some_and(|last| is_near(text, last));
            let near = names.iter().rev().find(|name| last(name));
            Err(near.map_or_else(
                || no_such("session", text, &names[..sessions.len()]),
                |near| format!("there is no session “{text}”. Did you mean “{near}”?"),
            ))
        }
        _ => Err(format!("“{text}” may be several sessions. Write its whole id, with its folder.")),
    }
}

/// The measured part that is meant: by its title, its kind and number, or the only one there is.
///
/// # Errors
/// What is wrong, with the nearest title.
pub fn resolve_part(text: &str, session: &Session) -> Result<usize, String> {
    let measured = |at: &usize| session.parts[*at].measure.is_some();
    let all: Vec<usize> = (0..session.parts.len()).filter(measured).collect();
    if text.is_empty() {
        return match all.as_slice() {
            [only] => Ok(*only),
            [] => Err(format!(
                "nothing is measured in “{}”. Leave the marks out.",
                plain_line(&session.title)
            )),
            _ => Err("this session measures several parts. Write the title of the one.".into()),
        };
    }
    let asked = plain_key(text);
    let is_meant = |at: &usize| {
        let part = &session.parts[*at];
        let kind = plain_key(part.kind.key());
        let alone = part.of == 1 || all.len() == 1;
        asked == plain_key(&plain_line(&part.title))
            || asked == format!("{kind} {}", part.number)
            || alone && asked == kind
    };
    all.iter().copied().find(is_meant).ok_or_else(|| {
        let titles: Vec<String> =
            all.iter().map(|at| plain_line(&session.parts[*at].title)).collect();
        no_such("measured part", text, &titles)
    })
}

/// A common fault by its part and place there.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct FaultAt {
    pub part: usize,
    pub fault: usize,
}

impl FaultAt {
    pub fn of(self, session: &Session) -> &Fault {
        &session.parts[self.part].faults[self.fault]
    }
}

/// Every common fault of a session, in the order of its parts, as the helper’s card lists them.
pub fn faults_of(session: &Session) -> Vec<FaultAt> {
    let parts = session.parts.iter().enumerate();
    parts
        .flat_map(|(part, own)| (0..own.faults.len()).map(move |fault| FaultAt { part, fault }))
        .collect()
}

/// The fault of a number from 1, or of words: what was seen, or what is said to it.
///
/// # Errors
/// What is wrong, with the nearest words.
pub fn resolve_fault(text: &str, session: &Session) -> Result<FaultAt, String> {
    let all = faults_of(session);
    if let Ok(number) = text.parse::<usize>() {
        let found = number.checked_sub(1).and_then(|at| all.get(at));
        return found.copied().ok_or_else(|| {
            format!(
                "this session has the common faults 1 to {}. Write one of these numbers.",
                all.len()
            )
        });
    }
    let asked = plain_key(text);
    let words = |at: &FaultAt| {
        let fault = at.of(session);
        [&fault.see, &fault.say].map(|line| plain_key(&plain_line(line)))
    };
    let exact = all.iter().find(|at| words(at).contains(&asked));
    let inside =
        |at: &&FaultAt| asked.len() > 5 && words(at).iter().any(|own| own.contains(&asked));
    exact.or_else(|| all.iter().find(inside)).copied().ok_or_else(|| {
        let seen: Vec<String> = all.iter().map(|at| plain_line(&at.of(session).see)).collect();
        no_such("common fault", text, &seen)
    })
}

/// The review question of a number from 1, or of its words.
///
/// # Errors
/// What is wrong.
pub fn resolve_question(text: &str, session: &Session) -> Result<usize, String> {
    let bare = text.trim_start_matches(['q', 'Q']);
    if let Ok(number) = bare.parse::<usize>() {
        let count = session.review.len();
        return (1..=count).contains(&number).then(|| number - 1).ok_or_else(|| {
            format!(
                "this session has the review questions 1 to {count}. Write one of these numbers."
            )
        });
    }
    let asked = plain_key(text);
    let mut questions = session.review.iter();
    questions.position(|question| plain_key(&plain_words(&question.ask)) == asked).ok_or_else(
        || {
            let all: Vec<String> = session.review.iter().map(|q| plain_words(&q.ask)).collect();
            no_such("review question", text, &all)
        },
    )
}

/// Whether the teacher found an answer right; `None` where nothing is said yet.
///
/// # Errors
/// What is wrong.
pub fn resolve_right(text: &str) -> Result<Option<bool>, String> {
    match text.to_lowercase().as_str() {
        "" => Ok(None),
        "yes" | "y" | "true" | "1" | "right" | "✓" | "✔" => Ok(Some(true)),
        "no" | "n" | "false" | "0" | "wrong" | "✗" | "x" => Ok(Some(false)),
        _ => Err(format!("“{text}” is neither yes nor no. Write yes or no, or leave it empty.")),
    }
}

/// The day: year first, or day first where it can be nothing else (14/5/2027, 14.5.2027).
///
/// # Errors
/// What is wrong.
pub fn resolve_date(text: &str) -> Result<Date, String> {
    if text.is_empty() {
        return Err("there is no date. Write the day of the tries, year first: 2027-05-14.".into());
    }
    let pieces: Vec<&str> = text.split(['/', '.']).map(str::trim).collect();
    let turned = match pieces.as_slice() {
        [day, month, year] if year.len() == 4 => {
            let is_sure = text.contains('.') || day.parse::<u8>().is_ok_and(|day| day > 12);
            if !is_sure && month.parse::<u8>().is_ok_and(|month| month <= 12) && day != month {
                return Err(format!("“{text}” may be two days. Write the year first: 2027-05-14."));
            }
            Some(format!("{year}-{month:0>2}-{day:0>2}"))
        }
        _ => None,
    };
    Date::read_quantity(turned.as_deref().unwrap_or(text))
        .map_err(|fault| format!("{}. {}", fault.says, fault.way_out))
}

fn is_near(text: &str, name: &str) -> bool {
    nearest(text, &[name]).is_some()
}

/// “There is no session “x”. Did you mean “y”?”
fn no_such(what: &str, text: &str, names: &[String]) -> String {
    let names: Vec<&str> = names.iter().map(String::as_str).collect();
    match nearest(text, &names) {
        Some(near) => format!("there is no {what} “{text}”. Did you mean “{near}”?"),
        None if names.is_empty() => format!("there is no {what} “{text}”, nor any other."),
        None => format!("there is no {what} “{text}”. There are: {}.", names.join("; ")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_that_can_be_only_one() {
        for (text, day) in [
            ("2027-05-04", "2027-05-04"),
            ("14/5/2027", "2027-05-14"),
            ("4.5.2027", "2027-05-04"),
            ("5/5/2027", "2027-05-05"),
        ] {
            assert_eq!(resolve_date(text).unwrap().to_string(), day);
        }
        assert!(resolve_date("4/5/2027").unwrap_err().contains("two days"));
        assert!(resolve_date("").is_err() && resolve_date("soon").is_err());
    }

    #[test]
    fn yes_and_no() {
        assert_eq!(resolve_right("Yes"), Ok(Some(true)));
        assert_eq!(resolve_right("✗"), Ok(Some(false)));
        assert_eq!(resolve_right(""), Ok(None));
        assert!(resolve_right("perhaps").is_err());
    }
}
