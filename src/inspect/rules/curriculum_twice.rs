use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;

pub const RULE: Rule = Rule {
    code: "curriculum-twice",
    severity: Severity::Warning,
    asks: "curriculum.yaml has each code once.",
    why: "Of two statements with one code only the first is shown.",
    source: "",
    bad: "\
# file: curriculum.yaml
statements:
  - {code: jump-1, says: Jump and land with control, ages: 7-11}
  - {code: jump-1, says: Jump for distance, ages: 7-11}
",
    good: "\
# file: curriculum.yaml
statements:
  - {code: jump-1, says: Jump and land with control, ages: 7-11}
  - {code: jump-2, says: Jump for distance, ages: 7-11}
",
    check: Check::Pack(check),
};

fn check(pack: &Pack, notes: &mut Notes<'_>) {
    for code in pack.curriculum.iter().flat_map(|curriculum| &curriculum.twice) {
        notes.find(
            code.place,
            format!("The code “{code}” is in the list already; this statement is passed over."),
            "Give it a code of its own.",
        );
    }
}
