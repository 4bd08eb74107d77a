//! The JSON Schema (draft 2020-12) of every kind of file, so that an editor completes and checks as a teacher
//! types. Input: the [shapes](crate::read::shape) that the readers themselves give; output: one document a kind.
//!
//! A schema sees keys, words, forms and figures of one file. What holds between values (the parts add up to the
//! slot) or between files (the thing is in the shared list) is for `inspect`.
//!
//! Source: JSON Schema Core and Validation, draft 2020-12 (json-schema.org).

mod kinds;
mod translated;
mod write;

pub use kinds::{FileKind, KINDS, find_kind, group_of};

use serde_json::Value;

/// The dialect that the schemas are written in.
pub const DIALECT: &str = "https://json-schema.org/draft/2020-12/schema";

/// The schema of a kind of file, as a document of its own.
pub fn write_schema(kind: &FileKind) -> Value {
    kind.write()
}

/// The same as text, with a line end.
pub fn schema_text(kind: &FileKind) -> String {
    let mut text = serde_json::to_string_pretty(&write_schema(kind))
        .expect("text, numbers and lists are always JSON");
    text.push('\n');
    text
}

#[cfg(test)]
mod tests;
