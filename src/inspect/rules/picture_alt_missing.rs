use crate::finding::Severity;
use crate::inspect::pictures::pictures_of;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "picture-alt-missing",
    severity: Severity::Problem,
    asks: "Every picture has alternative text.",
    why: "Who can’t see it hears the text instead. Say what matters in the picture: which leg, which way, \
          how far.",
    source: "WCAG 2.2, success criterion 1.1.1",
    bad: "pictures: [{file: pictures/hop.png}]\n",
    good: "pictures: [{file: pictures/hop.png, alt: A child stands on one bent leg}]\n",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for picture in pictures_of(session).filter(|picture| picture.alt.is_none()) {
        notes.find(
            picture.file.place,
            format!("The picture “{}” has no alternative text.", picture.file),
            "Add “alt:” with what it shows, such as “A child stands on one bent leg, arms out”.",
        );
    }
}
