use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "file-empty",
    severity: Severity::Problem,
    asks: "A session file has something in it.",
    why: "An empty file is mostly one that was begun and forgotten. Families would miss the session \
          without anybody noticing.",
    source: "",
    bad: "\
# whole file: games/tag.yaml
# To be written next week.
",
    good: "\
# file: games/tag.yaml
title: Shadow tag
",
    check: Check::Reading,
};
