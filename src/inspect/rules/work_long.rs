use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::{Plans, usual_work};
use crate::read::words::Effort;

pub const RULE: Rule = Rule {
    code: "work-long",
    severity: Severity::Advice,
    asks: "Vigorous work comes in rounds short enough for the age.",
    why: "Children work hard in short bursts. It is usual to begin with 20 s up to the age of 7, 30 s up \
          to 11 and 40 s after that; this rule speaks up at more than twice as long.",
    source: "Common practice",
    bad: "\
challenge:
  - title: Five hops
    time: {work: 2 min 50 s, recover: 10 s}
    effort: vigorous
    movements: [hopping, landing]
    how: Start behind the first marker. Measure to your heel with the tape measure.
    easier: Hop three times.
    harder: Start from a standstill.
    measure: {what: distance, unit: cm, attempts: 3, better: more}
",
    good: "\
challenge:
  - title: Five hops
    time: {explain: 30 s, work: 30 s, rest: 30 s, rounds: 3}
    effort: vigorous
    movements: [hopping, landing]
    how: Start behind the first marker. Measure to your heel with the tape measure.
    easier: Hop three times.
    harder: Start from a standstill.
    measure: {what: distance, unit: cm, attempts: 3, better: more}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let (_, usual) = usual_work(session.ages.value);
    for part in &session.parts {
        let is_vigorous = part.effort.as_ref().is_some_and(|e| e.value == Effort::Vigorous);
        let Some(time) = part.time.as_ref().filter(|_| is_vigorous) else { continue };
        if time.work > usual * 2 {
            notes.find(
                time.place,
                format!(
                    "The {} asks for {} of vigorous work in one go; {usual} is usual to begin with at ages {}.",
                    part.named(), time.work, session.ages
                ),
                "Share it out over rounds with rests between, or call it moderate if that is what it is.",
            );
        }
    }
}
