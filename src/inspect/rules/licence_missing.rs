use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "licence-missing",
    severity: Severity::Warning,
    asks: "A session has a licence, its own or the pack’s.",
    why: "Without one no other school may use or change it, however gladly you would share.",
    source: "",
    bad: "\
# file: pack.yaml
licence: ~
",
    good: "licence: CC-BY-SA-4.0\n",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    if session.licence.is_none() {
        notes.find(
            session.title.place,
            format!("Nothing says how “{}” may be shared.", session.title),
            "Add “licence:” to pack.yaml, such as CC-BY-4.0, or to this session alone.",
        );
    }
}
