use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::figure::Side;
use crate::figure::range::{Beyond, beyond_range};
use crate::figure::trade::{name_of, word_for};

pub const RULE: Rule = Rule {
    code: "figure-range",
    severity: Severity::Warning,
    asks: "No joint of a figure goes further than joints do.",
    why: "A child may try to copy it, and a joint that is forced past its range is hurt.",
    source: "Normal ranges of motion of the American Academy of Orthopaedic Surgeons (1965), as in Norkin and White",
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
    figure: {pose: stand side-on, left_arm: back 90}
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
    figure: {pose: stand side-on, left_arm: back 45}
",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    for moment in session.parts.iter().flat_map(|part| &part.figure.moments) {
        let beyond = beyond_range(&moment.pose.angles);
        for each in beyond.iter().filter(|each| !is_said(each, &beyond)) {
            let (joint, motion) = each.turn;
            let way = word_for(joint, motion, each.degrees);
            notes.find(
                moment.place,
                format!(
                    "The {} is {way} {:.0}°, further than it usually goes.",
                    name_of(joint),
                    each.degrees.abs()
                ),
                format!("Write {:.0}° at most.", each.most.abs()),
            );
        }
    }
}

/// What both sides do alike is written once (“knees: bent 200”) and said once, of the left.
fn is_said(beyond: &Beyond, all: &[Beyond]) -> bool {
    let (joint, motion) = beyond.turn;
    let is_other = |other: &Beyond| {
        other.turn == (joint.mirrored(), motion)
            && other.degrees.to_bits() == beyond.degrees.to_bits()
    };
    joint.side() == Some(Side::Right) && all.iter().any(is_other)
}
