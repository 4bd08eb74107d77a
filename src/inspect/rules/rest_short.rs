use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::words::Effort;

pub const RULE: Rule = Rule {
    code: "rest-short",
    severity: Severity::Advice,
    asks: "Vigorous rounds are followed by at least as much rest as work.",
    why: "One to one is where to start at every age; all-out sprints and jumps want three \
          times the work or more. Children recover faster than untrained adults, so lengthen \
          or shorten it as you see them breathe.",
    source: "Common practice; recovery: Ratel 2004",
    bad: "\
warm_up:
  title: Stone and stream
  time: {explain: 50 s, work: 40 s, rest: 20 s, rounds: 4, recover: 30 s}
  effort: vigorous
  movements: [running, hopping]
  how: Run on the spot until you hear “stone”, then stand still on one foot. Jog round both markers.
  easier: Put your other toes on the floor.
  harder: Close one eye.
",
    good: "\
warm_up:
  title: Stone and stream
  time: {explain: 30 s, work: 30 s, rest: 30 s, rounds: 4, recover: 30 s}
  effort: vigorous
  movements: [running, hopping]
  how: Run on the spot until you hear “stone”, then stand still on one foot. Jog round both markers.
  easier: Put your other toes on the floor.
  harder: Close one eye.
",
    check: Check::Session(check),
};

fn check(session: &Session, plans: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for (part, rhythm) in session.parts.iter().zip(&plans.effort.rhythms) {
        let is_vigorous = part.effort.as_ref().is_some_and(|e| e.value == Effort::Vigorous);
        let (Some(rhythm), Some(time)) = (rhythm, &part.time) else { continue };
        if !is_vigorous || rhythm.rest >= rhythm.work {
            continue;
        }
        let tenths = rhythm.rest_for_one();
        notes.find(
            time.place,
            format!(
                "The {} works {} and rests {}: one to {}.{}.",
                part.named(),
                rhythm.work,
                rhythm.rest,
                tenths / 10,
                tenths % 10
            ),
            format!("Rest for {} as well, work for less, or call it moderate.", rhythm.work),
        );
    }
}
