use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "key-missing",
    severity: Severity::Problem,
    asks: "What every session needs is there.",
    why: "A family chooses by title, summary, ages and minutes, and a part without “how” says nothing \
          to the child.",
    source: "",
    bad: "summary: ~\n",
    good: "summary: Hop along a line and hold still.\n",
    check: Check::Reading,
};
