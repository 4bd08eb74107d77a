use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::prose::plain_line;
use crate::read::words::Measured;

pub const RULE: Rule = Rule {
    code: "paper-overfull",
    severity: Severity::Problem,
    asks: "What stands in one piece on paper has room there.",
    why: "Long instructions go on on another card. A title, the summary, a criterion, the list of parts and \
          the columns of a record sheet stay in one piece, and past these limits would run over the edge.",
    source: "",
    bad: "\
cool_down:
  title: Slow reach, and then a second slow reach to the other side, and then a third one up to the sky, and then at last the fourth one down
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
",
    good: "\
cool_down:
  title: Slow reaches
  time: 4 min
  effort: light
  movements: [stretching]
  how: Reach up and hold each stretch while you breathe out slowly.
",
    check: Check::Session(check),
};

/// Characters of a title, of the summary and of one criterion; parts; columns of attempts by criteria.
pub(super) const MOST_TITLE: usize = 120;
const MOST_SUMMARY: usize = 600;
const MOST_CRITERION: usize = 400;
const MOST_PARTS: usize = 40;
const MOST_COLUMNS: u32 = 12;

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let titles = session.parts.iter().map(|part| (&part.title, MOST_TITLE, "title"));
    let own = [(&session.title, MOST_TITLE, "title"), (&session.summary, MOST_SUMMARY, "summary")];
    let criteria = session.measured().flat_map(|(_, measure)| &measure.criteria);
    let criteria = criteria.map(|criterion| (criterion, MOST_CRITERION, "criterion"));
    for (text, most, name) in own.into_iter().chain(titles).chain(criteria) {
        let length = plain_line(text).chars().count();
        if length > most {
            notes.find(
                text.place,
                format!("This {name} has {length} characters; paper has room for {most}."),
                "Shorten it, and put the rest into “how”.",
            );
        }
    }
    if session.parts.len() > MOST_PARTS {
        let says = format!("This session has {} parts; the home guide has room for {MOST_PARTS}.", session.parts.len());
        notes.find(session.title.place, says, "Make two sessions of it, or join short parts.");
    }
    for (_, measure) in session.measured().filter(|(_, m)| m.what.value == Measured::Criteria) {
        let attempts = measure.attempts.as_ref().filter(|attempts| attempts.value > MOST_COLUMNS);
        if let Some(attempts) = attempts {
            notes.find(
                attempts.place,
                format!("{attempts} attempts by criteria don’t fit side by side; {MOST_COLUMNS} do."),
                "Ask for fewer attempts.",
            );
        }
    }
}
