use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;

pub const RULE: Rule = Rule {
    code: "translation-old",
    severity: Severity::Warning,
    asks: "A translation says which edition of its original it translates, and that is the newest.",
    why: "A caution or a distance may have changed in the original while another language still says the old one.",
    source: "",
    bad: concat!(
        "# whole file: games/example.fr.yaml\ntranslates: e00000000\n",
        include_str!("../sound/session.fr.yaml")
    ),
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
