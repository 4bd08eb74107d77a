use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;

pub const RULE: Rule = Rule {
    code: "translation-missing",
    severity: Severity::Warning,
    asks: "A translation has every text of its original.",
    why: "A family would meet another language in the middle of a session.",
    source: "",
    bad: "# whole file: games/example.fr.yaml\ntranslates: 2026-03-01\ntitle: Saute et tiens\n",
    good: concat!(
        "# whole file: games/example.fr.yaml\ntranslates: 2026-03-01\n",
        include_str!("../sound/session.fr.yaml")
    ),
    check: Check::Pack(check),
};

/// It was met while the translation was laid over its original.
fn check(pack: &Pack, notes: &mut Notes<'_>) {
    for slip in pack.translation_slips.iter().filter(|slip| slip.code == RULE.code) {
        notes.find(slip.place, slip.says.clone(), slip.way_out.clone());
    }
}
