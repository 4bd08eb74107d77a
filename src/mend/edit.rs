//! An edit: a stretch of a text and what is to stand there.

use crate::read::node::{Node, Value};

/// Replaces the bytes from `start` to `end`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Edit {
    pub start: usize,
    pub end: usize,
    pub new: String,
    /// What it does, as a sentence.
    pub says: String,
}

/// The text with all edits made; they are in the order of their places and don’t overlap.
pub(super) fn apply(text: &str, edits: &[Edit]) -> String {
    let mut edited = String::with_capacity(text.len());
    let mut at = 0;
    for edit in edits {
        edited.push_str(&text[at..edit.start]);
        edited.push_str(&edit.new);
        at = edit.end;
    }
    edited.push_str(&text[at..]);
    edited
}

/// Where what a node holds ends. Reading gives the start of brackets alone, so their end is looked for behind the
/// last thing in them.
pub(super) fn value_end(text: &str, node: &Node) -> usize {
    let (start, end) = (node.place.start as usize, node.place.end as usize);
    let last = match &node.value {
        Value::List(entries) => entries.last(),
        Value::Fields(fields) => fields.last().map(|field| &field.node),
        Value::Scalar(_) | Value::Empty => return end,
    };
    let closing = match text.as_bytes().get(start) {
        Some(b'[') => ']',
        Some(b'{') => '}',
        _ => return end,
    };
    let inner = last.map_or(end, |last| value_end(text, last));
    text.get(inner..).and_then(|rest| rest.find(closing)).map_or(end, |at| inner + at + 1)
}

/// The line of a byte, from 1.
pub(super) fn line_of(text: &str, at: usize) -> usize {
    text[..at].matches('\n').count() + 1
}

/// Where the line of a byte begins.
pub(super) fn line_start(text: &str, at: usize) -> usize {
    text[..at].rfind('\n').map_or(0, |newline| newline + 1)
}
