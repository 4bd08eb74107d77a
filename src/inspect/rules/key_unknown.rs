use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "key-unknown",
    severity: Severity::Problem,
    asks: "Every key is one that a session has.",
    why: "What stands under a misspelt key would be left out: a caution under “saftey” never reaches \
          the child.",
    source: "",
    bad: "\
saftey:
  - Keep clear of the stairs.
",
    good: "\
safety:
  - Keep clear of the stairs.
",
    check: Check::Reading,
};
