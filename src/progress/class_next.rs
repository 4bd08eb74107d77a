//! What to send the class next: the children’s next steps, counted, the most wanted first.

use std::collections::BTreeMap;

use super::model::TaskProgress;
use super::next_step::NextStep;
use super::phrases::Speaker;
use super::view::told;
use crate::prose::plain_line;

/// One sentence a kind of next step, with why. Who it is for stands in the table child by child.
pub fn class_next(task: &TaskProgress, speaker: Speaker<'_>) -> Vec<String> {
    let mut counts: BTreeMap<Want, usize> = BTreeMap::new();
    for want in task.children.iter().flat_map(|child| wants_of(child.next)) {
        *counts.entry(want).or_default() += 1;
    }
    let mut counts: Vec<(Want, usize)> = counts.into_iter().collect();
    counts.sort_by(|a, b| b.1.cmp(&a.1).then(a.0.cmp(&b.0)));
    counts.into_iter().map(|(want, count)| sentence(want, count, task, speaker)).collect()
}

/// A next step without what differs only from child to child.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Want {
    Mend(super::resolve::FaultAt),
    Stretch(usize),
    Onward(usize),
    Practise,
    Easier,
}

fn wants_of(next: NextStep) -> Vec<Want> {
    match next {
        NextStep::Mend(fault) => vec![Want::Mend(fault)],
        NextStep::Further { stretch, onward } => {
            stretch.map(Want::Stretch).into_iter().chain(onward.map(Want::Onward)).collect()
        }
        NextStep::Practise { .. } => vec![Want::Practise],
        NextStep::Easier => vec![Want::Easier],
    }
}

fn sentence(want: Want, count: usize, task: &TaskProgress, speaker: Speaker<'_>) -> String {
    let count = told(count, speaker);
    let here = task.at.session;
    let with_part = |key: &str, part: usize| {
        speaker.say(key, &[("part", &speaker.part_title(here, part)), ("count", &count)])
    };
    match want {
        Want::Mend(at) => {
            let see = plain_line(&at.of(speaker.session(here)).see);
            let part = speaker.part_title(here, at.part);
            let with = [("part", &*part), ("count", &count), ("see", &see)];
            speaker.say("progress-send-mend", &with)
        }
        Want::Stretch(part) => with_part("progress-send-further", part),
        Want::Onward(session) => {
            let title = speaker.session_title(session);
            speaker.say("progress-send-onward", &[("session", &title), ("count", &count)])
        }
        Want::Practise => with_part("progress-send-practise", task.at.part),
        Want::Easier => with_part("progress-send-easier", task.at.part),
    }
}
