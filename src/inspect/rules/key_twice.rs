use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "key-twice",
    severity: Severity::Problem,
    asks: "A key stands once in its group.",
    why: "Of two lines with one key only one can count, and it may be the one you have just mended.",
    source: "",
    bad: "safety:\n  - Hop in bare feet.\nsafety:\n  - Keep clear of the stairs.\n",
    good: "safety:\n  - Hop in bare feet.\n  - Keep clear of the stairs.\n",
    check: Check::Reading,
};
