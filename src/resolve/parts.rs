//! The parts of a session in the order they are done.

use crate::figure::Figure;
use crate::figure::library::Library;
use crate::pack::{
    Alternative, Fault, FlightSaid, Measure, Part, PartKind, PartLengths, PartSpace, Points,
    PointsFormula, Reference, ThrowRules,
};
use crate::place::{Files, Placed};
use crate::quantity::Decimal;
use crate::read::part_file::{
    AlternativeDoc, FlightDoc, FormulaDoc, MeasureDoc, PartDoc, PartSpaceDoc, PointsDoc,
    ReferenceDoc, ThrowDoc,
};
use crate::read::session_file::SessionDoc;
use crate::read::words::Effort;

use super::pictures::resolve_pictures;

/// The worth of a part that says none: the middle of 1 to 5.
const USUAL_WORTH: u32 = 3;

/// Puts the parts in order and numbers those of each kind. They are taken out of the document.
pub(super) fn resolve_parts(
    (path, files): (&str, &Files),
    doc: &mut SessionDoc,
    moderate_from: Decimal,
    poses: &Library,
) -> Vec<Part> {
    let groups = [
        (PartKind::WarmUp, Vec::from_iter(doc.warm_up.take())),
        (PartKind::Technique, std::mem::take(&mut doc.technique)),
        (PartKind::Challenge, std::mem::take(&mut doc.challenge)),
        (PartKind::Stretch, std::mem::take(&mut doc.stretch)),
        (PartKind::CoolDown, Vec::from_iter(doc.cool_down.take())),
    ];
    let mut parts = Vec::new();
    for (kind, docs) in groups {
        let of = docs.len();
        for (index, mut doc) in docs.into_iter().enumerate() {
            let figure = std::mem::take(&mut doc.figure);
            let mut part = resolve_part((path, files), kind, (index + 1, of), doc, moderate_from);
            part.figure = poses.figure(figure);
            parts.push(part);
        }
    }
    parts
}

fn resolve_part(
    (path, files): (&str, &Files),
    kind: PartKind,
    (number, of): (usize, usize),
    doc: PartDoc,
    moderate_from: Decimal,
) -> Part {
    Part {
        kind,
        number,
        of,
        effort: doc.effort.or(effort_by_compendium(&doc, moderate_from)),
        lengths: resolve_lengths(kind, &doc),
        title: doc.title,
        time: doc.time,
        movements: doc.movements,
        task: doc.task,
        how: doc.how,
        key_points: doc.key_points.into_iter().map(|point| point.map(|own| own.0)).collect(),
        faults: doc.faults.into_iter().map(|f| Fault { see: f.see, say: f.say }).collect(),
        easier: doc.easier,
        harder: doc.harder,
        adult: doc.adult,
        throw: doc.throw.map(|throw| resolve_throw(throw.value)),
        measure: doc.measure.map(|measure| measure.map(resolve_measure)),
        space: doc.space.map(|space| space.map(|doc| resolve_space(&doc))),
        flight: doc.flight.map(|flight| flight.map(resolve_flight)),
        compendium: doc.compendium,
        alternatives: doc.alternatives.into_iter().map(resolve_alternative).collect(),
        pictures: resolve_pictures(path, doc.pictures, files),
        figure: Figure::default(),
    }
}

/// The band of the entry a part is likened to, where the part names no effort of its own.
fn effort_by_compendium(doc: &PartDoc, moderate_from: Decimal) -> Option<Placed<Effort>> {
    let like = doc.compendium.as_ref()?;
    Some(Placed::new(like.value.band(moderate_from), like.place))
}

fn resolve_lengths(kind: PartKind, doc: &PartDoc) -> PartLengths {
    let is_usually_kept = matches!(kind, PartKind::WarmUp | PartKind::CoolDown);
    PartLengths {
        shortest: doc.shortest,
        longest: doc.longest,
        essential: doc.essential.map_or(is_usually_kept, |essential| essential.value),
        worth: doc.worth.unwrap_or(Placed::new(USUAL_WORTH, doc.title.place)),
    }
}

fn resolve_alternative(doc: AlternativeDoc) -> Alternative {
    Alternative {
        suits: doc.r#for,
        how: doc.how,
        space: doc.space.map(|space| space.map(|doc| resolve_space(&doc))),
        needs: doc.needs,
    }
}

fn resolve_throw(doc: ThrowDoc) -> ThrowRules {
    ThrowRules { landing_zone: doc.landing_zone, stop_and_collect: doc.stop_and_collect }
}

fn resolve_measure(doc: MeasureDoc) -> Measure {
    Measure {
        what: doc.what,
        unit: doc.unit,
        step: doc.step,
        attempts: doc.attempts,
        better: doc.better,
        criteria: doc.criteria,
        points: doc.points.map(|points| points.map(resolve_points)),
        reference: doc.reference.map(|reference| resolve_reference(reference.value)),
    }
}

fn resolve_points(doc: PointsDoc) -> Points {
    let formula =
        |doc: FormulaDoc| PointsFormula { a: doc.a.value, b: doc.b.value, c: doc.c.value };
    Points {
        steps: doc.steps.into_iter().map(|step| (step.from, step.points)).collect(),
        formula: doc.formula.map(|written| written.map(formula)),
        source: doc.source,
    }
}

fn resolve_reference(doc: ReferenceDoc) -> Reference {
    Reference { mark: doc.mark, source: doc.source }
}

fn resolve_space(doc: &PartSpaceDoc) -> PartSpace {
    PartSpace {
        kind: doc.kind,
        length: doc.length,
        width: doc.width,
        height: doc.height,
        people: doc.people,
        run_up: doc.run_up,
        stopping: doc.stopping,
        reach: doc.reach,
        margin: doc.margin,
        sector: doc.sector,
    }
}

fn resolve_flight(doc: FlightDoc) -> FlightSaid {
    FlightSaid {
        of: doc.of,
        speed: doc.speed,
        distance: doc.distance,
        rise: doc.rise,
        angle: doc.angle,
        height: doc.height,
    }
}
