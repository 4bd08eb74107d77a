use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Unit};
use crate::plan::unit::UnitPlan;

pub const RULE: Rule = Rule {
    code: "unit-ages",
    severity: Severity::Advice,
    asks: "The sessions of a unit are for its ages.",
    why: "A session for another age is mostly too easy or too long, and its limits on masses and \
          distances are for other bodies.",
    source: "",
    bad: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
ages: 12-13
sessions: [games/example]
",
    good: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
ages: 8-9
sessions: [games/example]
",
    check: Check::Unit(check),
};

fn check(unit: &Unit, _: &UnitPlan, pack: &Pack, notes: &mut Notes<'_>) {
    let Some(ages) = &unit.ages else { return };
    for entry in &unit.entries {
        let Some(at) = pack.find_session(&entry.named) else { continue };
        let own = pack.sessions[at].ages.value;
        if !own.overlaps(ages.value) {
            notes.find(
                entry.named.place,
                format!("This session is for ages {own}, and the unit for ages {}.", ages.value),
                "Choose another session, or change the ages of the unit.",
            );
        }
    }
}
