use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::{Plans, TimePlan};

pub const RULE: Rule = Rule {
    code: "slot-sum",
    severity: Severity::Problem,
    asks: "The parts’ times add up to the slot.",
    why: "A family plans its morning by the minutes on the card. A part’s time is explaining, \
          setting up, every round of work, the rests *between* rounds and getting the breath back. \
          Half a minute either way is let pass.",
    source: "",
    bad: "minutes: 30\n",
    good: "minutes: 20\n",
    check: Check::Session(check),
};

fn check(session: &Session, plans: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let time = &plans.time;
    let has_gap = session.parts.iter().any(|part| part.time.is_none());
    if time.fills_slot() || has_gap {
        return;
    }
    let gap = time.total.apart(time.slot);
    let (way, advice) = if time.total > time.slot {
        ("over", "Shorten or drop a part, or lengthen the slot")
    } else {
        ("short of", "Lengthen a part or add one, or shorten the slot")
    };
    notes.find(
        session.slot.place,
        format!("The parts take {}, {gap} {way} the slot of {}.", time.total, time.slot),
        format!("{advice}. The parts: {}.", list_shares(session, time)),
    );
}

/// “Stone and stream 4 min 30 s (22.5 %), …”
fn list_shares(session: &Session, time: &TimePlan) -> String {
    let share = |(part, span): (&crate::pack::Part, &crate::plan::PartSpan)| {
        let tenths = span.share_of(time.slot);
        format!("{} {} ({}.{} %)", part.title, span.total, tenths / 10, tenths % 10)
    };
    session.parts.iter().zip(&time.spans).map(share).collect::<Vec<_>>().join(", ")
}
