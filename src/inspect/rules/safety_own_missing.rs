use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "safety-own-missing",
    severity: Severity::Advice,
    asks: "A session says what is special about its own safety.",
    why: "The usual cautions are soon skimmed. The one that belongs to this activity is read.",
    source: "",
    bad: "safety: ~\n",
    good: "\
safety:
  - Hop in bare feet or grippy shoes, never in socks.
",
    check: Check::SessionInPack(check),
};

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    if session.safety.is_empty() && !pack.cautions.is_empty() {
        notes.find(
            session.title.place,
            format!("“{}” has only the pack’s usual cautions.", session.title),
            "Add “safety:” with what is special here: footwear, what is swung or thrown, where one lands.",
        );
    }
}
