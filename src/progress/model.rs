//! Entries → what each child and the class have done: bests, changes, spread, who is missing.
//!
//! Pure. Every change is against a child’s own earlier mark; places are left out unless asked for.

use std::collections::BTreeMap;

use super::entries::{Answer, Day, Entries, TaskAt, Unread};
use super::next_step::{NextStep, plan_next_step};
use super::noise::{FEWEST, Noise, Verdict, judge_gain, plan_noise, steps};
use super::resolve::FaultAt;
use crate::pack::Pack;
use crate::plan::marks::{Attempt, Change, Mark, best_of, plan_change};
use crate::plan::statistics::{places, quantile, standard_deviation};
use crate::plan::{MarksPlan, plan_marks};
use crate::quantity::Date;
use crate::read::words::Better;

/// Everything a report shows.
#[derive(Clone, Debug)]
pub struct Progress {
    pub tasks: Vec<TaskProgress>,
    pub questions: Vec<QuestionAnswers>,
    /// Who sent nothing at all.
    pub silent: Vec<String>,
    /// Every child that sent something.
    pub codes: Vec<String>,
    pub unread: Vec<Unread>,
}

/// One measured part.
#[derive(Clone, Debug)]
pub struct TaskProgress {
    pub at: TaskAt,
    pub plan: MarksPlan,
    pub noise: Noise,
    /// Of the first and of the latest bests; none for fewer than [`FEWEST`] children.
    pub spread: Option<[Spread; 2]>,
    pub children: Vec<ChildTask>,
    /// Who sent nothing for this task.
    pub missing: Vec<String>,
    /// The faults ticked last by each child, with how many ticked them, the most first.
    pub faults: Vec<(FaultAt, usize)>,
}

/// How the marks of a class lie, in steps of the rule.
#[derive(Clone, Debug, PartialEq)]
pub struct Spread {
    pub values: Vec<f64>,
    pub least: f64,
    pub quartiles: [f64; 3],
    pub most: f64,
    pub deviation: f64,
}

/// One child in one task.
#[derive(Clone, Debug)]
pub struct ChildTask {
    pub code: String,
    pub days: Vec<DayMarks>,
    /// The personal best and the day it was first reached.
    pub best: Option<(Mark, Date)>,
    /// Whether the latest day brought the personal best, over an earlier one.
    pub is_new_best: bool,
    pub change: Option<Change>,
    pub verdict: Verdict,
    /// Where places were asked for.
    pub place: Option<usize>,
    pub fault: Option<FaultAt>,
    pub next: NextStep,
}

/// The tries of one day.
#[derive(Clone, Debug)]
pub struct DayMarks {
    pub date: Date,
    pub attempts: Vec<Attempt>,
    pub best: Option<Mark>,
}

/// The answers to one review question.
#[derive(Clone, Debug)]
pub struct QuestionAnswers {
    pub session: usize,
    pub question: usize,
    pub answers: BTreeMap<String, Answer>,
}

impl ChildTask {
    pub fn attempts(&self) -> usize {
        self.days.iter().map(|day| day.attempts.len()).sum()
    }

    /// The bests of the first and of the latest day that had one.
    pub fn ends(&self) -> Option<(Mark, Mark)> {
        let mut bests = self.days.iter().filter_map(|day| day.best);
        let first = bests.next()?;
        Some((first, bests.next_back().unwrap_or(first)))
    }
}

/// Computes the progress of a class.
pub fn plan_progress(pack: &Pack, entries: Entries, is_ranked: bool) -> Progress {
    let tasks = entries.tries.keys().copied().collect::<Vec<_>>();
    let tasks =
        tasks.into_iter().filter_map(|at| plan_task(pack, &entries, at, is_ranked)).collect();
    let sent = |code: &&String| {
        entries.tries.values().any(|children| children.contains_key(*code))
            || entries.answers.values().any(|children| children.contains_key(*code))
            || entries.faults.values().any(|children| children.contains_key(*code))
    };
    let (codes, silent): (Vec<_>, Vec<_>) = entries.codes.iter().partition(|code| sent(code));
    let [codes, silent] = [codes, silent].map(|all| all.into_iter().cloned().collect());
    let questions = entries.answers.into_iter();
    let questions = questions
        .map(|((session, question), answers)| QuestionAnswers { session, question, answers })
        .collect();
    Progress { tasks, questions, silent, codes, unread: entries.unread }
}

fn plan_task(pack: &Pack, entries: &Entries, at: TaskAt, is_ranked: bool) -> Option<TaskProgress> {
    let plan = plan_marks(&pack.sessions[at.session]).swap_remove(at.part)?;
    let tries = entries.tries.get(&at)?;
    let mut children: Vec<ChildTask> =
        tries.iter().map(|(code, days)| child_task(code, days, plan.better)).collect();
    let ends: Vec<(Mark, Mark)> = children.iter().filter_map(ChildTask::ends).collect();
    let latest: Vec<f64> = ends.iter().map(|(_, last)| steps(*last)).collect();
    let first: Vec<f64> = ends.iter().map(|(first, _)| steps(*first)).collect();
    let noise = plan_noise(tries.values().flat_map(BTreeMap::values), &latest);
    let ticked = entries.faults.get(&at.session);
    for child in &mut children {
        let faults = ticked.and_then(|ticked| ticked.get(&child.code));
        child.fault = faults.and_then(|faults| faults.last()).map(|(_, fault)| *fault);
        if let Some(change) = child.change {
            child.verdict = judge_gain(change.gain, &noise);
        }
        child.next = plan_next_step(pack, entries, at, child);
    }
    if is_ranked {
        give_places(&mut children, plan.better);
    }
    Some(TaskProgress {
        spread: spread_of(first).zip(spread_of(latest)).map(|(first, last)| [first, last]),
        missing: entries.codes.iter().filter(|code| !tries.contains_key(*code)).cloned().collect(),
        faults: count_faults(&children),
        at,
        plan,
        noise,
        children,
    })
}

fn child_task(code: &str, days: &BTreeMap<Date, Day>, better: Better) -> ChildTask {
    let days: Vec<DayMarks> =
        days.iter().map(|(date, day)| day_marks(*date, day, better)).collect();
    let all: Vec<Attempt> = days.iter().flat_map(|day| day.attempts.clone()).collect();
    let best = best_of(&all, better);
    let reached = days.iter().find(|day| best.is_some() && day.best == best);
    let best = best.zip(reached.map(|day| day.date));
    let mut child = ChildTask {
        code: code.to_owned(),
        is_new_best: days.len() > 1
            && best.is_some_and(|(_, date)| days.last().is_some_and(|day| day.date == date)),
        days,
        best,
        change: None,
        verdict: Verdict::Once,
        place: None,
        fault: None,
        next: NextStep::Easier,
    };
    let with_mark = child.days.iter().filter(|day| day.best.is_some()).count();
    if with_mark > 1 {
        child.change = child.ends().map(|(first, last)| plan_change(first, last, better));
    }
    child
}

fn day_marks(date: Date, day: &Day, better: Better) -> DayMarks {
    let attempts: Vec<Attempt> = day.values().copied().collect();
    DayMarks { date, best: best_of(&attempts, better), attempts }
}

/// None for fewer than [`FEWEST`] children: a spread of three names them.
fn spread_of(values: Vec<f64>) -> Option<Spread> {
    if values.len() < FEWEST {
        return None;
    }
    let at = |share: f64| quantile(&values, share);
    Some(Spread {
        least: at(0.0)?,
        quartiles: [at(0.25)?, at(0.5)?, at(0.75)?],
        most: at(1.0)?,
        deviation: standard_deviation(&values)?,
        values,
    })
}

/// Places by the personal best alone: children had different numbers of tries.
fn give_places(children: &mut [ChildTask], better: Better) {
    let good = |mark: Mark| if better == Better::More { steps(mark) } else { -steps(mark) };
    let goods: Vec<f64> = children.iter().filter_map(|child| Some(good(child.best?.0))).collect();
    let with_best = children.iter_mut().filter(|child| child.best.is_some());
    for (child, place) in with_best.zip(places(&goods)) {
        child.place = Some(place);
    }
}

fn count_faults(children: &[ChildTask]) -> Vec<(FaultAt, usize)> {
    let mut counts: BTreeMap<FaultAt, usize> = BTreeMap::new();
    for fault in children.iter().filter_map(|child| child.fault) {
        *counts.entry(fault).or_default() += 1;
    }
    let mut counts: Vec<_> = counts.into_iter().collect();
    counts.sort_by(|a, b| b.1.cmp(&a.1).then(a.0.cmp(&b.0)));
    counts
}
