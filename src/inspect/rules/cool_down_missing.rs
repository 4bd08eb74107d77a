use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, PartKind, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "cool-down-missing",
    severity: Severity::Advice,
    asks: "A session ends with a cool-down.",
    why: "It brings the breath down, and is the place for held stretches and for looking back at what \
          was learnt.",
    source: "Merino-Marban 2025: static stretching belongs in the cool-down",
    bad: "\
cool_down: ~
stretch:
  - title: Change feet
    time: 6 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
",
    good: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up slowly.
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    if session.parts_of(PartKind::CoolDown).next().is_none() {
        notes.find(
            session.title.place,
            format!("“{}” has no cool-down.", session.title),
            "Add “cool_down:” with some easy walking and a few held stretches.",
        );
    }
}
