use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::words::Measured;

pub const RULE: Rule = Rule {
    code: "better-missing",
    severity: Severity::Warning,
    asks: "A mark says whether more or less is better.",
    why: "Further is better in a jump, quicker in a run. A personal best can’t be told without it.",
    source: "",
    bad: "\
challenge:
  - title: Five hops
    time: 3 min
    effort: moderate
    movements: [hopping, landing]
    how: Start behind the first marker. Measure to your heel with the tape measure.
    easier: Hop three times.
    harder: Start from a standstill.
    measure: {what: distance, unit: cm, attempts: 3}
",
    good: "\
challenge:
  - title: Five hops
    time: 3 min
    effort: moderate
    movements: [hopping, landing]
    how: Start behind the first marker. Measure to your heel with the tape measure.
    easier: Hop three times.
    harder: Start from a standstill.
    measure: {what: distance, unit: cm, attempts: 3, better: more}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for (part, measure) in session.measured() {
        if measure.better.is_none() && measure.what.value != Measured::Criteria {
            notes.find(
                measure.place,
                format!(
                    "The {} doesn’t say whether a larger or a smaller mark is better.",
                    part.named()
                ),
                "Add “better: more” or “better: less”.",
            );
        }
    }
}
