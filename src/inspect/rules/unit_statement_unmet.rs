use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Unit};
use crate::plan::unit::UnitPlan;

pub const RULE: Rule = Rule {
    code: "unit-statement-unmet",
    severity: Severity::Warning,
    asks: "A unit covers the statements that it says it covers.",
    why: "Sessions are added from the library as far as there are any for these ages and days for \
          them. What is still open would be taught by nobody.",
    source: "",
    bad: "\
curriculum: ~
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
cover: {statements: [jump-1], at_most: 0}
sessions: [games/example]
",
    good: "\
# whole file: units/example.yaml
title: Example unit
starts: 2027-01-11
weeks: 2
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
cover: {statements: [jump-1], at_most: 0}
sessions: [games/example]
",
    check: Check::Unit(check),
};

fn check(unit: &Unit, plan: &UnitPlan, pack: &Pack, notes: &mut Notes<'_>) {
    let Some(cover) = plan.cover.as_ref().filter(|_| !plan.lacks_sessions) else { return };
    let place = |code: &String| {
        let mut named = unit.cover.iter().flat_map(|cover| &cover.statements);
        named.find(|named| named.value.0 == *code).map_or(unit.title.place, |named| named.place)
    };
    // One whose file has a slip may meet it.
    let is_unread = |code: &&String| pack.unread_texts().any(|text| text.contains(code.as_str()));
    for code in cover.out_of_reach.iter().filter(|code| !is_unread(code)) {
        notes.find(
            place(code),
            format!("No session of the library meets “{code}” for all ages of this unit."),
            "Write or borrow one, name the code in a session that meets it, or take it out here.",
        );
    }
    for code in &cover.no_room {
        let most = cover.at_most;
        notes.find(
            place(code),
            format!("There is a session for “{code}”, but no more than {most} can be added here."),
            "Add a week or a day, raise “at_most”, or name the session in place of another.",
        );
    }
}
