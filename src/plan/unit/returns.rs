//! Review questions that come back at growing intervals (spaced retrieval).
//!
//! The algorithm, in whole days of the calendar:
//!
//! 1. On the day of its session a question is asked there. It is then due again `after_days` later.
//! 2. A question that is due comes back on the first day of the unit from then on that has room: at most
//!    `a_day` come back on one day. Where more are due, those due earliest come first; of these those that have
//!    come back least often; of these those met first.
//! 3. When a question has come back for the n-th time it is due again `after_days` · `growth`ⁿ later, counted from
//!    the day it came back: 3, 6, 12, 24 … days for the usual figures.
//! 4. On a day of its own session a question is asked there and does not come back besides. Where a session is
//!    done again, that counts as coming back.
//!
//! Sources: recall that is spread out lasts longer than recall in one go (Cepeda, Pashler, Vul, Wixted and
//! Rohrer 2006, Psychological Bulletin 132, 354–380: a review of 317 experiments); the longer something is to be
//! kept, the longer the best gap (Cepeda, Vul, Rohrer, Wixted and Pashler 2008, Psychological Science 19,
//! 1095–1102); over weeks, growing gaps bring as much in the end as equal ones, and children know more all the
//! while (Kang, Lindsey, Mozer and Pashler 2014, Psychonomic Bulletin & Review, doi 10.3758/s13423-014-0636-z);
//! growing gaps were first shown by Landauer and Bjork (1978). Volumes, pages and years but the last are from memory.
//! The figures 3 days, twice as long each time and 3 questions a day are our own choice, after common practice
//! with boxes of cards (Leitner 1972).

use std::collections::BTreeMap;

use crate::pack::BringBack;

/// A session on its day, with the numbers of its questions.
#[derive(Clone, Debug)]
pub struct Meeting {
    /// Counted in days from any one day on; meetings stand in the order of time.
    pub day: i32,
    pub questions: Vec<usize>,
}

/// A question that comes back.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Return {
    pub question: usize,
    /// For the how-manieth time, from 1.
    pub time: u32,
}

/// What is known of a question that was met.
#[derive(Clone, Copy, Debug)]
struct Met {
    due: i32,
    returns: u32,
    /// When it was met, counted in questions.
    order: usize,
}

/// No wait is longer: ten years.
const LONGEST: u64 = 3650;

/// The questions that come back at each meeting; of several on one day, at the first.
pub fn plan_returns(meetings: &[Meeting], spacing: BringBack) -> Vec<Vec<Return>> {
    let mut known: BTreeMap<usize, Met> = BTreeMap::new();
    let mut planned = vec![Vec::new(); meetings.len()];
    let mut at = 0;
    while let Some(first) = meetings.get(at) {
        let on_day = meetings[at..].iter().take_while(|other| other.day == first.day).count();
        let own: Vec<usize> =
            meetings[at..at + on_day].iter().flat_map(|m| m.questions.iter().copied()).collect();
        planned[at] = bring_back(&mut known, first.day, &own, spacing);
        for question in own {
            meet(&mut known, question, first.day, spacing);
        }
        at += on_day;
    }
    planned
}

fn bring_back(
    known: &mut BTreeMap<usize, Met>,
    day: i32,
    own: &[usize],
    spacing: BringBack,
) -> Vec<Return> {
    let is_due = |(question, met): &(&usize, &Met)| met.due <= day && !own.contains(question);
    let mut due: Vec<(i32, u32, usize, usize)> = known
        .iter()
        .filter(is_due)
        .map(|(question, met)| (met.due, met.returns, met.order, *question))
        .collect();
    due.sort_unstable();
    let most = usize::try_from(spacing.a_day).unwrap_or(usize::MAX);
    let taken = due
        .into_iter()
        .take(most)
        .map(|(_, returns, _, question)| Return { question, time: returns + 1 });
    let taken: Vec<Return> = taken.collect();
    for back in &taken {
        ask_again(known, back.question, day, spacing);
    }
    taken
}

/// A question is asked by its own session.
fn meet(known: &mut BTreeMap<usize, Met>, question: usize, day: i32, spacing: BringBack) {
    let order = known.len();
    let is_new = !known.contains_key(&question);
    if is_new {
        known.insert(question, Met { due: day + wait(spacing, 0), returns: 0, order });
        return;
    }
    ask_again(known, question, day, spacing);
}

fn ask_again(known: &mut BTreeMap<usize, Met>, question: usize, day: i32, spacing: BringBack) {
    if let Some(met) = known.get_mut(&question) {
        met.returns += 1;
        met.due = day + wait(spacing, met.returns);
    }
}

/// Days until a question is due that has come back so often.
fn wait(spacing: BringBack, returns: u32) -> i32 {
    let factor = u64::from(spacing.growth).saturating_pow(returns);
    let days = u64::from(spacing.after_days).saturating_mul(factor).min(LONGEST);
    i32::try_from(days).unwrap_or(i32::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Reckoned by hand: Mondays and Thursdays, a session with one question on each, at most two a day.
    /// 0 is due on day 3, comes back, due 3 + 6 = 9; on day 10 again, due 10 + 12 = 22, after the end.
    /// 1 is due on day 6, comes back on 7, due 13; on day 14 it stands behind 3, due on day 13 too but never back.
    /// 2 is due on day 10, comes back, due 16, comes back on day 17. 3 is due on day 13, comes back on 14.
    /// 4 is due on day 17 and comes back behind 2, which was due earlier.
    #[test]
    fn the_worked_example() {
        let meetings: Vec<Meeting> = [0, 3, 7, 10, 14, 17]
            .into_iter()
            .zip(0..)
            .map(|(day, question)| Meeting { day, questions: vec![question] })
            .collect();
        let spacing = BringBack { after_days: 3, growth: 2, a_day: 2 };
        let planned = plan_returns(&meetings, spacing);
        let shown: Vec<Vec<(usize, u32)>> =
            planned.iter().map(|day| day.iter().map(|b| (b.question, b.time)).collect()).collect();
        let by_hand: [&[(usize, u32)]; 6] =
            [&[], &[(0, 1)], &[(1, 1)], &[(0, 2), (2, 1)], &[(3, 1), (1, 2)], &[(2, 2), (4, 1)]];
        assert_eq!(shown, by_hand);
    }

    #[test]
    fn a_session_done_again_asks_its_own_questions() {
        let meetings = [0, 4].map(|day| Meeting { day, questions: vec![7] });
        assert!(plan_returns(&meetings, BringBack::default()).iter().all(Vec::is_empty));
    }
}
