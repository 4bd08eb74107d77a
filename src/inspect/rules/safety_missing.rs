use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "safety-missing",
    severity: Severity::Problem,
    asks: "A session has cautions: its own, or the usual ones of pack.yaml.",
    why: "At home nobody else has looked at the room. The cautions are your words; the school’s risk \
          assessment and local rules come first.",
    source: "",
    bad: "\
safety: ~
# file: pack.yaml
cautions: ~
",
    good: "\
safety:
  - Hop in bare feet or grippy shoes, never in socks.
",
    check: Check::SessionInPack(check),
};

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    if session.safety.is_empty() && pack.cautions.is_empty() {
        notes.find(
            session.title.place,
            format!("“{}” has no caution at all.", session.title),
            "Add “safety:” here, and the usual cautions once for all sessions in pack.yaml under “cautions:”.",
        );
    }
}
