use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

/// Bytes that are no text can’t be shown as text, so there is no example.
pub const RULE: Rule = Rule {
    code: "file-not-text",
    severity: Severity::Problem,
    asks: "Session files are saved as plain UTF-8 text.",
    why: "A word processor’s file, or text saved in an old encoding, loses its accents and quotation \
          marks, or can’t be read at all.",
    source: "",
    bad: "",
    good: "",
    check: Check::Reading,
};
