use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::words::{Movement, Surface};

pub const RULE: Rule = Rule {
    code: "roll-surface",
    severity: Severity::Warning,
    asks: "Rolls with the body are done on something soft.",
    why: "Spine, shoulders and head meet the floor. A hard floor or paving among the surfaces, or none \
          named at all, leaves it to chance.",
    source: "Common practice",
    bad: "\
space: {length: 4 m, width: 2 m, height: 2.2 m, where: [indoors], surface: [hard floor, mat]}
stretch:
  - title: Hop and roll
    time: 2 min 30 s
    effort: moderate
    movements: [hopping, rolling]
    task: extend
    how: Hop twice, lie down and roll like a log.
    easier: Only roll.
    harder: Roll with your arms overhead.
",
    good: "\
space: {length: 4 m, width: 2 m, height: 2.2 m, where: [indoors], surface: [carpet, mat]}
stretch:
  - title: Hop and roll
    time: 2 min 30 s
    effort: moderate
    movements: [hopping, rolling]
    task: extend
    how: Hop twice, lie down and roll like a log.
    easier: Only roll.
    harder: Roll with your arms overhead.
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let Some(space) = &session.space else { return };
    let Some(part) = session.parts.iter().find(|part| part.has_movement(Movement::Rolling)) else {
        return;
    };
    let hard = space.surfaces.iter().find(|s| matches!(s, Surface::Paving | Surface::HardFloor));
    let says = match hard {
        Some(hard) => {
            format!("The {} rolls, and “{}” is among the surfaces.", part.named(), hard.word())
        }
        None if space.surfaces.is_empty() => {
            format!("The {} rolls, and no surface is named.", part.named())
        }
        None => return,
    };
    notes.find(
        space.place,
        says,
        "Name only what is soft to roll on, such as [carpet, mat, grass].",
    );
}
