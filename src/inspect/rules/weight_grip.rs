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
    bad: "# file: equipment.yaml\nequipment:\n  - name: marker\n    instead: [{thing: slipper}]\n  - name: tape measure\n    instead: [{thing: ruler and string}]\n  - name: ankle weight\n    weight: true\n    mass: 200-300 g\n    instead: [{thing: sock with 200 g of rice, mass: 200-260 g}]\n",
    good: "# file: equipment.yaml\nequipment:\n  - name: marker\n    instead: [{thing: slipper}]\n  - name: tape measure\n    instead: [{thing: ruler and string}]\n  - name: ankle weight\n    weight: true\n    grip: The rice stays in its sealed bag, and the sock is knotted twice.\n    mass: 200-300 g\n    instead: [{thing: sock with 200 g of rice, mass: 200-260 g}]\n",
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
