use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "merge-unfinished",
    severity: Severity::Problem,
    asks: "A file holds one version of itself.",
    why: "When two people change the same lines, both versions are left in the file with marks between them, until somebody chooses. Half of each would reach the families.",
    source: "",
    bad: "\
# whole file: games/example.yaml
title: Example session
<<<<<<< ours
minutes: 20
=======
minutes: 25
>>>>>>> theirs
",
    good: "\
minutes: 20
",
    check: Check::Reading,
};
