//! How the marks of a part are kept: the rule of reading them, points and the reference mark.

use super::marks::{Formula, Kind, Mark, MarkRule, PointsTable, Rounding, Unsorted, read_mark};
use crate::pack::{Measure, Points, Session};
use crate::place::Placed;
use crate::quantity::Unreadable;
use crate::read::Line;
use crate::read::words::{Better, Measured};

/// How the marks of one part are kept.
#[derive(Clone, Debug)]
pub struct MarksPlan {
    pub rule: MarkRule,
    pub better: Better,
    /// The steps of the points table, the easiest first.
    pub steps: Vec<(Mark, u32)>,
    pub table: Option<PointsTable>,
    pub formula: Option<Formula>,
    pub reference: Option<Mark>,
    /// Why a mark that is written can’t be read, or doesn’t follow the one before it.
    pub faults: Vec<Placed<MarkFault>>,
}

/// What is wrong with a written mark.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum MarkFault {
    Unreadable(Unreadable),
    /// The smallest step of a mark can’t be read.
    NoStep,
    /// A step that is not harder, or not worth more, than the one before it.
    Unsorted,
}

/// The marks of each part; `None` where it is not measured, or judged by criteria.
pub fn plan_marks(session: &Session) -> Vec<Option<MarksPlan>> {
    let measures = session.parts.iter().map(|part| part.measure.as_ref());
    measures.map(|measure| measure.and_then(|measure| plan_measure(measure))).collect()
}

fn plan_measure(measure: &Measure) -> Option<MarksPlan> {
    let better = measure.better.as_ref().map_or(usual_better(measure), |better| better.value);
    let mut faults = Vec::new();
    let rule = with_step(in_favour(rule_of(measure)?, better), measure, &mut faults);
    let points = measure.points.as_ref().map(|points| &points.value);
    let steps = points.map(|points| read_steps(points, rule, &mut faults)).unwrap_or_default();
    let reference = measure.reference.as_ref();
    let reference = reference.and_then(|reference| read_noting(&reference.mark, rule, &mut faults));
    let table = table_of(&steps, points, better, &mut faults);
    let formula = points.and_then(|points| points.formula.as_ref());
    Some(MarksPlan {
        formula: formula.and_then(|formula| formula_of(formula, measure.what.value)),
        rule,
        better,
        steps,
        table,
        reference,
        faults,
    })
}

/// The rule of the unit, or of what is measured.
fn rule_of(measure: &Measure) -> Option<MarkRule> {
    let unit = measure.unit.as_ref().map_or("", |unit| unit.value.0.as_str());
    match measure.what.value {
        Measured::Criteria => None,
        Measured::Count => Some(MarkRule::COUNT),
        Measured::Points => Some(MarkRule::POINTS),
        Measured::Distance => Some(MarkRule::of_unit(unit).unwrap_or(MarkRule::DISTANCE_IN_CM)),
        Measured::Time => Some(MarkRule::of_unit(unit).unwrap_or(MarkRule::HAND_TIME_IN_S)),
    }
}

/// A time that had better be long is rounded down, as a distance is: nobody gains by rounding.
fn in_favour(rule: MarkRule, better: Better) -> MarkRule {
    match (rule.rounding, better) {
        (Rounding::Up, Better::More) => MarkRule { rounding: Rounding::Down, ..rule },
        _ => rule,
    }
}

/// The rule with the step that the session sets, if it sets one.
fn with_step(rule: MarkRule, measure: &Measure, faults: &mut Vec<Placed<MarkFault>>) -> MarkRule {
    let Some(written) = &measure.step else { return rule };
    // Read as a mark of the finest rule of its kind: the steps are then its thousandths.
    let finest = MarkRule { step: 1, rounding: Rounding::Refused, ..rule };
    let read = read_mark(written, finest).ok().and_then(|mark| u32::try_from(mark.steps()).ok());
    if let Some(step) = read.filter(|step| *step > 0) {
        return MarkRule { step, ..rule };
    }
    faults.push(Placed::new(MarkFault::NoStep, written.place));
    rule
}

fn usual_better(measure: &Measure) -> Better {
    if measure.what.value == Measured::Time { Better::Less } else { Better::More }
}

fn read_noting(
    written: &Placed<Line>,
    rule: MarkRule,
    faults: &mut Vec<Placed<MarkFault>>,
) -> Option<Mark> {
    match read_mark(written, rule) {
        Ok(mark) => Some(mark),
        Err(fault) => {
            faults.push(Placed::new(MarkFault::Unreadable(fault), written.place));
            None
        }
    }
}

fn read_steps(
    points: &Points,
    rule: MarkRule,
    faults: &mut Vec<Placed<MarkFault>>,
) -> Vec<(Mark, u32)> {
    let steps = points.steps.iter();
    steps
        .filter_map(|(from, points)| Some((read_noting(from, rule, faults)?, points.value)))
        .collect()
}

fn table_of(
    steps: &[(Mark, u32)],
    points: Option<&Points>,
    better: Better,
    faults: &mut Vec<Placed<MarkFault>>,
) -> Option<PointsTable> {
    if steps.is_empty() {
        return None;
    }
    match PointsTable::new(steps.to_vec(), better) {
        Ok(table) => Some(table),
        Err(Unsorted(at)) => {
            if let Some((from, _)) = points.and_then(|points| points.steps.get(at)) {
                faults.push(Placed::new(MarkFault::Unsorted, from.place));
            }
            None
        }
    }
}

/// The formula takes seconds for a time. For a distance its constants tell whether it is one of jumps,
/// in centimetres, or of throws, in metres: no jump is worth nothing at less than a metre’s tens.
fn formula_of(written: &crate::pack::PointsFormula, what: Measured) -> Option<Formula> {
    let (a, b, c) = (written.a.value(), written.b.value(), written.c.value());
    let kind = match what {
        Measured::Time => Kind::Track,
        Measured::Distance if b < LEAST_JUMP => Kind::Throw,
        Measured::Distance => Kind::Jump,
        _ => return None,
    };
    #[allow(
        clippy::cast_possible_truncation,
        reason = "b has nine digits before the point at most"
    )]
    let thousandths = match kind {
        Kind::Jump => (b * 10.0).round() as i64,
        Kind::Track | Kind::Throw => (b * 1000.0).round() as i64,
    };
    Some(Formula { kind, a, b: thousandths, c })
}

/// In the published formulas b is 75 or more for jumps and 8 or less for throws.
const LEAST_JUMP: f64 = 30.0;
