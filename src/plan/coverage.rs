//! Coverage: which sessions meet which statements of the curriculum, for which year groups; where there are
//! gaps, and what is met far more often than the rest.
//!
//! A session counts for a year group, or a statement asks for it, where all ages of the group are among its own.

use std::collections::BTreeSet;

use crate::pack::{Curriculum, Pack, Session, YearGroup};
use crate::quantity::Ages;

/// A statement is met often by so many sessions at least, and by more than twice the average: our own choice.
pub const OFTEN: usize = 4;

/// The coverage of a curriculum by the sessions that are offered.
#[derive(Clone, Debug)]
pub struct CoveragePlan {
    /// Places in `pack.sessions`.
    pub sessions: Vec<usize>,
    pub groups: Vec<YearGroup>,
    /// In the order of their codes.
    pub statements: Vec<StatementCoverage>,
}

/// The coverage of one statement.
#[derive(Clone, Debug)]
pub struct StatementCoverage {
    pub code: String,
    /// Places in `pack.sessions` of those that meet it.
    pub sessions: Vec<usize>,
    /// For each year group: how many sessions meet it there; `None` where it is not for them.
    pub by_group: Vec<Option<usize>>,
    pub is_often: bool,
}

impl StatementCoverage {
    /// No session meets it, or none for some year group that it is for.
    pub fn has_gap(&self) -> bool {
        self.sessions.is_empty() || self.by_group.contains(&Some(0))
    }
}

/// The matrix of a pack that has a curriculum list.
pub fn plan_coverage(pack: &Pack) -> Option<CoveragePlan> {
    let curriculum = pack.curriculum.as_ref()?;
    let sessions: Vec<usize> =
        (0..pack.sessions.len()).filter(|at| !pack.sessions[*at].is_retired()).collect();
    let groups = groups_of(curriculum, sessions.iter().map(|at| &*pack.sessions[*at]));
    let of = |code: &String, ages: Option<Ages>| {
        let meets = |at: &usize| pack.sessions[*at].curriculum.iter().any(|c| c.value.0 == *code);
        let meeting: Vec<usize> = sessions.iter().copied().filter(meets).collect();
        let by_group = groups.iter().map(|group| {
            let is_for = ages.is_none_or(|ages| holds(ages, group.ages));
            let of_group = |at: &&usize| holds(pack.sessions[**at].ages.value, group.ages);
            is_for.then(|| meeting.iter().filter(of_group).count())
        });
        let by_group = by_group.collect();
        StatementCoverage { code: code.clone(), sessions: meeting, by_group, is_often: false }
    };
    let mut statements: Vec<StatementCoverage> =
        curriculum.statements.iter().map(|(code, said)| of(code, said.ages)).collect();
    mark_often(&mut statements);
    Some(CoveragePlan { sessions, groups, statements })
}

fn mark_often(statements: &mut [StatementCoverage]) {
    let all: usize = statements.iter().map(|statement| statement.sessions.len()).sum();
    let count = statements.len();
    for statement in statements {
        let met = statement.sessions.len();
        statement.is_often = met >= OFTEN && met * count > 2 * all;
    }
}

/// The school’s year groups; else each year of age that a session or a statement is for.
fn groups_of<'p>(
    curriculum: &Curriculum,
    sessions: impl Iterator<Item = &'p Session>,
) -> Vec<YearGroup> {
    if !curriculum.year_groups.is_empty() {
        return curriculum.year_groups.clone();
    }
    let stated = curriculum.statements.values().filter_map(|statement| statement.ages);
    let spans = sessions.map(|session| session.ages.value).chain(stated);
    let years: BTreeSet<u8> = spans.flat_map(|ages| ages.youngest..=ages.oldest).collect();
    let group = |year: u8| YearGroup {
        name: year.to_string(),
        ages: Ages { youngest: year, oldest: year },
    };
    years.into_iter().map(group).collect()
}

/// Whether all ages of `inner` are among those of `ages`.
pub(super) fn holds(ages: Ages, inner: Ages) -> bool {
    ages.youngest <= inner.youngest && inner.oldest <= ages.oldest
}
