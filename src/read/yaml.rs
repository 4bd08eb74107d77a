//! One file's bytes → its tree of values, or a finding that a teacher can act on.
//!
//! Size, depth and the number of values are bounded, and an anchor can't be repeated without end, so
//! that no file can exhaust the computer that reads it.

use serde_saphyr::budget::BudgetBreach;
use serde_saphyr::{DuplicateKeyPolicy, Error, Options};

use super::node::{Node, Raw, Value};
use super::plain_tree::read_plain_tree;
use super::slips::slip_at;
use crate::finding::Finding;
use crate::place::{FileId, Place};

/// No session comes near this; a larger file is something else under a wrong name.
pub(crate) const LARGEST_FILE: u64 = 1024 * 1024;

const DEEPEST: usize = 32;

fn options() -> Options {
    let mut options = serde_saphyr::options! {
        duplicate_keys: DuplicateKeyPolicy::Error,
        with_snippet: false,
        emit_comments: false,
    };
    options.budget = serde_saphyr::budget! {
        max_depth: DEEPEST,
        max_events: 200_000,
        max_nodes: 100_000,
        max_aliases: 200,
        max_anchors: 200,
    };
    options.alias_limits.max_total_replayed_events = 20_000;
    options.alias_limits.max_replay_stack_depth = 8;
    options
}

/// Why a file's text can't be had, and what of it can be shown beside the finding.
#[derive(Debug)]
pub(crate) struct Unread {
    pub finding: Box<Finding>,
    pub shown: String,
}

/// The text of a file: UTF-8 without a NUL; a byte-order mark is left off.
pub(crate) fn read_text(bytes: Vec<u8>, file: FileId) -> Result<String, Unread> {
    if bytes.starts_with(b"\xff\xfe") || bytes.starts_with(b"\xfe\xff") {
        return Err(not_text(&[], 0, file, "This file is saved as UTF-16, not as UTF-8."));
    }
    if let Some(at) = bytes.iter().position(|byte| *byte == 0) {
        return Err(not_text(&bytes, at, file, "Here stands a NUL, a character that no text has."));
    }
    match String::from_utf8(bytes) {
        Ok(text) => Ok(text.strip_prefix('\u{feff}').map(str::to_owned).unwrap_or(text)),
        Err(fault) => {
            let at = fault.utf8_error().valid_up_to();
            Err(not_text(
                fault.as_bytes(),
                at,
                file,
                "From here on this file is not plain UTF-8 text.",
            ))
        }
    }
}

/// Shows the file as far as the end of the line at fault, with a mark for what is no text.
fn not_text(bytes: &[u8], at: usize, file: FileId, says: &str) -> Unread {
    let line_end =
        bytes[at..].iter().position(|byte| *byte == b'\n').map_or(bytes.len(), |n| at + n);
    let before = String::from_utf8_lossy(&bytes[..at]);
    let rest = String::from_utf8_lossy(&bytes[at..line_end]);
    let start = u32::try_from(before.len()).unwrap_or(0);
    let place = Place { file, start, end: start };
    let way_out = "Save it again as “UTF-8” from your editor’s Save As, then try once more.";
    let finding = Finding::problem("file-not-text", place, says, way_out);
    Unread { finding: Box::new(finding), shown: format!("{before}{rest}") }
}

/// Reads the tree, or says what stands in the way.
pub(crate) fn read_tree(text: &str, file: FileId) -> Result<Node, Box<Finding>> {
    if text.lines().all(|line| line.trim().is_empty() || line.trim_start().starts_with('#')) {
        return Err(Box::new(Finding::problem(
            "file-empty",
            Place::top_of(file),
            "There is nothing in this file yet.",
            "Begin with “title:”, or make a starter with: homeground draft \"TITLE\".",
        )));
    }
    if let Some(fault) = unfinished_merge(text, file) {
        return Err(Box::new(fault));
    }
    let tree = match read_plain_tree(text, file) {
        Some(tree) => tree,
        None => read_any_tree(text, file)?,
    };
    match tree.value {
        Value::Fields(_) => Ok(tree),
        _ => Err(Box::new(Finding::problem(
            "yaml-broken",
            tree.place,
            "This file does not begin with a key and a colon, so it can’t be a session or a shared list.",
            "Begin with “title: …”, or make a starter with: homeground draft \"TITLE\".",
        ))),
    }
}

/// Reads whatever YAML can say, and says what stands in the way.
pub(super) fn read_any_tree(text: &str, file: FileId) -> Result<Node, Box<Finding>> {
    serde_saphyr::from_str_with_options::<Raw>(text, options())
        .map(|raw| raw.into_node(file, text))
        .map_err(|fault| Box::new(explain(&fault, text, file)))
}

/// Two versions that were put together and left side by side: the marks begin their lines.
fn unfinished_merge(text: &str, file: FileId) -> Option<Finding> {
    let is_mark = |line: &str| ["<<<<<<< ", ">>>>>>> "].iter().any(|mark| line.starts_with(mark));
    let mut start = 0;
    for line in text.split_inclusive('\n') {
        if is_mark(line) {
            let at = u32::try_from(start).ok()?;
            let length = u32::try_from(line.trim_end().len()).ok()?;
            return Some(Finding::problem(
                "merge-unfinished",
                Place { file, start: at, end: at + length },
                "Two people changed the same lines, and both versions stand here, one below the other.",
                "Keep what is right of the two, and take out the lines that begin with <<<<<<<, ======= and >>>>>>>.",
            ));
        }
        start += line.len();
    }
    None
}

/// Puts the YAML package's error into the words of someone who writes sessions.
fn explain(fault: &Error, text: &str, file: FileId) -> Finding {
    let place = place_of(fault, text, file);
    match fault.without_snippet() {
        Error::DuplicateMappingKey { key, .. } => {
            let name = key.as_deref().unwrap_or("this key");
            Finding::problem(
                "key-twice",
                place,
                format!("“{name}” stands twice in the same group, and only one can count."),
                "Keep one of the two, or make a list of both under one key.",
            )
        }
        Error::Budget { breach, .. } => explain_budget(breach, place),
        Error::AliasReplayCounterOverflow { .. }
        | Error::AliasReplayLimitExceeded { .. }
        | Error::AliasExpansionLimitExceeded { .. }
        | Error::AliasReplayStackDepthExceeded { .. }
        | Error::RecursiveReferencesRequireWeakTypes { .. } => {
            too_much(place, "A part of this file repeats itself (with & and *) far too often.")
        }
        Error::UnknownAnchor { .. } => Finding::problem(
            "yaml-broken",
            place,
            "A word beginning with * points at something that is not in this file.",
            "Put the text in quotation marks if the star belongs to it: \"*like this*\".",
        ),
        Error::MultipleDocuments { .. } => Finding::problem(
            "yaml-broken",
            place,
            "A line of three dashes splits this file into two.",
            "Keep one session in a file: take the line --- out, or make two files.",
        ),
        other => {
            let place = tab_near(text, place).unwrap_or(place);
            let open =
                open_above(text, place, other.to_string().contains("illegal placement of ':'"));
            if let Some(open) = open {
                return explain_syntax("flow", &line_at(text, open), open);
            }
            if let Some((says, way_out)) = slip_at(text, place) {
                return Finding::problem("yaml-broken", place, says, way_out);
            }
            explain_wording(&other.to_string(), &line_at(text, place), place)
        }
    }
}

fn explain_budget(breach: &BudgetBreach, place: Place) -> Finding {
    match breach {
        BudgetBreach::Depth { .. } => too_much(
            place,
            "Here groups stand inside groups inside groups, deeper than any session needs.",
        ),
        BudgetBreach::Aliases { .. } | BudgetBreach::Anchors { .. } => {
            too_much(place, "A part of this file repeats itself (with & and *) far too often.")
        }
        _ => too_much(place, "This file holds far more than one session can."),
    }
}

fn too_much(place: Place, says: &str) -> Finding {
    Finding::problem(
        "file-too-much",
        place,
        says,
        "Check that this is a session file; write the repeated things out, or split the file.",
    )
}

/// Limits that the package reports only in words.
fn explain_wording(fault: &str, line: &str, place: Place) -> Finding {
    if fault.contains("alias") {
        too_much(place, "A part of this file repeats itself (with & and *) far too often.")
    } else if fault.contains("recursion limit") {
        too_much(
            place,
            "Here groups stand inside groups inside groups, deeper than any session needs.",
        )
    } else {
        explain_syntax(fault, line, place)
    }
}

/// The commonest slips have a look of their own; everything else gets the general advice.
fn explain_syntax(fault: &str, line: &str, place: Place) -> Finding {
    let fault = fault.to_lowercase();
    let indent: String = line.chars().take_while(|c| c.is_whitespace()).collect();
    let (says, way_out) = if indent.contains('\t') || fault.contains("tab") {
        (
            "This line is moved in with a tab.",
            "Use spaces at the start of a line, two for each step in.",
        )
    } else if has_second_colon(line) {
        (
            "There is a colon with a space after it inside the text, so the line reads as two keys.",
            "Put the text in quotation marks, or begin it on the next line after “|”.",
        )
    } else if fault.contains("quot") {
        (
            "A quotation mark is opened here and never closed, or closed too early.",
            "Close it at the end of the text; inside \"…\" write a quotation mark as \\\".",
        )
    } else if fault.contains("illegal placement of ':'") {
        (
            "A colon stands here where none can, mostly because a [ or { or quotation mark above is not closed.",
            "Look at the lines just above, and close what was opened.",
        )
    } else if fault.contains("flow") || fault.contains("bracket") || fault.contains("brace") {
        (
            "A [ or { is opened here and not closed, or a comma is missing between two entries.",
            "Close it with ] or }, and put a comma between the entries.",
        )
    } else if fault.contains("block") || fault.contains("indent") || fault.contains("mapping") {
        (
            "This line does not line up with the lines around it.",
            "Start keys of the same group in the same column, and move what belongs to a key two spaces in.",
        )
    } else {
        (
            "This line can’t be read: the marks in it (: - [ ] { } # & * \" ') don’t fit together.",
            "Put the text in quotation marks, or begin it on the next line after “|”.",
        )
    };
    Finding::problem("yaml-broken", place, says, way_out)
}

/// `how: Jump: then land` — a second “: ” on a line that is not quoted.
fn has_second_colon(line: &str) -> bool {
    line.split_once(": ").is_some_and(|(key, rest)| {
        let rest = rest.trim_start();
        !key.contains(['{', '['])
            && rest.contains(": ")
            && !rest.starts_with(['"', '\'', '{', '[', '|', '>'])
    })
}

/// The bracket that was opened on the line before and not closed, where a new entry of a list begins at the place, or a
/// key that none is looked for: no bracket goes on over one.
fn open_above(text: &str, place: Place, is_before_colon: bool) -> Option<Place> {
    let at = (place.start as usize).min(text.len());
    let line = text[..at].rfind('\n').map_or(0, |newline| newline + 1);
    if !is_before_colon && !text[line..].trim_start_matches(' ').starts_with("- ") {
        return None;
    }
    let above = text[..line].trim_end();
    let start = above.rfind('\n').map_or(0, |newline| newline + 1);
    let mut open = Vec::new();
    let written = above[start..].split(" #").next().unwrap_or_default();
    for (index, letter) in written.char_indices() {
        match letter {
            '[' | '{' => open.push(start + index),
            ']' | '}' => {
                open.pop();
            }
            '#' | '"' | '\'' => return None,
            _ => {}
        }
    }
    let start = u32::try_from(*open.first()?).ok()?;
    Some(Place { start, end: start + 1, ..place })
}

/// The tab that moves in the line at a place, or the line after it: the package may stop before it.
fn tab_near(text: &str, place: Place) -> Option<Place> {
    let at = (place.start as usize).min(text.len());
    let mut start = text[..at].rfind('\n').map_or(0, |newline| newline + 1);
    for line in text[start..].split_inclusive('\n').take(2) {
        let indent = line.len() - line.trim_start_matches([' ', '\t']).len();
        if let Some(tab) = line[..indent].find('\t') {
            let start = u32::try_from(start + tab).ok()?;
            return Some(Place { start, end: start + 1, ..place });
        }
        start += line.len();
    }
    None
}

fn line_at(text: &str, place: Place) -> String {
    let at = (place.start as usize).min(text.len());
    let start = text[..at].rfind('\n').map_or(0, |newline| newline + 1);
    text[start..].lines().next().unwrap_or_default().to_owned()
}

/// The place of the error; the package's line and column where it gives no byte offset.
fn place_of(fault: &Error, text: &str, file: FileId) -> Place {
    let Some(location) = fault.location() else { return Place::top_of(file) };
    let by_line = || {
        let line = usize::try_from(location.line()).unwrap_or(1).max(1);
        let column = usize::try_from(location.column()).unwrap_or(1).max(1);
        let start: usize = text.split_inclusive('\n').take(line - 1).map(str::len).sum();
        let rest = text.get(start..).unwrap_or_default();
        start + rest.chars().take(column - 1).map(char::len_utf8).sum::<usize>()
    };
    let start = location
        .span()
        .byte_offset()
        .and_then(|at| usize::try_from(at).ok())
        .unwrap_or_else(by_line);
    let mut start = start.min(text.len());
    while !text.is_char_boundary(start) {
        start -= 1;
    }
    let start = u32::try_from(start).unwrap_or(0);
    Place { file, start, end: start }
}
