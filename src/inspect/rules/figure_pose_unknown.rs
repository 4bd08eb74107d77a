use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::nearest;

pub const RULE: Rule = Rule {
    code: "figure-pose-unknown",
    severity: Severity::Problem,
    asks: "A figure names poses that there are.",
    why: "A misspelt pose would be drawn as a child who just stands there.",
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
    figure: hop landign
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
    figure: hop landing
",
    check: Check::SessionInPack(check),
};

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    let moments = session.parts.iter().flat_map(|part| &part.figure.moments);
    for name in moments.flat_map(|moment| &moment.unknown) {
        let known = pack.poses.names();
        let way_out = match nearest(name, &known) {
            Some(near) => format!("Did you mean “{near}”?"),
            None => "The page “Poses” for teachers shows them all. A pose of your own goes into poses.yaml, or is \
                     said by its angles: knees: bent 60."
                .into(),
        };
        notes.find(name.place, format!("There is no pose “{name}”."), way_out);
    }
}
