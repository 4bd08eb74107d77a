use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "translation-too-much",
    severity: Severity::Problem,
    asks: "A translation holds only texts that its original has.",
    why: "Times, floors and counts are said once, in the original: said again they could differ, and a text without a place would never be shown.",
    source: "",
    bad: concat!(
        "# whole file: games/example.fr.yaml\ntranslates: 2026-03-01\nminutes: 20\n",
        include_str!("../sound/session.fr.yaml")
    ),
    good: concat!(
        "# whole file: games/example.fr.yaml\ntranslates: 2026-03-01\n",
        include_str!("../sound/session.fr.yaml")
    ),
    check: Check::Reading,
};
