use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "reference-sourceless",
    severity: Severity::Warning,
    asks: "A mark to compare with says where it is from.",
    why: "Populations differ widely, and no figure is “the” norm. Who reads a share of a \
          reference mark must be able to see whose mark it is. Fitness results are private, \
          not for grading, and never a comparison between children.",
    source: "SHAPE America, appropriate practices",
    bad: "\
challenge:
  - title: Five hops
    time: {explain: 30 s, work: 20 s, rest: 40 s, rounds: 3, recover: 10 s}
    effort: vigorous
    movements: [hopping, landing]
    how: Start behind the first marker. Hop five times and hold. Measure to your heel with the tape measure.
    easier: Hop three times.
    harder: Start from a standstill on one foot.
    measure: {what: distance, unit: cm, attempts: 3, better: more, reference: {mark: 400 cm}}
",
    good: "\
challenge:
  - title: Five hops
    time: {explain: 30 s, work: 20 s, rest: 40 s, rounds: 3, recover: 10 s}
    effort: vigorous
    movements: [hopping, landing]
    how: Start behind the first marker. Hop five times and hold. Measure to your heel with the tape measure.
    easier: Hop three times.
    harder: Start from a standstill on one foot.
    measure:
      what: distance
      unit: cm
      attempts: 3
      better: more
      reference: {mark: 400 cm, source: The median of our own year 5 in 2025}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for (_, measure) in session.measured() {
        let Some(reference) = measure.reference.as_ref().filter(|r| r.source.is_none()) else {
            continue;
        };
        notes.find(
            reference.mark.place,
            format!("The reference mark “{}” has no source.", reference.mark),
            "Add “source:” with whose mark it is, of what age and from where.",
        );
    }
}
