use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Part, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "active-share",
    severity: Severity::Advice,
    asks: "At least half of the slot is moderate or vigorous work.",
    why: "Moving is what the session is for. The work of moderate and \
          vigorous parts counts here; explaining, rests and light parts don’t. It is an estimate from \
          the efforts you name, nothing measured.",
    source: "US Centers for Disease Control and Prevention: at least half of physical-education time",
    bad: "\
stretch:
  - title: Change feet
    time: 2 min 30 s
    effort: light
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
",
    good: "\
stretch:
  - title: Change feet
    time: 2 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
",
    check: Check::Session(check),
};

fn check(session: &Session, plans: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let is_unsure = |part: &Part| part.effort.is_none() || part.time.is_none();
    if !plans.time.fills_slot() || session.parts.iter().any(is_unsure) {
        return;
    }
    let active = plans.effort.active();
    let slot = session.slot.value;
    if active * 2 < slot {
        notes.find(
            session.slot.place,
            format!("Moderate and vigorous work fill {active} of {slot}, less than half."),
            "Shorten the explaining, share rests out, or let a light part be done on the move.",
        );
    }
}
