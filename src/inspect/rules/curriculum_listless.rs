use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;

pub const RULE: Rule = Rule {
    code: "curriculum-listless",
    severity: Severity::Advice,
    asks: "Where sessions name curriculum codes, the pack has a curriculum.yaml.",
    why: "Without the list a code is a riddle to everyone but its author.",
    source: "",
    bad: "# no file: curriculum.yaml\n",
    good: "\
# file: curriculum.yaml
title: Our list
",
    check: Check::Pack(check),
};

fn check(pack: &Pack, notes: &mut Notes<'_>) {
    if pack.paths.contains("curriculum.yaml") {
        return;
    }
    if let Some(code) = pack.sessions.iter().find_map(|session| session.curriculum.first()) {
        notes.find(
            code.place,
            "Sessions name curriculum codes, and the pack has no curriculum.yaml to explain them.",
            "Make one beside pack.yaml: “statements:” with a code and what it says for each.",
        );
    }
}
