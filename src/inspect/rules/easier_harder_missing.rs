use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Part, PartKind, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "easier-harder-missing",
    severity: Severity::Warning,
    asks: "Every part but the cool-down has an easier and a harder form.",
    why: "At home nobody adjusts the task for the child. With both at hand it can be made to fit; extend \
          it when it succeeds about eight times in ten.",
    source: "Common practice",
    bad: "\
stretch:
  - title: Change feet
    time: 2 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
",
    good: "\
stretch:
  - title: Change feet
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
    for part in session.parts.iter().filter(|part| part.kind != PartKind::CoolDown) {
        let Some(missing) = missing_form(part) else { continue };
        notes.find(
            part.title.place,
            format!("The {} has no {missing} form.", part.named()),
            "Add it in one sentence under “easier:” or “harder:”. Change one thing: distance, speed, size or support.",
        );
    }
}

fn missing_form(part: &Part) -> Option<&'static str> {
    match (&part.easier, &part.harder) {
        (None, None) => Some("easier and no harder"),
        (None, _) => Some("easier"),
        (_, None) => Some("harder"),
        _ => None,
    }
}
