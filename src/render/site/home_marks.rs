//! What a session’s page tells its script of marks: which parts are measured and how, and the words that
//! a family hears. Everything else of entering marks stands in `templates/site/session/home.html`.

use std::collections::BTreeMap;

use serde::Serialize;

use super::Site;
use crate::pack::{Part, Session};
use crate::plan::marks::{Bias, Form, Mark, MarkRule, MarkUnit};
use crate::plan::{MarksPlan, Plans};
use crate::prose::plain_line;
use crate::read::words::Better;
use crate::render::quantities::say_amount;
use crate::words::{Filling, Words};

/// As many tries as a page has fields for.
const MOST_TRIES: u32 = 20;

/// Entering marks and answers at home.
#[derive(Serialize, Clone, Debug)]
pub(super) struct HomeMarks {
    /// The tasks and words, as JSON for an attribute.
    data: String,
    /// There is something to measure in numbers.
    pub(super) has_tasks: bool,
    /// Letters of an answer.
    longest: usize,
}

#[derive(Serialize)]
struct Data {
    id: String,
    title: String,
    tasks: Vec<Task>,
    /// Why a mark or a code is refused; `{mark}` is filled in with a sound one.
    refused: BTreeMap<&'static str, String>,
}

#[derive(Serialize)]
struct Task {
    title: String,
    /// How messages name it, in every language alike: `challenge 1`.
    part: String,
    attempts: u32,
    unit: usize,
    step: u32,
    bias: Bias,
    form: Form,
    /// 1 where more is better, else −1.
    sign: i8,
    /// The decimal mark and what stands after the number, in the language of the page.
    point: String,
    after: String,
    /// A sound mark, as it would be written here.
    such: String,
}

pub(super) fn show_home_marks(site: &Site<'_>, session: &Session, plans: &Plans) -> HomeMarks {
    let words = &site.words;
    let measured = session.parts.iter().zip(&plans.marks);
    let tasks = measured.filter_map(|(part, plan)| Some(show_task(part, plan.as_ref()?, words)));
    let data = Data {
        id: session.id.to_string(),
        title: plain_line(&session.title),
        tasks: tasks.collect(),
        refused: refusals(words),
    };
    HomeMarks {
        has_tasks: !data.tasks.is_empty(),
        data: serde_json::to_string(&data).expect("plain data is JSON"),
        longest: crate::progress::words::LONGEST,
    }
}

fn refusals(words: &Words) -> BTreeMap<&'static str, String> {
    let mark = [("mark", Filling::Text("{mark}"))];
    let marks = ["number", "unit", "doubt", "seconds", "whole", "large"];
    let codes = ["none", "name", "mail", "signs"];
    let all = marks.into_iter().chain(codes);
    all.map(|key| (key, words.say_with(&format!("home-refused-{key}"), &mark))).collect()
}

fn show_task(part: &Part, plan: &MarksPlan, words: &Words) -> Task {
    let measure = part.measure.as_ref();
    let unit = measure.and_then(|measure| measure.unit.as_ref()).map(|unit| plain_line(unit));
    let attempts = measure.and_then(|measure| measure.attempts.as_ref()).map_or(1, |a| a.value);
    let rule = plan.rule;
    Task {
        title: plain_line(&part.title),
        part: format!("{} {}", part.kind.key().replace('_', " "), part.number),
        attempts: attempts.clamp(1, MOST_TRIES),
        unit: rule.unit.at(),
        step: rule.step,
        bias: rule.rounding.bias(),
        form: rule.form(),
        sign: if plan.better == Better::More { 1 } else { -1 },
        point: words.number("."),
        after: after(rule, unit.as_deref(), words),
        such: say_amount(&rule.show(usual_mark(rule)), words),
    }
}

/// What stands after a number on the page: “ cm”, “ см”, “ catches”.
fn after(rule: MarkRule, unit: Option<&str>, words: &Words) -> String {
    if matches!(rule.unit, MarkUnit::Count | MarkUnit::Points) {
        return unit.map_or_else(String::new, |unit| format!("\u{a0}{unit}"));
    }
    let own = rule.form().after;
    let label = format!("amount-{}", own.trim());
    if own.is_empty() || !words.has(&label) {
        return own.to_owned();
    }
    let said = words.say_with(&label, &[("number", Filling::Text("0"))]);
    said.strip_prefix('0').map_or_else(|| own.to_owned(), |unit| unit.replace(' ', "\u{a0}"))
}

/// A mark to show how one is written: 1.45 m, 9.3 s, 1:23.4, 12.
fn usual_mark(rule: MarkRule) -> Mark {
    let thousandths = match rule.unit {
        MarkUnit::Centimetre => 1_450,
        MarkUnit::Metre => 2_050,
        MarkUnit::Second => 9_300,
        MarkUnit::Minute => 83_400,
        MarkUnit::Count | MarkUnit::Points => 12,
    };
    Mark::from_steps(i64::from((thousandths / rule.step.max(1)).max(1)))
}
