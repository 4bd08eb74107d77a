use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, PartKind, Session};
use crate::plan::Plans;
use crate::read::words::Task;

pub const RULE: Rule = Rule {
    code: "practice-unrefined",
    severity: Severity::Advice,
    asks: "Practice that gets harder also has a task for getting better.",
    why: "The common error is to extend and extend with too little refining: the task grows and the \
          movement stays as it was.",
    source: "Rink; Mitchell 2009",
    bad: "\
technique:
  - title: Push and hold
    time: 6 min
    effort: moderate
    movements: [hopping, landing]
    task: inform
    how: Hop forward once and hold for three seconds.
    key_points: [Bend your knee]
    faults: [{see: The knee is stiff, say: Land as if on eggs}]
    easier: Hop on the spot.
    harder: Hop to the side.
",
    good: "\
technique:
  - title: Quiet landings
    time: 6 min
    effort: moderate
    movements: [hopping, landing]
    task: refine
    how: Hop, and land so that nobody hears it.
    key_points: [Bend your knee]
    faults: [{see: The knee is stiff, say: Land as if on eggs}]
    easier: Hop on the spot.
    harder: Hop to the side.
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    // A step that doesn't say what it does may be the one that refines; another rule asks for it.
    let has_unsaid = session.parts_of(PartKind::Technique).any(|step| step.task.is_none());
    let has_steps = session.parts_of(PartKind::Technique).next().is_some();
    let tasks = || session.parts.iter().filter_map(|part| part.task.as_ref());
    let extends = tasks().find(|task| task.value == Task::Extend);
    let is_refined = tasks().any(|task| task.value == Task::Refine);
    if let Some(extends) = extends.filter(|_| has_steps && !has_unsaid && !is_refined) {
        notes.find(
            extends.place,
            "The practice gets harder here, and no task refines it.",
            "Add a step that stays at the same difficulty and asks for better: quieter, straighter, stiller.",
        );
    }
}
