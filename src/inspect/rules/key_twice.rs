use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "key-twice",
    severity: Severity::Problem,
    asks: "A key stands once in its group.",
    why: "Of two lines with one key only one can count, and it may be the one you have just mended.",
    source: "",
    bad: "\
safety:
  - Hop in bare feet.
safety:
  - Keep clear of the stairs.
",
    good: "\
safety:
  - Hop in bare feet.
  - Keep clear of the stairs.
",
    check: Check::Reading,
};
