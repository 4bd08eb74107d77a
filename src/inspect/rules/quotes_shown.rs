use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "quotes-shown",
    severity: Severity::Advice,
    asks: "A title stands in no curly quotation marks.",
    why: "Straight marks around a text belong to the file and are not shown. Curly ones, as word processors write \
          them, are part of the text, and families see them.",
    source: "",
    bad: "title: “Hop and hold”\n",
    good: "title: \"Hop and hold\"\n",
    check: Check::Session(check),
};

/// Quotation marks of several languages, as they stand around a text.
const PAIRS: [(char, char); 5] = [('“', '”'), ('‘', '’'), ('„', '“'), ('«', '»'), ('”', '”')];

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let titles = std::iter::once(&session.title).chain(session.parts.iter().map(|part| &part.title));
    for title in titles {
        let text = title.value.0.trim();
        let is_in = |(open, close): &(char, char)| text.starts_with(*open) && text.ends_with(*close);
        if text.chars().count() > 2 && PAIRS.iter().any(is_in) {
            notes.find(
                title.place,
                "The curly quotation marks are part of this title, and will be shown.",
                "Take them off, or use straight ones: \"…\".",
            );
        }
    }
}
