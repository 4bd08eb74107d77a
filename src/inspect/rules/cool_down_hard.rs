use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, PartKind, Session};
use crate::plan::Plans;
use crate::read::words::Effort;

pub const RULE: Rule = Rule {
    code: "cool-down-hard",
    severity: Severity::Advice,
    asks: "The cool-down is light.",
    why: "It ends the session with the breath calm; a hard last part only puts the calming down off.",
    source: "Common practice",
    bad: "\
cool_down:
  title: Last dash
  time: 4 min
  effort: moderate
  movements: [running]
  how: Jog up and down as long as you can.
",
    good: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [walking, stretching]
  how: Walk up and down, then reach up slowly.
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for part in session.parts_of(PartKind::CoolDown) {
        let Some(effort) = part.effort.as_ref().filter(|e| e.value > Effort::Light) else {
            continue;
        };
        notes.find(
            effort.place,
            format!("The {} is {}.", part.named(), effort.value.word()),
            "Make it light: slow walking, held stretches, breathing out. Move hard work further up.",
        );
    }
}
