use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::nearest;

pub const RULE: Rule = Rule {
    code: "figure-thing-unlisted",
    severity: Severity::Warning,
    asks: "What a figure holds is on the list of things.",
    why: "A family looks for it in the picture and not among the things to gather.",
    source: "",
    bad: "\
stretch:
  - title: Change feet
    time: 2 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
    figure: {pose: hands ready to catch, holds: beach ball}
",
    good: "\
stretch:
  - title: Change feet
    time: 2 min 30 s
    effort: moderate
    movements: [hopping]
    task: extend
    how: Hop twice on one foot and twice on the other.
    easier: Step between.
    harder: Hop backwards.
    figure: {pose: hands ready to catch, holds: marker}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    let listed: Vec<&str> = session.needs.iter().map(|need| need.name.value.0.as_str()).collect();
    for moment in session.parts.iter().flat_map(|part| &part.figure.moments) {
        let Some(thing) = &moment.holds else { continue };
        if !listed.contains(&thing.value.0.as_str()) {
            let way_out = match nearest(thing, &listed) {
                Some(near) => format!("Did you mean “{near}”?"),
                None => format!("Add “{thing}” under “equipment:”, or take it out of the figure."),
            };
            notes.find(thing.place, format!("“{thing}” is held, but not on the list of things."), way_out);
        }
    }
}
