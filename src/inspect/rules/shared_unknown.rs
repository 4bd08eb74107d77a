use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "shared-unknown",
    severity: Severity::Problem,
    asks: "What a session uses by name is in shared.yaml.",
    why: "A name that leads nowhere would leave a hole in the session: no warm-up, or a caution less.",
    source: "",
    bad: "\
safety:
  - use: socks
  - Keep clear of the stairs.
",
    good: "\
safety:
  - use: socks
  - Keep clear of the stairs.
# whole file: shared.yaml
cautions:
  - {name: socks, says: Hop in bare feet or grippy shoes and never in socks.}
",
    check: Check::Reading,
};
