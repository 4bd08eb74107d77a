use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "allowance-past",
    severity: Severity::Warning,
    asks: "An allowance with a last day is looked at again by then.",
    why: "What was put off until a day is forgotten unless somebody is told when the day has come.",
    source: "",
    bad: "allow: [{finding: slot-long, why: Until the new timetable., until: 2026-03-01}]\n",
    good: "\
standing: ~
allow: [{finding: standing-missing, why: Until the new timetable., until: 2026-09-01}]
",
    check: Check::Allowance,
};
