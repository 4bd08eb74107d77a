use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "borrowed-unknown",
    severity: Severity::Problem,
    asks: "A borrowed session is in the neighbour’s pack.",
    why: "A session that is not there can’t be shown; the neighbour may have renamed or retired it.",
    source: "",
    bad: "\
# whole file: games/borrowed.yaml
borrows: saltmarsh/games/sluice-gate
",
    good: "\
# file: pack.yaml
draws_on: [{name: saltmarsh, folder: _neighbours/saltmarsh}]
# whole file: _neighbours/saltmarsh/pack.yaml
title: PE on the marsh
licence: CC-BY-4.0
",
    check: Check::Reading,
};
