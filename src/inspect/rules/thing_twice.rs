use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;

pub const RULE: Rule = Rule {
    code: "thing-twice",
    severity: Severity::Warning,
    asks: "equipment.yaml has each thing once.",
    why: "Of two entries with one name only the first counts, and the substitutes of the second are lost.",
    source: "",
    bad: "# file: equipment.yaml\nequipment:\n  - name: marker\n    instead: [{thing: slipper}]\n  - name: marker\n    instead: [{thing: sock}]\n  - name: tape measure\n    instead: [{thing: ruler and string}]\n",
    good: "# file: equipment.yaml\nequipment:\n  - name: marker\n    instead: [{thing: slipper}, {thing: sock}]\n  - name: tape measure\n    instead: [{thing: ruler and string}]\n",
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
