use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::inspect::wording::{is_english, words_of};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "success-voice",
    severity: Severity::Advice,
    asks: "Success criteria begin with “I”.",
    why: "The child reads them and ticks them off. “I land softly” is for the child; “lands softly” is \
          for a register. (English packs only.)",
    source: "Common practice",
    bad: "success: [Lands on a bent knee and stays still]\n",
    good: "success: [I land on a bent knee and stay still]\n",
    check: Check::Session(check),
};

const OPENINGS: [&str; 9] = ["i", "i'm", "i’m", "i've", "i’ve", "my", "we", "we're", "our"];

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    if !is_english(pack) {
        return;
    }
    for criterion in &session.success {
        let first = words_of(criterion).into_iter().next().unwrap_or_default();
        if !OPENINGS.contains(&first.as_str()) {
            notes.find(
                criterion.place,
                "This success criterion is not said by the child.",
                "Begin with “I”, such as “I keep my eyes on one spot”.",
            );
        }
    }
}
