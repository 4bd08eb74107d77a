use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, PartKind, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "warm-up-missing",
    severity: Severity::Warning,
    asks: "A session begins with a warm-up.",
    why: "A child comes to it from a chair. A few minutes of easy movement, getting quicker, make the \
          body and the mind ready for the rest.",
    source: "Duncan & Woodfield: dynamic work in the warm-up",
    bad: "\
warm_up: ~
equipment:
  - {need: marker, count: 2, for: [challenge]}
  - {need: tape measure, for: [challenge]}
stretch:
  - title: Change feet
    time: 7 min
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
",
    good: "\
warm_up:
  title: Stone and stream
  time: {explain: 30 s, work: 30 s, rest: 30 s, rounds: 4, recover: 30 s}
  effort: vigorous
  movements: [running]
  how: Jog round both markers.
  easier: Walk.
  harder: Jog backwards.
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    if session.parts_of(PartKind::WarmUp).next().is_none() {
        notes.find(
            session.title.place,
            format!("“{}” has no warm-up.", session.title),
            "Add “warm_up:” with a title, a time, an effort and how it goes.",
        );
    }
}
