use crate::finding::Severity;
use crate::inspect::rule::{Check, Rule};

pub const RULE: Rule = Rule {
    code: "file-misnamed",
    severity: Severity::Problem,
    asks: "The shared files are named pack.yaml, equipment.yaml and curriculum.yaml, at the top of the pack.",
    why: "Under another name, or in a folder, such a file would be taken for a session, and what it says \
          would be missing from all of them.",
    source: "",
    bad: "\
# whole file: games/equipment.yaml
equipment:
  - {name: beanbag, instead: [{thing: rolled-up sock}]}
",
    good: "\
# file: equipment.yaml
equipment:
  - {name: marker, instead: [{thing: rolled-up sock}]}
  - {name: tape measure, instead: [{thing: ruler and string}]}
",
    check: Check::Reading,
};
