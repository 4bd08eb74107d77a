//! Progress → what a page and a sheet show: plain words, figures and drawings, in their order.

use serde::Serialize;

use super::charts::{child_strip, class_chart, class_chart_on_page, small_strip};
use super::class_next::class_next;
use super::model::{ChildTask, Progress, QuestionAnswers, TaskProgress};
use super::noise::{ERRORS, FEWEST};
use super::phrases::Speaker;
use crate::drawing::{Drawing, to_svg};
use crate::prose::{plain_line, plain_words};
use crate::quantity::Date;
use crate::render::phrases::is_right_to_left;
use crate::words::Filling;

/// The whole report.
#[derive(Serialize, Clone, Debug)]
pub struct ReportView {
    pub language: String,
    pub direction: &'static str,
    pub pack: String,
    pub school: Option<String>,
    pub keep_until: String,
    pub fewest: usize,
    pub tasks: Vec<TaskView>,
    pub questions: Vec<QuestionsView>,
    pub silent: Vec<String>,
    pub unread: Vec<UnreadView>,
}

/// One measured part.
#[derive(Serialize, Clone, Debug)]
pub struct TaskView {
    pub anchor: String,
    pub session: String,
    pub part: String,
    pub reference: Option<String>,
    pub children: usize,
    pub figures: Vec<FigureView>,
    pub chart_svg: Option<String>,
    #[serde(skip)]
    pub chart: Option<Drawing>,
    pub is_better_more: bool,
    pub is_ranked: bool,
    pub has_points: bool,
    pub rows: Vec<ChildView>,
    /// A drawing a row.
    #[serde(skip)]
    pub strips: Vec<Drawing>,
    pub missing: Vec<String>,
    pub faults: Vec<FigureView>,
    pub send: Vec<String>,
}

/// A name and its figures.
#[derive(Serialize, Clone, Debug)]
pub struct FigureView {
    pub name: String,
    pub figures: Vec<String>,
}

/// One child in one task.
#[derive(Serialize, Clone, Debug)]
pub struct ChildView {
    pub code: String,
    pub place: Option<usize>,
    pub first: String,
    pub last: String,
    pub best: String,
    pub change: String,
    pub verdict: String,
    pub tries: usize,
    pub points: Option<u32>,
    pub strip_svg: String,
    pub next: String,
    pub comment: String,
}

/// The review questions of one session.
#[derive(Serialize, Clone, Debug)]
pub struct QuestionsView {
    pub session: String,
    pub questions: Vec<QuestionView>,
}

#[derive(Serialize, Clone, Debug)]
pub struct QuestionView {
    pub ask: String,
    pub model_answer: Option<String>,
    pub answered: usize,
    pub is_few: bool,
    pub right: usize,
    pub wrong: usize,
    pub unmarked: usize,
    /// Answers alike, with how many gave them.
    pub given: Vec<FigureView>,
}

#[derive(Serialize, Clone, Debug)]
pub struct UnreadView {
    pub file: String,
    pub row: usize,
    pub column: String,
    pub says: String,
}

/// The slip of one child.
#[derive(Clone, Debug)]
pub struct SlipView {
    pub code: String,
    pub tasks: Vec<SlipTask>,
    /// Questions that the teacher marked as not right yet.
    pub look_again: Vec<String>,
}

#[derive(Clone, Debug)]
pub struct SlipTask {
    pub title: String,
    pub best: Option<String>,
    pub change: Option<String>,
    pub verdict: String,
    pub strip: Drawing,
    pub has_band: bool,
    /// Day, tries, best.
    pub days: Vec<[String; 3]>,
    pub next: String,
}

/// Fills the report.
pub fn show_report(progress: &Progress, speaker: Speaker<'_>, keep_until: Date) -> ReportView {
    let pack = speaker.pack;
    ReportView {
        language: pack.language.to_string(),
        direction: if is_right_to_left(&pack.language) { "rtl" } else { "ltr" },
        pack: plain_line(&pack.title),
        school: pack.school.as_deref().map(plain_line),
        keep_until: keep_until.to_string(),
        fewest: FEWEST,
        tasks: progress.tasks.iter().map(|task| show_task(task, speaker)).collect(),
        questions: show_questions(&progress.questions, speaker),
        silent: progress.silent.clone(),
        unread: progress.unread.iter().map(show_unread).collect(),
    }
}

fn show_unread(unread: &super::entries::Unread) -> UnreadView {
    let column = unread.column.as_ref();
    UnreadView {
        file: unread.file.clone(),
        row: unread.row,
        column: column
            .map_or_else(String::new, |(at, name)| format!("{at} {name}").trim().to_owned()),
        says: unread.says.clone(),
    }
}

fn show_task(task: &TaskProgress, speaker: Speaker<'_>) -> TaskView {
    let mut children: Vec<&ChildTask> = task.children.iter().collect();
    let is_ranked = children.iter().any(|child| child.place.is_some());
    if is_ranked {
        children.sort_by_key(|child| child.place.unwrap_or(usize::MAX));
    }
    let rows: Vec<ChildView> =
        children.iter().map(|child| show_child(task, child, speaker)).collect();
    TaskView {
        anchor: format!("task-{}-{}", task.at.session + 1, task.at.part + 1),
        session: speaker.session_title(task.at.session),
        part: speaker.part_title(task.at.session, task.at.part),
        reference: show_reference(task, speaker),
        children: task.children.len(),
        figures: show_figures(task, speaker),
        chart_svg: class_chart_on_page(task, speaker).map(|chart| to_svg(&chart, "spread")),
        chart: class_chart(task, speaker),
        is_better_more: task.plan.better == crate::read::words::Better::More,
        is_ranked,
        has_points: rows.iter().any(|row| row.points.is_some()),
        rows,
        strips: children.iter().map(|child| small_strip(task, child, speaker)).collect(),
        missing: task.missing.clone(),
        faults: show_faults(task, speaker),
        send: class_next(task, speaker),
    }
}

/// “To compare with: 136 cm (source)”, where the teacher names one with its source.
fn show_reference(task: &TaskProgress, speaker: Speaker<'_>) -> Option<String> {
    let measure = speaker.session(task.at.session).parts[task.at.part].measure.as_ref()?;
    let source = plain_line(measure.reference.as_ref()?.source.as_ref()?);
    let mark = speaker.mark(task, task.plan.reference?);
    Some(speaker.say("marks-reference", &[("mark", &mark), ("source", &source)]))
}

/// The figures of the class: first day and latest day, then the noise.
fn show_figures(task: &TaskProgress, speaker: Speaker<'_>) -> Vec<FigureView> {
    let (words, rule) = (speaker.words, task.plan.rule);
    let Some([first, latest]) = &task.spread else { return Vec::new() };
    let show = |steps: f64| rule.show_between(steps);
    let both = |key: &str, figure: &dyn Fn(&super::model::Spread) -> String| FigureView {
        name: words.say(key),
        figures: vec![figure(first), figure(latest)],
    };
    let one =
        |key: &str, figure: String| FigureView { name: words.say(key), figures: vec![figure] };
    let noise = &task.noise;
    let error = noise.typical_error.map(|error| {
        let pairs = u32::try_from(noise.pairs).unwrap_or(u32::MAX);
        let from = words.say_with("progress-noise-from", &[("pairs", Filling::Count(pairs))]);
        format!("{} ({from})", show(error))
    });
    let mut figures = vec![
        both("progress-median", &|spread| show(spread.quartiles[1])),
        both("progress-quartiles", &|spread| {
            format!("{} – {}", show(spread.quartiles[0]), show(spread.quartiles[2]))
        }),
        both("progress-range", &|spread| format!("{} – {}", show(spread.least), show(spread.most))),
        both("progress-deviation", &|spread| show(spread.deviation)),
        one("progress-noise", error.unwrap_or_else(|| words.say("progress-noise-unknown"))),
    ];
    figures.extend(noise.smallest_worthwhile.map(|own| one("progress-smallest", show(own))));
    figures.extend(noise.typical_error.map(|error| one("progress-wobble", show(ERRORS * error))));
    figures
}

fn show_child(task: &TaskProgress, child: &ChildTask, speaker: Speaker<'_>) -> ChildView {
    let mark = |mark| speaker.mark(task, mark);
    let (first, last) = child.ends().unzip();
    let best = child.best.map(|(best, date)| {
        speaker.say("progress-best-on", &[("mark", &mark(best)), ("date", &date.to_string())])
    });
    let dash = || "–".to_owned();
    ChildView {
        code: child.code.clone(),
        place: child.place,
        first: first.map_or_else(dash, mark),
        last: last.map_or_else(dash, mark),
        best: best.unwrap_or_else(dash),
        change: speaker.change(task, child).unwrap_or_else(dash),
        verdict: speaker.verdict(child),
        tries: child.attempts(),
        points: child.best.and_then(|(best, _)| speaker.points(&task.plan, best)),
        strip_svg: to_svg(&small_strip(task, child, speaker), "strip"),
        next: speaker.next(task, child),
        comment: speaker.comment(task, child),
    }
}

/// Counts of few children are not told.
fn show_faults(task: &TaskProgress, speaker: Speaker<'_>) -> Vec<FigureView> {
    let session = speaker.session(task.at.session);
    let row = |(at, count): &(super::resolve::FaultAt, usize)| FigureView {
        name: plain_line(&at.of(session).see),
        figures: vec![told(*count, speaker)],
    };
    task.faults.iter().map(row).collect()
}

/// “12”, or “fewer than 5”.
pub fn told(count: usize, speaker: Speaker<'_>) -> String {
    if count >= FEWEST {
        return count.to_string();
    }
    let fewest = u32::try_from(FEWEST).unwrap_or(u32::MAX);
    speaker.words.say_with("progress-few", &[("fewest", Filling::Count(fewest))])
}

fn show_questions(all: &[QuestionAnswers], speaker: Speaker<'_>) -> Vec<QuestionsView> {
    let of_session = |chunk: &[QuestionAnswers]| QuestionsView {
        session: speaker.session_title(chunk[0].session),
        questions: chunk.iter().map(|question| show_question(question, speaker)).collect(),
    };
    all.chunk_by(|a, b| a.session == b.session).map(of_session).collect()
}

fn show_question(question: &QuestionAnswers, speaker: Speaker<'_>) -> QuestionView {
    let whole = &speaker.session(question.session).review[question.question];
    let count = |right| question.answers.values().filter(|answer| answer.right == right).count();
    let is_few = question.answers.len() < FEWEST;
    QuestionView {
        ask: plain_words(&whole.ask),
        model_answer: whole.answer.as_ref().map(|answer| plain_words(answer)),
        answered: question.answers.len(),
        is_few,
        right: count(Some(true)),
        wrong: count(Some(false)),
        unmarked: count(None),
        given: if is_few { Vec::new() } else { group_answers(question) },
    }
}

/// Answers alike but for case and marks stand together, the most given first.
fn group_answers(question: &QuestionAnswers) -> Vec<FigureView> {
    let mut groups: std::collections::BTreeMap<String, (String, usize)> =
        std::collections::BTreeMap::new();
    for answer in question.answers.values().filter(|answer| !answer.text.is_empty()) {
        let key = super::resolve::plain_key(&answer.text);
        groups.entry(key).or_insert_with(|| (answer.text.clone(), 0)).1 += 1;
    }
    let mut groups: Vec<(String, usize)> = groups.into_values().collect();
    groups.sort_by(|a, b| b.1.cmp(&a.1).then_with(|| a.0.cmp(&b.0)));
    let view = |(text, count): (String, usize)| FigureView {
        name: text,
        figures: vec![count.to_string()],
    };
    groups.into_iter().map(view).collect()
}

/// The slips of every child that sent something, by code.
pub fn show_slips(progress: &Progress, speaker: Speaker<'_>) -> Vec<SlipView> {
    progress.codes.iter().map(|code| show_slip(code, progress, speaker)).collect()
}

fn show_slip(code: &str, progress: &Progress, speaker: Speaker<'_>) -> SlipView {
    let tasks = progress.tasks.iter().filter_map(|task| {
        let child = task.children.iter().find(|child| child.code == code)?;
        Some(show_slip_task(task, child, speaker))
    });
    let wrong = progress.questions.iter().filter(|question| {
        question.answers.get(code).is_some_and(|answer| answer.right == Some(false))
    });
    let ask = |question: &QuestionAnswers| {
        let session = speaker.session(question.session);
        format!(
            "{} ({})",
            plain_words(&session.review[question.question].ask),
            plain_line(&session.title)
        )
    };
    SlipView { code: code.to_owned(), tasks: tasks.collect(), look_again: wrong.map(ask).collect() }
}

fn show_slip_task(task: &TaskProgress, child: &ChildTask, speaker: Speaker<'_>) -> SlipTask {
    let mark = |mark| speaker.mark(task, mark);
    let best = child.best.map(|(best, date)| {
        let key = if child.is_new_best { "progress-slip-new-best" } else { "progress-slip-best" };
        speaker.say(key, &[("mark", &mark(best)), ("date", &date.in_words())])
    });
    let change = child.ends().zip(speaker.change(task, child)).map(|((first, last), change)| {
        let with = [("first", &*mark(first)), ("last", &*mark(last)), ("change", &change)];
        speaker.say("progress-slip-change", &with)
    });
    let day = |day: &super::model::DayMarks| {
        let best = day.best.map_or_else(|| "–".to_owned(), |best| task.plan.rule.show(best));
        [day.date.to_string(), speaker.tries(task, &day.attempts), best]
    };
    let session = speaker.session_title(task.at.session);
    SlipTask {
        title: format!("{session}: {}", speaker.part_title(task.at.session, task.at.part)),
        best,
        change,
        verdict: speaker.verdict_to_child(child),
        strip: child_strip(task, child, speaker),
        has_band: task.noise.typical_error.is_some(),
        days: child.days.iter().map(day).collect(),
        next: speaker.next(task, child),
    }
}
