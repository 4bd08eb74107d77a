use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "shared-twice",
    severity: Severity::Problem,
    asks: "A name stands once in its list in shared.yaml.",
    why: "Of two the first would count, and a change to the second would reach nobody.",
    source: "",
    bad: "\
# whole file: shared.yaml
cautions:
  - {name: socks, says: Never hop in socks.}
  - {name: socks, says: Hop in bare feet.}
",
    good: "\
# whole file: shared.yaml
cautions:
  - {name: socks, says: Never hop in socks.}
  - {name: bare feet, says: Look for splinters first.}
",
    check: Check::Reading,
};
