use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

/// A folder or a locked file can’t be shown as text, so there is no example.
pub const RULE: Rule = Rule {
    code: "file-unreadable",
    severity: Severity::Problem,
    asks: "Every session file can be opened.",
    why: "A file that this computer may not open, or a folder whose name ends in “.yaml”, would be \
          left out of the pack without a word.",
    source: "",
    bad: "",
    good: "",
    check: Check::Reading,
};
