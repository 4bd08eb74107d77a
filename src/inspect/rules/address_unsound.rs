use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::Pack;
use crate::prose::is_web_address;

pub const RULE: Rule = Rule {
    code: "address-unsound",
    severity: Severity::Problem,
    asks: "The pack’s address is a whole web address.",
    why: "It is printed on paper for families to type.",
    source: "",
    bad: "\
# file: pack.yaml
address: pe.example.org
",
    good: "\
# file: pack.yaml
address: https://pe.example.org/
",
    check: Check::Pack(check),
};

fn check(pack: &Pack, notes: &mut Notes<'_>) {
    if let Some(address) = pack.address.as_ref().filter(|address| !is_web_address(address)) {
        notes.find(
            address.place,
            format!("“{address}” is no whole web address."),
            "Write it with https:// at the start, or take it out until the pages stand somewhere.",
        );
    }
}
