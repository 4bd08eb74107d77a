use std::collections::BTreeSet;

use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::letters::can_print;
use crate::pack::Pack;
use crate::place::Placed;

pub const RULE: Rule = Rule {
    code: "letter-unprinted",
    severity: Severity::Warning,
    asks: "Every letter and sign can be printed.",
    why: "The type for paper has the Latin, Greek and Cyrillic letters, but no emoji and no other scripts \
          yet. What it lacks is left out on cards, while pages show it.",
    source: "",
    bad: "safety: [Hop in bare feet or grippy shoes 👟 and never in socks.]\n",
    good: "safety: [Hop in bare feet or grippy shoes and never in socks.]\n",
    check: Check::Text(check),
};

fn check(text: &Placed<&str>, pack: &Pack, notes: &mut Notes<'_>) {
    let lacking: BTreeSet<char> = text.chars().filter(|letter| !can_print(*letter)).collect();
    let Some(first) = text.chars().find(|letter| lacking.contains(letter)) else { return };
    let signs: Vec<String> = lacking.iter().take(8).map(ToString::to_string).collect();
    notes.find(
        pack.files.place_within(text.place, &first.to_string()),
        format!("The type for paper has no {}: it is left out on the cards.", signs.join(" ")),
        "Say it in words.",
    );
}
