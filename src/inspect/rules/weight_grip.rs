use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;

pub const RULE: Rule = Rule {
    code: "weight-grip",
    severity: Severity::Warning,
    asks: "A weight says how it is held and closed securely.",
    why: "Improvised weights slip, and lids come off. How it is gripped, and that the lid is checked, \
          belongs beside the thing itself.",
    source: "",
    bad: "\
# file: equipment.yaml
equipment:
  - name: marker
    instead: [{thing: slipper}]
  - name: tape measure
    instead: [{thing: ruler and string}]
  - name: ankle weight
    weight: true
    mass: 200-300 g
    instead: [{thing: sock with 200 g of rice, mass: 200-260 g}]
",
    good: "\
# file: equipment.yaml
equipment:
  - name: marker
    instead: [{thing: slipper}]
  - name: tape measure
    instead: [{thing: ruler and string}]
  - name: ankle weight
    weight: true
    grip: The rice stays in its sealed bag, and the sock is knotted twice.
    mass: 200-300 g
    instead: [{thing: sock with 200 g of rice, mass: 200-260 g}]
",
    check: Check::Pack(check),
};

fn check(pack: &Pack, notes: &mut Notes<'_>) {
    for thing in pack.things.values().filter(|thing| thing.weight && thing.grip.is_none()) {
        notes.find(
            thing.name.place,
            format!("Nothing says how the weight “{}” is held and closed.", thing.name),
            "Add “grip:” with how the fingers hold it and how its lid or knot is checked.",
        );
    }
}
