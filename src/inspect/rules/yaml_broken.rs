use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "yaml-broken",
    severity: Severity::Problem,
    asks: "The marks of a file fit together.",
    why: "A quotation mark or bracket that is never closed, a tab, or a line that is moved in too far \
          makes the rest of the file mean something else.",
    source: "",
    bad: "summary: \"Hop along a line and hold still.\n",
    good: "summary: \"Hop along a line and hold still.\"\n",
    check: Check::Reading,
};
