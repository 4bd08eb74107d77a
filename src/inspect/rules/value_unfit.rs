use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "value-unfit",
    severity: Severity::Problem,
    asks: "A value is of the kind its key asks for, with its unit.",
    why: "Times, lengths and masses are added up and compared, so each is written in one way: “5 min”, \
          “1.5 m”, “400 g”.",
    source: "",
    bad: "\
cool_down:
  title: Slow reach
  time: 4 mins
  effort: light
  movements: [stretching]
  how: Reach up slowly.
",
    good: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up slowly.
",
    check: Check::Reading,
};
