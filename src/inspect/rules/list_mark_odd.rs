use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;
use crate::place::Placed;

pub const RULE: Rule = Rule {
    code: "list-mark-odd",
    severity: Severity::Warning,
    asks: "An entry of a list begins with a hyphen and a space.",
    why: "A bullet as word processors write it, or a hyphen with no space after it, begins no entry: what follows \
          runs on as one long text.",
    source: "",
    bad: "\
success:
  • I land on a bent knee and stay still
  • I keep my eyes on one spot
",
    good: "\
success:
  - I land on a bent knee and stay still
  - I keep my eyes on one spot
",
    check: Check::Text(check),
};

/// Bullets that word processors write.
const BULLETS: [char; 6] = ['•', '◦', '▪', '‣', '·', '●'];

fn check(text: &Placed<&str>, _: &Pack, notes: &mut Notes<'_>) {
    let mut letters = text.chars();
    let mark = match (letters.next(), letters.next()) {
        (Some(bullet), _) if BULLETS.contains(&bullet) => bullet,
        (Some('-'), Some(next)) if next.is_alphabetic() => '-',
        _ => return,
    };
    notes.find(
        text.place,
        format!("This text begins with “{mark}”, and does not begin an entry of a list."),
        "Begin each entry on a line of its own, with a hyphen and a space: “- ”.",
    );
}
