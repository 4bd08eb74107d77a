use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "worth-unfit",
    severity: Severity::Problem,
    asks: "A part is worth 1 to 5.",
    why: "The worth decides which parts stay when a family has less time: 5 for what the \
          session is about, 1 for what can go. 3 is taken where nothing is said.",
    source: "",
    bad: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  worth: 9
",
    good: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
  worth: 4
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for part in session.parts.iter().filter(|part| !(1..=5).contains(&part.lengths.worth.value)) {
        let worth = &part.lengths.worth;
        notes.find(
            worth.place,
            format!("The {} is worth {}, and only 1 to 5 has a meaning.", part.named(), worth.value),
            "Write 5 for what matters most, 3 for what matters as much as most, 1 for what can go.",
        );
    }
}
