use super::paper_overfull::MOST_TITLE;
use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::prose::plain_line;

pub const RULE: Rule = Rule {
    code: "title-long",
    severity: Severity::Warning,
    asks: "A title has at most 60 characters.",
    why: "It stands on one or two lines of a small card, and in a list on a phone.",
    source: "",
    bad: "title: Hop along a line, hold still for three seconds, then see how far five hops take you\n",
    good: "title: Hop and hold\n",
    check: Check::Session(check),
};

const MOST: usize = 60;

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let titles =
        std::iter::once(&session.title).chain(session.parts.iter().map(|part| &part.title));
    for title in titles {
        let length = plain_line(title).chars().count();
        // Longer still, it has no room on paper at all: that is another rule’s to say.
        if (MOST + 1..=MOST_TITLE).contains(&length) {
            notes.find(
                title.place,
                format!("This title has {length} characters; {MOST} fit on a card."),
                "Shorten it, and put the rest into the summary or into “how”.",
            );
        }
    }
}
