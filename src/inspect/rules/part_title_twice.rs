use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "part-title-twice",
    severity: Severity::Warning,
    asks: "No two parts of a session have the same title.",
    why: "Cards get shuffled, and “for” after a thing means both parts of that title.",
    source: "",
    bad: "\
stretch:
  - title: Five hops
    time: 2 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
",
    good: "\
stretch:
  - title: Five hops backwards
    time: 2 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for (index, part) in session.parts.iter().enumerate() {
        let is_same =
            |earlier: &&crate::pack::Part| earlier.title.eq_ignore_ascii_case(&part.title);
        if let Some(earlier) = session.parts[..index].iter().find(is_same) {
            notes.find(
                part.title.place,
                format!("The {} has the title of a {}.", part.named(), earlier.kind.trade_name()),
                "Give one of them another title.",
            );
        }
    }
}
