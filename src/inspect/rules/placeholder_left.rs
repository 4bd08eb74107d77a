use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;
use crate::place::Placed;

pub const RULE: Rule = Rule {
    code: "placeholder-left",
    severity: Severity::Warning,
    asks: "No text is still a placeholder.",
    why: "“TODO” on a card in a family’s kitchen helps nobody.",
    source: "",
    bad: "summary: TODO\n",
    good: "summary: Hop along a line and hold still.\n",
    check: Check::Text(check),
};

const PLACEHOLDERS: [&str; 9] =
    ["todo", "tbc", "tba", "tbd", "xxx", "xx", "fixme", "lorem ipsum", ""];

fn check(text: &Placed<&str>, _: &Pack, notes: &mut Notes<'_>) {
    let core = text.trim_matches(|c: char| !c.is_alphanumeric()).to_lowercase();
    if PLACEHOLDERS.contains(&core.as_str()) {
        notes.find(
            text.place,
            format!("“{}” stands here for a text that is still to come.", text.trim()),
            "Write the text, or take the key out.",
        );
    }
}
