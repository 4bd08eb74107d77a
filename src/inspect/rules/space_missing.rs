use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "space-missing",
    severity: Severity::Problem,
    asks: "A session says how much space it needs.",
    why: "It is the first thing that decides whether a home can do it, and families choose by it. Two by \
          two metres is usual for work on the spot.",
    source: "Common practice",
    bad: "space: ~\n",
    good: "space: {length: 2 m, width: 2 m, height: 2.2 m, where: [indoors, outdoors], surface: [grass, carpet]}\n",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    if session.space.is_none() {
        notes.find(
            session.title.place,
            format!("“{}” doesn’t say how much space it needs.", session.title),
            "Add “space:”, such as {length: 3 m, width: 2 m, height: 2.2 m, where: [indoors], surface: [carpet]}.",
        );
    }
}
