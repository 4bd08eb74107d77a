use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::nearest;

pub const RULE: Rule = Rule {
    code: "builds-on-unknown",
    severity: Severity::Warning,
    asks: "A session builds on sessions that are in the pack.",
    why: "Units put a skill after its ground. A ground that is not there can’t come first.",
    source: "",
    bad: "\
builds_on: [games/exmaple-2]
# file: games/example-2.yaml
title: Turn about
",
    good: "\
builds_on: [games/example-2]
# file: games/example-2.yaml
title: Turn about
",
    check: Check::SessionInPack(check),
};

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    for named in &session.builds_on {
        match pack.find_session(named) {
            None if pack.is_unread(named) => {}
            None => notes.find(
                named.place,
                format!("There is no session “{named}” in the pack."),
                way_to(named, pack),
            ),
            Some(ground) if pack.sessions[ground].id == session.id => notes.find(
                named.place,
                "This session is said to build on itself.",
                "Name the session that comes before it, or take the line out.",
            ),
            Some(_) => {}
        }
    }
}

/// The nearest address, or where addresses come from.
pub(super) fn way_to(named: &str, pack: &Pack) -> String {
    let same_title = |title: &str| title.eq_ignore_ascii_case(named);
    if let Some(session) = pack.sessions.iter().find(|session| same_title(&session.title)) {
        return format!("Write its address: {}.", session.id);
    }
    let known: Vec<&str> = pack.sessions.iter().map(|session| session.id.as_str()).collect();
    match nearest(named, &known) {
        Some(near) => format!("Did you mean “{near}”?"),
        None => "Write its folder and file name without the ending, such as athletics/brook-leap.".into(),
    }
}
