//! What to send a child next, and why: from the change and the common fault that was ticked.
//!
//! A fault that was ticked comes first; then a gain beyond noise leads to the stretch task and onwards
//! to another session; else the same is practised with one key point, and no mark at all makes it
//! easier. The words are the session’s own.

use super::entries::{Entries, TaskAt};
use super::model::ChildTask;
use super::noise::Verdict;
use super::resolve::FaultAt;
use crate::pack::{Pack, PartKind, Session};

/// The next step.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NextStep {
    /// The part in which the fault is put right.
    Mend(FaultAt),
    /// The stretch task, and a session to go on with.
    Further { stretch: Option<usize>, onward: Option<usize> },
    /// The same again, with one key point of a part.
    Practise { part: usize, key_point: Option<usize> },
    /// The task made easier: there is no mark yet.
    Easier,
}

/// Plans the next step of a child in a task.
pub fn plan_next_step(pack: &Pack, entries: &Entries, at: TaskAt, child: &ChildTask) -> NextStep {
    let session = &pack.sessions[at.session];
    if let Some(fault) = child.fault {
        return NextStep::Mend(fault);
    }
    if child.best.is_none() {
        return NextStep::Easier;
    }
    if child.verdict == Verdict::Better {
        return NextStep::Further {
            stretch: session.parts.iter().position(|part| part.kind == PartKind::Stretch),
            onward: onward(pack, entries, at.session, &child.code),
        };
    }
    let part = practised_part(session, at.part);
    let key_point = (!session.parts[part].key_points.is_empty()).then_some(0);
    NextStep::Practise { part, key_point }
}

/// The task itself where it has key points, else the technique that was practised last before it.
fn practised_part(session: &Session, task: usize) -> usize {
    let has_points = |part: &usize| !session.parts[*part].key_points.is_empty();
    (0..=task).rev().find(has_points).unwrap_or(task)
}

/// The next session of the same activity for the same ages that the child sent nothing of.
fn onward(pack: &Pack, entries: &Entries, from: usize, code: &str) -> Option<usize> {
    let here = &pack.sessions[from];
    let is_done = |session: usize| {
        let mut tries = entries.tries.iter().filter(|(task, _)| task.session == session);
        tries.any(|(_, children)| children.contains_key(code))
            || entries.faults.get(&session).is_some_and(|children| children.contains_key(code))
    };
    let fits = |other: &Session| {
        other.activity.value == here.activity.value
            && !other.is_retired()
            && other.ages.youngest <= here.ages.oldest
            && here.ages.youngest <= other.ages.oldest
    };
    let count = pack.sessions.len();
    (1..count)
        .map(|step| (from + step) % count)
        .find(|at| fits(&pack.sessions[*at]) && !is_done(*at))
}
