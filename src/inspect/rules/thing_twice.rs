use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;

pub const RULE: Rule = Rule {
    code: "thing-twice",
    severity: Severity::Warning,
    asks: "equipment.yaml has each thing once.",
    why: "Of two entries with one name only the first counts, and the substitutes of the second are lost.",
    source: "",
    bad: "\
# file: equipment.yaml
equipment:
  - name: marker
    instead: [{thing: slipper}]
  - name: marker
    instead: [{thing: sock}]
  - name: tape measure
    instead: [{thing: ruler and string}]
",
    good: "\
# file: equipment.yaml
equipment:
  - name: marker
    instead: [{thing: slipper}, {thing: sock}]
  - name: tape measure
    instead: [{thing: ruler and string}]
",
    check: Check::Pack(check),
};

fn check(pack: &Pack, notes: &mut Notes<'_>) {
    for name in &pack.things_twice {
        notes.find(
            name.place,
            format!("“{name}” is in the list already; this entry is passed over."),
            "Make one entry of the two, with all the household substitutes under it.",
        );
    }
}
