//! The best choice for one session in one home: branch and bound over the parts.

use std::cmp::Reverse;

use super::model::Model;
use crate::plan::assign::{Assignment, Served, Want, plan_assignment};
use crate::plan::slot_fit::{PartOffer, SlotFit, plan_slot_fit};
use crate::quantity::Duration;

/// Far more than ten parts need; a hostile session ends within some seconds.
const MOST_NODES: u32 = 50_000;

/// What becomes of a part that is kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Chosen {
    /// The index of the version among those that can be done.
    pub version: usize,
    pub length: Duration,
}

/// The best choice.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Choice {
    /// One a part, in order; none where it is left out.
    pub parts: Vec<Option<Chosen>>,
    /// One a want, in order; nothing where it is not used.
    pub served: Vec<Served>,
    /// The sum of worth × seconds.
    pub worth: u64,
    /// How many parts are done in another version than as written.
    pub changes: u32,
    pub missing_optional: u64,
    pub unsuitability: u64,
    /// Whether it is certain that nothing is better.
    pub is_proven: bool,
}

impl Choice {
    /// How many parts are kept.
    pub fn kept(&self) -> usize {
        self.parts.iter().flatten().count()
    }

    pub fn total(&self) -> Duration {
        self.parts.iter().flatten().map(|chosen| chosen.length).sum()
    }
}

/// Nothing keeps to the rules.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Unfit;

/// What is best, larger is better: worth, parts, changes, optional things missing, unsuitability.
type Score = (u64, usize, Reverse<u32>, Reverse<u64>, Reverse<u64>);

#[derive(Clone, Copy, PartialEq, Eq)]
enum Decision {
    Open,
    Out,
    In(usize),
}

/// Chooses the best that can be done.
///
/// # Errors
/// Where no choice keeps to the rules, or none was found within the steps there are.
pub fn plan_choice(model: &Model) -> Result<Choice, Unfit> {
    let start = |part: &super::PartModel| {
        if part.versions.is_empty() { Decision::Out } else { Decision::Open }
    };
    let is_barred = |part: &super::PartModel| part.versions.is_empty() && part.offer.essential;
    if model.parts.iter().any(is_barred) {
        return Err(Unfit);
    }
    let mut search = Search { model, best: None, nodes: 0 };
    search.look_at(&model.parts.iter().map(start).collect::<Vec<_>>());
    let is_proven = search.nodes < MOST_NODES;
    let (_, choice) = search.best.ok_or(Unfit)?;
    Ok(Choice { is_proven, ..choice })
}

/// Whether anything keeps to the rules.
pub(super) fn fits(model: &Model) -> bool {
    plan_choice(model).is_ok()
}

struct Search<'m> {
    model: &'m Model,
    best: Option<(Score, Choice)>,
    nodes: u32,
}

impl Search<'_> {
    /// Looks at everything below a node.
    fn look_at(&mut self, node: &[Decision]) {
        self.nodes += 1;
        let Some(bound) = self.bound(node) else { return };
        let is_beaten = self.best.as_ref().is_some_and(|(score, _)| bound.score <= *score);
        if is_beaten || self.nodes >= MOST_NODES {
            return;
        }
        match node.iter().position(|decision| *decision == Decision::Open) {
            None => self.best = Some((bound.score, bound.into_choice(self.model, node))),
            Some(part) => self.branch(node, part, &bound),
        }
    }

    /// What the slot alone would do with a part is looked at first.
    fn branch(&mut self, node: &[Decision], part: usize, bound: &Bound) {
        let versions = (0..self.model.parts[part].versions.len()).map(Decision::In);
        let out = (!self.model.parts[part].offer.essential).then_some(Decision::Out);
        let is_kept = bound.lengths[part].is_some();
        let (first, last) = if is_kept { (None, out) } else { (out, None) };
        for decision in first.into_iter().chain(versions).chain(last) {
            let mut below = node.to_vec();
            below[part] = decision;
            self.look_at(&below);
        }
    }

    /// The best that anything below a node can be; exact where all is decided. None where nothing can be.
    fn bound(&self, node: &[Decision]) -> Option<Bound> {
        let is_main = |(part, decision): (usize, &Decision)| {
            self.model.parts[part].is_main && *decision != Decision::Out
        };
        node.iter().enumerate().any(is_main).then_some(())?;
        let (fit, lengths) = self.fill_slot(node)?;
        let kept: Vec<Option<usize>> = node.iter().map(|decision| version_of(*decision)).collect();
        let (asked, wants) = self.model.wants_of(&kept);
        let assignment = plan_assignment(&wants, &self.model.stock);
        (assignment.missing_needed(&wants) == 0).then_some(())?;
        let change = |(part, version): (usize, Option<usize>)| {
            Some(self.model.parts[part].versions[version?].change)
        };
        let changes = kept.iter().copied().enumerate().filter_map(change).sum();
        let score = (
            fit.worth,
            lengths.iter().flatten().count(),
            Reverse(changes),
            Reverse(assignment.missing_optional(&wants)),
            Reverse(assignment.unsuitability),
        );
        Some(Bound { score, lengths, asked, wants, assignment })
    }

    fn fill_slot(&self, node: &[Decision]) -> Option<(SlotFit, Vec<Option<Duration>>)> {
        let is_in = |decision: &Decision| matches!(decision, Decision::In(_));
        let open: Vec<usize> =
            (0..node.len()).filter(|part| node[*part] != Decision::Out).collect();
        let offer = |part: &usize| {
            let offer = self.model.parts[*part].offer;
            PartOffer { essential: offer.essential || is_in(&node[*part]), ..offer }
        };
        let offers: Vec<PartOffer> = open.iter().map(offer).collect();
        let fit = plan_slot_fit(&offers, self.model.slot).ok()?;
        let mut lengths = vec![None; node.len()];
        for (part, length) in open.iter().zip(&fit.choices) {
            lengths[*part] = *length;
        }
        Some((fit, lengths))
    }
}

const fn version_of(decision: Decision) -> Option<usize> {
    match decision {
        Decision::In(version) => Some(version),
        Decision::Open | Decision::Out => None,
    }
}

struct Bound {
    score: Score,
    lengths: Vec<Option<Duration>>,
    asked: Vec<usize>,
    wants: Vec<Want>,
    assignment: Assignment,
}

impl Bound {
    fn into_choice(self, model: &Model, node: &[Decision]) -> Choice {
        let chosen = |(decision, length): (&Decision, &Option<Duration>)| {
            Some(Chosen { version: version_of(*decision)?, length: (*length)? })
        };
        let mut served = vec![Served::default(); model.wants.len()];
        let (changes, missing_optional) =
            (self.score.2.0, self.assignment.missing_optional(&self.wants));
        for (want, things) in self.asked.iter().zip(self.assignment.served) {
            served[*want] = things;
        }
        Choice {
            parts: node.iter().zip(&self.lengths).map(chosen).collect(),
            served,
            worth: self.score.0,
            changes,
            missing_optional,
            unsuitability: self.assignment.unsuitability,
            is_proven: self.assignment.is_proven,
        }
    }
}
