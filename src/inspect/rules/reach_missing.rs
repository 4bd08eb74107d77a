use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::{Plans, plan_footprint};

pub const RULE: Rule = Rule {
    code: "reach-missing",
    severity: Severity::Problem,
    asks: "A jump or a throw says how far it is expected to come.",
    why: "Where it comes down decides how much floor is kept clear. Say the furthest you \
          expect, not the usual: a good try must not end in the furniture.",
    source: "",
    bad: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  space: {kind: throw, run_up: 1 m}
",
    good: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  space: {kind: throw, run_up: 1 m, reach: 1 m, sector: 20, margin: 50 cm}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for part in &session.parts {
        let Some(space) = part.space.as_ref().filter(|_| plan_footprint(part).is_none()) else {
            continue;
        };
        notes.find(
            space.kind.place,
            format!(
                "The space of the {} is for a {}, and nothing says how far it comes.",
                part.named(),
                space.kind.word()
            ),
            "Add the furthest landing you expect, such as “reach: 3 m”.",
        );
    }
}
