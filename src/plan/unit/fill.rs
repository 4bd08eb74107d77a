//! Which sessions of the library are added to a unit so that it covers what `cover:` asks for.

use std::collections::BTreeSet;

use super::cover::{Candidate, MOST_STATEMENTS, plan_cover};
use crate::pack::{Pack, Session, Unit};
use crate::plan::coverage::holds;
use crate::read::words::State;

/// How what is asked for is covered. Statements are the codes of the curriculum.
#[derive(Clone, Debug)]
pub struct CoverPlan {
    /// Codes that are asked for and in the list, each once, in the order of the unit’s file.
    pub asked: Vec<String>,
    /// Those that a session named in the unit meets.
    pub met: Vec<String>,
    /// The sessions that are added, in the order of their addresses.
    pub picked: Vec<Picked>,
    /// Those that no session of the library meets for these ages.
    pub out_of_reach: Vec<String>,
    /// Those that a session of the library meets, though there is no room for it.
    pub no_room: Vec<String>,
    /// The most sessions that could be added.
    pub at_most: usize,
    /// No fewer sessions cover as much.
    pub is_best: bool,
}

/// A session that is added.
#[derive(Clone, Debug)]
pub struct Picked {
    /// The place in `pack.sessions`.
    pub session: usize,
    /// What it is added for.
    pub covers: Vec<String>,
}

/// Chooses sessions for what the named ones (places in `pack.sessions`) leave open. Only sessions that are
/// offered, are no draft and suit all ages of the unit are chosen.
pub fn plan_fill(unit: &Unit, pack: &Pack, named: &[usize], room: usize) -> Option<CoverPlan> {
    let wish = unit.cover.as_ref()?;
    let asked = asked_codes(unit, pack);
    let met_by = |session: &Session| {
        let meets = |code: &String| session.curriculum.iter().any(|c| c.value.0 == *code);
        asked
            .iter()
            .enumerate()
            .filter(|(_, code)| meets(code))
            .fold(0, |all, (at, _)| all | 1 << at)
    };
    let met = named.iter().fold(0_u128, |all, at| all | met_by(&pack.sessions[*at]));
    let whole = asked.iter().enumerate().fold(0_u128, |all, (at, _)| all | 1 << at);
    let library: Vec<usize> = (0..pack.sessions.len())
        .filter(|at| !named.contains(at) && is_suited(&pack.sessions[*at], unit))
        .collect();
    let candidates: Vec<Candidate> = library
        .iter()
        .map(|at| &pack.sessions[*at])
        .map(|session| Candidate { covers: met_by(session), seconds: session.slot.seconds() })
        .collect();
    let at_most = wish.at_most.map_or(room, |most| room.min(most as usize));
    let choice = plan_cover(whole & !met, &candidates, at_most);
    let reachable = candidates.iter().fold(met, |all, candidate| all | candidate.covers);
    let codes = |set: u128| {
        let inside = asked.iter().enumerate().filter(|(at, _)| set & (1 << at) != 0);
        inside.map(|(_, code)| code.clone()).collect::<Vec<_>>()
    };
    let picked = choice
        .chosen
        .iter()
        .map(|at| Picked { session: library[*at], covers: codes(candidates[*at].covers & !met) });
    Some(CoverPlan {
        met: codes(met & whole),
        picked: picked.collect(),
        out_of_reach: codes(whole & !reachable),
        no_room: codes(whole & reachable & !met & !choice.covered),
        at_most,
        is_best: choice.is_best,
        asked,
    })
}

/// Codes of the list, each once.
fn asked_codes(unit: &Unit, pack: &Pack) -> Vec<String> {
    let statements = pack.curriculum.as_ref().map(|curriculum| &curriculum.statements);
    let known = |code: &&str| statements.is_some_and(|known| known.contains_key(*code));
    let named = unit.cover.iter().flat_map(|cover| &cover.statements).map(|code| &*code.value.0);
    let mut seen = BTreeSet::new();
    named
        .filter(known)
        .filter(|code| seen.insert(*code))
        .take(MOST_STATEMENTS)
        .map(str::to_owned)
        .collect()
}

fn is_suited(session: &Session, unit: &Unit) -> bool {
    let is_draft = session.standing.as_ref().is_some_and(|s| s.state.value == State::Draft);
    let suits = unit.ages.as_ref().is_none_or(|ages| holds(session.ages.value, ages.value));
    !session.is_retired() && !is_draft && suits
}
