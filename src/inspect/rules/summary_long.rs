use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::prose::plain_line;

pub const RULE: Rule = Rule {
    code: "summary-long",
    severity: Severity::Advice,
    asks: "A summary is one or two sentences, at most 200 characters.",
    why: "Families read a whole list of them on a phone to choose one.",
    source: "",
    bad: "\
summary: >-
  First you hop along a line and hold still for three seconds on one foot. Then you do it so that
  nobody hears it. After that you see how far five hops take you, and in the end you stretch slowly
  until your breath is calm.
",
    good: "summary: Hop along a line and hold still, then see how far five hops take you.\n",
    check: Check::Session(check),
};

const MOST: usize = 200;

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let length = plain_line(&session.summary).chars().count();
    if length > MOST {
        notes.find(
            session.summary.place,
            format!("This summary has {length} characters, more than {MOST}."),
            "Keep what the child does and what it is good for; leave how it goes to the parts.",
        );
    }
}
