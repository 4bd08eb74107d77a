use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;
use crate::place::Place;

pub const RULE: Rule = Rule {
    code: "pack-file-missing",
    severity: Severity::Advice,
    asks: "A pack has a pack.yaml.",
    why: "It says once what every session would have to repeat: the school, the usual cautions, the \
          licence, whom to ask.",
    source: "",
    bad: "\
licence: CC-BY-4.0
safety:
  - Keep an arm’s length from walls and furniture, and pets out of the space.
# no file: pack.yaml
",
    good: "\
# file: pack.yaml
title: Sessions for home
",
    check: Check::Pack(check),
};

fn check(pack: &Pack, notes: &mut Notes<'_>) {
    if pack.paths.contains("pack.yaml") {
        return;
    }
    if let Some(first) = pack.sessions.first() {
        notes.find(
            Place::top_of(first.file),
            "This pack has no pack.yaml.",
            "Make one at the top of the pack, beginning with “title:”.",
        );
    }
}
