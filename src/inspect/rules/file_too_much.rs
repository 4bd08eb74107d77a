use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "file-too-much",
    severity: Severity::Problem,
    asks: "A file holds no more than one session can.",
    why: "A session is a few pages of text. A file of many megabytes, groups inside groups without \
          end or text that repeats itself over and over is something else under a wrong name, and \
          would stop the computer that reads it.",
    source: "",
    bad: "success: [[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[I land on a bent knee]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]\n",
    good: "success: [I land on a bent knee]\n",
    check: Check::Reading,
};
