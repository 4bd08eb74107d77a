use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "allowance-unfit",
    severity: Severity::Problem,
    asks: "Only findings that can stay without harm are allowed, by their code.",
    why: "What can’t be read, what contradicts itself and what is about safety is mended; a reason in a file \
          does not soften a hard floor.",
    source: "",
    bad: "allow: [{finding: landing-zone-missing, why: The garden is long.}]\n",
    good: "\
standing: ~
allow: [{finding: standing-missing, why: The sessions of this week are tried first.}]
",
    check: Check::Allowance,
};
