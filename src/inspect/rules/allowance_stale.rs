use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "allowance-stale",
    severity: Severity::Warning,
    asks: "What is allowed is still found.",
    why: "An allowance that outlives its reason would hide the same slip when it is made again.",
    source: "",
    bad: "allow: [{finding: slot-long, why: The club hour is longer.}]\n",
    good: "\
standing: ~
allow: [{finding: standing-missing, why: The sessions of this week are tried first.}]
",
    check: Check::Allowance,
};
