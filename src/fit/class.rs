//! A whole class: every session in every home, what to lend, and what to rethink.

use rayon::prelude::*;

use super::choose::{Choice, plan_choice};
use super::doable::{SessionFacts, Why};
use super::floors::plan_floors;
use super::lend::{Lending, plan_lending};
use super::reasons::{LeftOut, left_out, why_unfit};
use super::relax::{OneThing, plan_one_thing};
use super::stock::Cupboard;
use crate::homes::Home;
use crate::pack::{Pack, Session};
use crate::plan::HomeThings;

/// What every home gets.
#[derive(Debug)]
pub struct ClassPlan {
    /// One a home, in order.
    pub homes: Vec<HomePlan>,
    /// Everything to lend, over all homes.
    pub lend: Vec<HomeThings>,
    pub rethink: Vec<Rethink>,
    pub cupboard: Cupboard,
}

/// What one home gets.
#[derive(Debug)]
pub struct HomePlan {
    /// One a session, in the order they were asked for.
    pub sessions: Vec<SessionPlan>,
    /// What to lend this home, so that all sessions that lending makes possible can be done.
    pub lend: Vec<HomeThings>,
    pub is_least: bool,
}

/// One session in one home.
#[derive(Debug)]
pub enum SessionPlan {
    Fits(FittedHome),
    /// Why what must stay can’t be done, by part, and the one thing that would change it.
    Unfit {
        why: Vec<(usize, Why)>,
        one_thing: Option<OneThing>,
    },
}

/// A session as it is done in a home.
#[derive(Debug)]
pub struct FittedHome {
    pub choice: Choice,
    /// For each kept part its version: 0 as written, then its alternatives in order.
    pub versions: Vec<Option<usize>>,
    pub floors: Vec<Option<usize>>,
    pub left_out: Vec<LeftOut>,
    /// What serves each need.
    pub served: Vec<Vec<HomeThings>>,
}

/// A part that too many homes can’t do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Rethink {
    pub session: usize,
    /// None for the session as a whole.
    pub part: Option<usize>,
    pub homes: usize,
    /// The reason that most of them have.
    pub why: Option<Why>,
}

/// Fits sessions to homes; `on_home` is called for each home that is done.
pub fn plan_class(pack: &Pack, sessions: &[&Session], homes: &[Home]) -> ClassPlan {
    let mut cupboard = Cupboard::default();
    let facts: Vec<SessionFacts<'_>> =
        sessions.iter().map(|session| SessionFacts::of(session, pack, &mut cupboard)).collect();
    // Sessions that share the cupboard know all its things only now.
    let plans: Vec<(HomePlan, Lending)> =
        homes.par_iter().map(|home| plan_home(&facts, home, &cupboard)).collect();
    let (homes, lendings): (Vec<HomePlan>, Vec<Lending>) = plans.into_iter().unzip();
    let lend = lent_in_all(&lendings, &cupboard);
    let rethink = plan_rethinking(&homes, sessions.len());
    ClassPlan { homes, lend, rethink, cupboard }
}

fn plan_home(facts: &[SessionFacts<'_>], home: &Home, cupboard: &Cupboard) -> (HomePlan, Lending) {
    let stock = cupboard.stock_of(home);
    let models: Vec<_> = facts.iter().map(|facts| facts.model(home, stock.clone())).collect();
    let sessions =
        facts.iter().zip(&models).map(|(facts, (model, versions))| match plan_choice(model) {
            Ok(choice) => {
                SessionPlan::Fits(fitted(facts, home, cupboard, (model, versions), choice))
            }
            Err(_) => SessionPlan::Unfit {
                why: why_unfit(facts, home, model),
                one_thing: plan_one_thing(facts, home, cupboard),
            },
        });
    let sessions = sessions.collect();
    let models: Vec<_> = models.into_iter().map(|(model, _)| model).collect();
    let lending = plan_lending(&models, &cupboard.lendable());
    let lend = things_of(&lending.counts, cupboard);
    (HomePlan { sessions, lend, is_least: lending.is_proven }, lending)
}

fn fitted(
    facts: &SessionFacts<'_>,
    home: &Home,
    cupboard: &Cupboard,
    (model, indices): (&super::Model, &[Vec<usize>]),
    choice: Choice,
) -> FittedHome {
    let versions: Vec<Option<usize>> = choice
        .parts
        .iter()
        .zip(indices)
        .map(|(chosen, indices)| chosen.map(|chosen| indices[chosen.version]))
        .collect();
    let fits = |(part, version): (usize, &Option<usize>)| {
        let part = &facts.parts[part];
        facts.floors_for(part, &part.versions[(*version)?], home).ok()
    };
    let fits: Vec<Option<Vec<usize>>> = versions.iter().enumerate().map(fits).collect();
    let served = choice.served.iter().map(|served| {
        served.things.iter().map(|(thing, count)| cupboard.counted(*thing, *count)).collect()
    });
    FittedHome {
        floors: plan_floors(&fits),
        left_out: left_out(facts, home, model, &choice),
        served: served.collect(),
        versions,
        choice,
    }
}

fn things_of(counts: &[u32], cupboard: &Cupboard) -> Vec<HomeThings> {
    let lent = counts.iter().enumerate().filter(|(_, count)| **count > 0);
    lent.map(|(thing, count)| cupboard.counted(thing, *count)).collect()
}

fn lent_in_all(lendings: &[Lending], cupboard: &Cupboard) -> Vec<HomeThings> {
    let count = |thing: usize| lendings.iter().map(|lending| lending.counts[thing]).sum();
    let counts: Vec<u32> = (0..cupboard.names().count()).map(count).collect();
    let mut things = things_of(&counts, cupboard);
    things.sort_by(|a, b| b.count.cmp(&a.count).then(a.name.cmp(&b.name)));
    things
}

/// A quarter of the homes are too many: our own choice.
const TOO_MANY: usize = 4;

fn plan_rethinking(homes: &[HomePlan], sessions: usize) -> Vec<Rethink> {
    let mut rethink = Vec::new();
    for session in 0..sessions {
        let mut reasons: std::collections::BTreeMap<Option<usize>, Vec<Why>> =
            std::collections::BTreeMap::new();
        for home in homes {
            match &home.sessions[session] {
                SessionPlan::Unfit { why, .. } => {
                    let first = why.first().map_or(Why::Time, |(_, why)| why.clone());
                    reasons.entry(None).or_default().push(first);
                }
                SessionPlan::Fits(fitted) => {
                    // Too little time is the home’s, not the part’s.
                    let out = fitted.left_out.iter().filter(|out| out.why != Why::Time);
                    for out in out {
                        reasons.entry(Some(out.part)).or_default().push(out.why.clone());
                    }
                }
            }
        }
        let too_many = reasons.into_iter().filter(|(_, why)| why.len() * TOO_MANY >= homes.len());
        rethink.extend(too_many.map(|(part, why)| Rethink {
            session,
            part,
            homes: why.len(),
            why: most_frequent(why),
        }));
    }
    rethink.sort_by_key(|rethink| std::cmp::Reverse(rethink.homes));
    rethink
}

fn most_frequent(mut reasons: Vec<Why>) -> Option<Why> {
    reasons.sort();
    let count = |why: &Why| reasons.iter().filter(|other| *other == why).count();
    reasons.iter().max_by_key(|why| count(why)).cloned()
}
