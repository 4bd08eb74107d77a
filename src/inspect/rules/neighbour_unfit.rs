use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "neighbour-unfit",
    severity: Severity::Problem,
    asks: "A pack that this one draws on is in a folder set aside in it, or right beside it.",
    why: "Every teacher who gets the pack must have the neighbour’s sessions too, and no pack may reach into the rest of a computer.",
    source: "",
    bad: "\
# file: pack.yaml
draws_on: [{name: saltmarsh, folder: ../../elsewhere}]
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
