use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::{Plans, total_of};

pub const RULE: Rule = Rule {
    code: "lengths-crossed",
    severity: Severity::Problem,
    asks: "A part’s shortest time is no longer, and its longest no shorter, than its time.",
    why: "“shortest” and “longest” say how far the part may give way when a family has less \
          or more time. Its usual time lies between them.",
    source: "",
    bad: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  shortest: 5 min
",
    good: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  shortest: 3 min
  longest: 6 min
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for part in &session.parts {
        let Some(usual) = part.time.as_ref().map(|time| total_of(time)) else { continue };
        let shortest = part.lengths.shortest.as_ref().filter(|length| length.value > usual);
        let longest = part.lengths.longest.as_ref().filter(|length| length.value < usual);
        for (length, key, way) in
            [(shortest, "shortest", "longer"), (longest, "longest", "shorter")]
        {
            let Some(length) = length else { continue };
            notes.find(
                length.place,
                format!(
                    "The {} time of the {} is {}, {way} than its usual {usual}.",
                    key,
                    part.named(),
                    length.value
                ),
                "Write a time on the other side of the usual one, or take the line out.",
            );
        }
    }
}
