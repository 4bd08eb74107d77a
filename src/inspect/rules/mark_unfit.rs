use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::{MarkFault, Plans};

pub const RULE: Rule = Rule {
    code: "mark-unfit",
    severity: Severity::Problem,
    asks: "Marks of a points table and of a reference can be read, and the steps rise.",
    why: "A step of the table must be harder than the one before it and worth more, or some \
          children would lose points by doing better.",
    source: "",
    bad: "\
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
      points: {steps: [{from: 300 cm, points: 1}, {from: 250 cm, points: 2}]}
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
      points: {steps: [{from: 250 cm, points: 1}, {from: 300 cm, points: 2}]}
",
    check: Check::Session(check),
};

fn check(session: &Session, plans: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for fault in plans.marks.iter().flatten().flat_map(|marks| &marks.faults) {
        match &fault.value {
            MarkFault::Unreadable(fault_of_text) => {
                notes.find(
                    fault.place,
                    format!("{}.", fault_of_text.says.trim_end_matches('.')),
                    fault_of_text.way_out.clone(),
                );
            }
            MarkFault::NoStep => notes.find(
                fault.place,
                "The smallest step of a mark can’t be read.",
                "Write it with its unit, such as “step: 1 cm” or “step: 0.1 s”.",
            ),
            MarkFault::Unsorted => notes.find(
                fault.place,
                "This step is not harder than the one before it, or not worth more.",
                "Write the easiest step first, and let each be harder and worth more than the last.",
            ),
        }
    }
    for (part, measure) in session.measured() {
        let Some(points) = measure.points.as_ref() else { continue };
        if points.steps.is_empty() && points.formula.is_none() {
            let says = format!("The points of the {} have neither steps nor a formula.", part.named());
            notes.find(points.place, says, "Write “steps:” with marks and points, or a formula.");
        }
    }
}
