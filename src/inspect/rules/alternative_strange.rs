use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::nearest;

pub const RULE: Rule = Rule {
    code: "alternative-strange",
    severity: Severity::Problem,
    asks: "What another version of a part uses is a thing of this session, and it is said whom it is for.",
    why: "A home is given another version with just the things it names. A name that the session does not \
          know would leave out what keeps the task safe.",
    source: "",
    bad: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  alternatives:
    - {for: [seated], needs: [markers], how: Sit tall and reach up.}
",
    good: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  alternatives:
    - {for: [seated], needs: [marker], how: Sit tall and reach up.}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let known: Vec<&str> = session.needs.iter().map(|need| need.name.0.as_str()).collect();
    for other in session.parts.iter().flat_map(|part| &part.alternatives) {
        for name in other.needs.iter().flatten().filter(|name| !known.contains(&name.0.as_str())) {
            let way_out = match nearest(name, &known) {
                Some(near) => format!("Did you mean “{near}”?"),
                None => format!("The things of this session are: {}.", known.join(", ")),
            };
            notes.find(name.place, format!("“{name}” is no thing of this session."), way_out);
        }
        if other.suits.is_empty() {
            let way_out = "Write “for: [seated]”, or another of the words for it.";
            notes.find(other.how.place, "It is not said whom this version is for.", way_out);
        }
    }
}
