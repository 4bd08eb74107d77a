use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::nearest;

pub const RULE: Rule = Rule {
    code: "curriculum-unknown",
    severity: Severity::Problem,
    asks: "A curriculum code is in curriculum.yaml.",
    why: "The page for teachers shows what the code stands for. A code that is not in the list counts for \
          nothing there.",
    source: "",
    bad: "curriculum: [jmp-1]\n",
    good: "curriculum: [jump-1]\n",
    check: Check::SessionInPack(check),
};

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    let Some(curriculum) = &pack.curriculum else { return };
    for code in &session.curriculum {
        if curriculum.statements.contains_key(&code.value.0) {
            continue;
        }
        let known: Vec<&str> = curriculum.statements.keys().map(String::as_str).collect();
        let way_out = match nearest(code, &known) {
            Some(near) => format!("Did you mean “{near}”?"),
            None => "Add it to curriculum.yaml with what it says, or take it out here.".into(),
        };
        notes.find(code.place, format!("“{code}” is not in curriculum.yaml."), way_out);
    }
}
