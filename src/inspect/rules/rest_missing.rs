use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::words::Effort;

pub const RULE: Rule = Rule {
    code: "rest-missing",
    severity: Severity::Warning,
    asks: "Rounds of vigorous work have rest between them.",
    why: "Without a rest the second round is slow and sloppy, and landings get heavy. It is usual to \
          begin with as much rest as work, or twice as much for the youngest; three to five times as \
          much after sprints and jumps flat out.",
    source: "Common practice",
    bad: "\
warm_up:
  title: Stone and stream
  time: {explain: 30 s, work: 30 s, rounds: 8}
  effort: vigorous
  movements: [running]
  how: Run on the spot until you hear “stone”. Jog round both markers.
  easier: March.
  harder: Close one eye.
",
    good: "\
warm_up:
  title: Stone and stream
  time: {explain: 30 s, work: 30 s, rest: 30 s, rounds: 4, recover: 30 s}
  effort: vigorous
  movements: [running]
  how: Run on the spot until you hear “stone”. Jog round both markers.
  easier: March.
  harder: Close one eye.
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for part in &session.parts {
        let is_vigorous = part.effort.as_ref().is_some_and(|e| e.value == Effort::Vigorous);
        let Some(time) = part.time.as_ref().filter(|_| is_vigorous) else { continue };
        if time.rounds > 1 && time.rest.is_zero() {
            let (named, rounds, work) = (part.named(), time.rounds, time.work);
            notes.find(
                time.place,
                format!("The {named} is vigorous and has {rounds} rounds of {work} with no rest between them."),
                format!("Add a rest, such as “rest: {work}”, and take a round out if the slot is full."),
            );
        }
    }
}
