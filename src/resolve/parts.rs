//! The parts of a session in the order they are done.

use crate::pack::{Fault, Measure, Part, PartKind, ThrowRules};
use crate::read::session_file::{MeasureDoc, PartDoc};

use super::pictures::resolve_pictures;

/// Puts the parts in order and numbers those of each kind.
pub(super) fn resolve_parts(
    path: &str,
    warm_up: Option<PartDoc>,
    technique: Vec<PartDoc>,
    challenge: Vec<PartDoc>,
    stretch: Vec<PartDoc>,
    cool_down: Option<PartDoc>,
) -> Vec<Part> {
    let groups = [
        (PartKind::WarmUp, Vec::from_iter(warm_up)),
        (PartKind::Technique, technique),
        (PartKind::Challenge, challenge),
        (PartKind::Stretch, stretch),
        (PartKind::CoolDown, Vec::from_iter(cool_down)),
    ];
    let mut parts = Vec::new();
    for (kind, docs) in groups {
        let of = docs.len();
        for (index, doc) in docs.into_iter().enumerate() {
            parts.push(resolve_part(path, kind, (index + 1, of), doc));
        }
    }
    parts
}

fn resolve_part(path: &str, kind: PartKind, (number, of): (usize, usize), doc: PartDoc) -> Part {
    Part {
        kind,
        number,
        of,
        title: doc.title,
        time: doc.time,
        effort: doc.effort,
        movements: doc.movements,
        task: doc.task,
        how: doc.how,
        key_points: doc.key_points,
        faults: doc.faults.into_iter().map(|f| Fault { see: f.see, say: f.say }).collect(),
        easier: doc.easier,
        harder: doc.harder,
        adult: doc.adult,
        throw: doc.throw.map(|throw| ThrowRules {
            landing_zone: throw.value.landing_zone,
            stop_and_collect: throw.value.stop_and_collect,
        }),
        measure: doc.measure.map(|measure| measure.map(resolve_measure)),
        pictures: resolve_pictures(path, doc.pictures),
    }
}

fn resolve_measure(doc: MeasureDoc) -> Measure {
    Measure {
        what: doc.what,
        unit: doc.unit,
        attempts: doc.attempts,
        better: doc.better,
        criteria: doc.criteria,
    }
}
