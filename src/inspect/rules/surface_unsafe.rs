use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::words::{Movement, Surface};

pub const RULE: Rule = Rule {
    code: "surface-unsafe",
    severity: Severity::Warning,
    asks: "Jumps are not offered on a hard floor or paving.",
    why: "Every landing on a hard surface goes through the ankles, knees and back. Grass, a carpet or a \
          mat that can’t slide gives a little.",
    source: "Common practice",
    bad: "\
space: {length: 4 m, width: 2 m, height: 2.2 m, where: [outdoors], surface: [paving]}
stretch:
  - title: Change feet
    time: 2 min 30 s
    effort: moderate
    movements: [jumping, landing]
    task: extend
    how: Jump from one foot to the other.
    easier: Step between.
    harder: Turn as you jump.
",
    good: "\
space: {length: 4 m, width: 2 m, height: 2.2 m, where: [outdoors], surface: [grass]}
stretch:
  - title: Change feet
    time: 2 min 30 s
    effort: moderate
    movements: [jumping, landing]
    task: extend
    how: Jump from one foot to the other.
    easier: Step between.
    harder: Turn as you jump.
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let Some(space) = &session.space else { return };
    let hard = space.surfaces.iter().find(|s| matches!(s, Surface::Paving | Surface::HardFloor));
    // Small hops and a travelling skip are done on any floor; a jump comes down harder.
    let jumping = session.parts.iter().find(|part| part.has_movement(Movement::Jumping));
    if let (Some(hard), Some(part)) = (hard, jumping) {
        notes.find(
            space.place,
            format!("The {} jumps, and “{}” is among the surfaces.", part.named(), hard.word()),
            "Take it out and leave what gives a little (grass, carpet, mat), or swap the jumps for steps.",
        );
    }
}
