use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

/// A link between files can’t be shown as text, so there is no example.
pub const RULE: Rule = Rule {
    code: "link-leaves-pack",
    severity: Severity::Problem,
    asks: "The pack’s files lie in the pack itself.",
    why: "A link to a file elsewhere on one computer breaks on every other, and could carry a file \
          to families that was never meant for them.",
    source: "",
    bad: "",
    good: "",
    check: Check::Reading,
};
