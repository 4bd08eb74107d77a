//! Sentences about a child’s progress, shared by pages, paper and tables.

use super::model::{ChildTask, TaskProgress};
use super::next_step::NextStep;
use crate::pack::{Pack, Session};
use crate::plan::MarksPlan;
use crate::plan::marks::{Attempt, Mark};
use crate::prose::plain_line;
use crate::read::Line;
use crate::render::phrases::hold_together;
use crate::words::{Filling, Words};

/// What sentences are made from.
#[derive(Clone, Copy, Debug)]
pub struct Speaker<'p> {
    pub pack: &'p Pack,
    pub words: &'p Words,
}

impl<'p> Speaker<'p> {
    pub fn session(self, at: usize) -> &'p Session {
        &self.pack.sessions[at]
    }

    pub fn say(self, key: &str, with: &[(&str, &str)]) -> String {
        let with: Vec<(&str, Filling<'_>)> =
            with.iter().map(|(name, text)| (*name, Filling::Text(text))).collect();
        self.words.say_with(key, &with)
    }

    /// “Best of three leaps”
    pub fn part_title(self, session: usize, part: usize) -> String {
        plain_line(&self.session(session).parts[part].title)
    }

    pub fn session_title(self, session: usize) -> String {
        plain_line(&self.session(session).title)
    }

    /// A mark with its unit: counts carry the word of the session, “12 catches”.
    pub fn mark(self, task: &TaskProgress, mark: Mark) -> String {
        let shown = task.plan.rule.show(mark);
        let is_bare = shown.chars().all(|c| c.is_ascii_digit());
        let measure = self.session(task.at.session).parts[task.at.part].measure.as_ref();
        let unit = measure.and_then(|measure| measure.unit.as_ref()).filter(|_| is_bare);
        hold_together(&unit.map_or(shown.clone(), |unit| format!("{shown} {}", plain_line(unit))))
    }

    /// “140 cm, x, 152 cm”
    pub fn tries(self, task: &TaskProgress, attempts: &[Attempt]) -> String {
        let one = |attempt: &Attempt| match attempt {
            Attempt::Valid(mark) => hold_together(&task.plan.rule.show(*mark)),
            Attempt::NoMark => "x".to_owned(),
        };
        attempts.iter().map(one).collect::<Vec<_>>().join(", ")
    }

    /// “+15 cm”
    pub fn change(self, task: &TaskProgress, child: &ChildTask) -> Option<String> {
        child.change.map(|change| hold_together(&change.show(task.plan.rule)))
    }

    /// “more than day-to-day wobble”, in a few words.
    pub fn verdict(self, child: &ChildTask) -> String {
        self.words.say(&format!("progress-short-{}", child.verdict.word()))
    }

    /// The same to the child.
    pub fn verdict_to_child(self, child: &ChildTask) -> String {
        let word = if child.best.is_some() { child.verdict.word() } else { "no-mark" };
        self.words.say(&format!("progress-child-{word}"))
    }

    /// What comes next, in the session’s own words.
    pub fn next(self, task: &TaskProgress, child: &ChildTask) -> String {
        let session = self.session(task.at.session);
        match child.next {
            NextStep::Mend(at) => {
                let fault = at.of(session);
                let [see, say] = [&fault.see, &fault.say].map(|line| bare(line));
                let part = plain_line(&session.parts[at.part].title);
                let mend = self.say("progress-mend", &[("see", &see), ("say", &say)]);
                format!("{mend} {}", self.say("progress-mend-part", &[("part", &part)]))
            }
            NextStep::Further { stretch, onward } => {
                let stretch = stretch.map(|part| {
                    let part = self.part_title(task.at.session, part);
                    self.say("progress-further", &[("part", &part)])
                });
                let onward = onward.map(|session| {
                    self.say("progress-onward", &[("session", &self.session_title(session))])
                });
                let said: Vec<String> = [stretch, onward].into_iter().flatten().collect();
                said.join(" ")
            }
            NextStep::Practise { part, key_point } => {
                let point = key_point.map(|at| bare(&session.parts[part].key_points[at]));
                point.map_or_else(
                    || self.words.say("progress-practise-bare"),
                    |point| self.say("progress-practise", &[("point", &point)]),
                )
            }
            NextStep::Easier => session.parts[task.at.part].easier.as_ref().map_or_else(
                || self.words.say("progress-easier-bare"),
                |easier| self.say("progress-easier", &[("easier", &plain_line(easier))]),
            ),
        }
    }

    /// A comment for a school report, for the teacher to edit.
    pub fn comment(self, task: &TaskProgress, child: &ChildTask) -> String {
        let title = self.part_title(task.at.session, task.at.part);
        let base = [("code", child.code.as_str()), ("task", &title)];
        let said = match (child.ends(), self.change(task, child)) {
            (None, _) => self.say("progress-comment-none", &base),
            (Some((_, last)), None) => {
                let last = self.mark(task, last);
                self.say("progress-comment-once", &[base[0], base[1], ("last", &last)])
            }
            (Some((first, last)), Some(change)) => {
                let [first, last] = [first, last].map(|mark| self.mark(task, mark));
                let verdict = self.verdict(child);
                let more = [
                    ("first", first.as_str()),
                    ("last", &last),
                    ("change", &change),
                    ("verdict", &verdict),
                ];
                self.say("progress-comment-change", &[&base[..], &more[..]].concat())
            }
        };
        let next = self.next(task, child);
        format!("{said} {}", self.say("progress-comment-next", &[("next", &next)]))
    }

    /// Points for a mark, by the session’s table or formula.
    pub fn points(self, plan: &MarksPlan, mark: Mark) -> Option<u32> {
        let by_formula = plan.formula.as_ref().and_then(|formula| formula.points(mark, plan.rule));
        plan.table.as_ref().map(|table| table.points(mark)).or(by_formula)
    }
}

/// A line to stand in quotes of ours: without marks, and with one full stop at its end.
fn bare(line: &Line) -> String {
    let plain = plain_line(line);
    let ends = plain.ends_with(['.', '!', '?', '…']);
    if ends { plain } else { format!("{plain}.") }
}
