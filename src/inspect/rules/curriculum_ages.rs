use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "curriculum-ages",
    severity: Severity::Advice,
    asks: "A session’s curriculum statements are for its ages.",
    why: "A statement for another age is mostly a code that was copied along.",
    source: "",
    bad: "ages: 12-14\n",
    good: "ages: 10-12\n",
    check: Check::SessionInPack(check),
};

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    let Some(curriculum) = &pack.curriculum else { return };
    for code in &session.curriculum {
        let ages = curriculum.statements.get(&code.value.0).and_then(|statement| statement.ages);
        if let Some(ages) = ages.filter(|ages| !ages.overlaps(session.ages.value)) {
            notes.find(
                code.place,
                format!("“{code}” is for ages {ages}, and this session for ages {}.", session.ages),
                "Name a statement for these ages, or change the ages.",
            );
        }
    }
}
