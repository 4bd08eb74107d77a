//! Answers a check’s questions about marks.
//!
//! In: `{"ask": "marks", "what": …, "rule": "cm"}` with texts or whole steps of the rule; null in a
//! list of attempts is one without a mark. Out: what was read or reckoned; null where there is
//! none, `{"refused": …, "way_out": …}` where a text can’t be read.

use homeground::plan::marks::{
    Attempt, MEN, Mark, MarkRule, PointsTable, Rounding, WOMEN, best_of, plan_change,
    plan_personal_best, plan_places, plan_share, read_attempt, read_mark, read_returned,
};
use homeground::quantity::Unreadable;
use homeground::read::words::Better;
use serde_json::{Value, json};

pub fn answer(question: &Value) -> Value {
    let better = if question["better"] == "less" { Better::Less } else { Better::More };
    let rule = read_rule(&question["rule"]);
    let text = question["text"].as_str().unwrap_or_default();
    match question["what"].as_str().unwrap_or_default() {
        "read" => {
            read_mark(text, rule).map_or_else(|fault| refused(&fault), |mark| read(mark, rule))
        }
        "attempt" => read_attempt(text, rule)
            .map_or_else(|fault| refused(&fault), |attempt| steps(attempt.mark())),
        "returned" => returned(text, rule),
        // What the data block of a page says of a task.
        "task" => json!({
            "unit": rule.unit.at(), "step": rule.step, "bias": rule.rounding.bias(), "form": rule.form(),
            "sign": if better == Better::More { 1 } else { -1 },
        }),
        "show" => rule.show(mark(&question["mark"])).into(),
        "best" => steps(best_of(&attempts(&question["attempts"]), better)),
        "places" => json!(plan_places(&series(&question["competitors"]), better)),
        "points" => points(question, rule),
        "table" => table(question, better),
        "share" => json!(plan_share(mark(&question["mark"]), mark(&question["reference"]), better)),
        "change" => change(question, rule, better),
        "personal best" => personal_best(question, better),
        other => json!({ "unknown": other }),
    }
}

/// A unit’s word, or [unit’s word, step, rounding] for a rule of another making.
fn read_rule(value: &Value) -> MarkRule {
    let word = value.as_str().or_else(|| value[0].as_str()).unwrap_or_default();
    let usual = match word {
        "automatic" => MarkRule::AUTOMATIC_TIME_IN_S,
        word => MarkRule::of_unit(word).unwrap_or(MarkRule::COUNT),
    };
    let rounding = match value[2].as_str() {
        Some("down") => Rounding::Down,
        Some("up") => Rounding::Up,
        Some("nearest") => Rounding::Nearest,
        Some("refused") => Rounding::Refused,
        _ => usual.rounding,
    };
    let step = value[1].as_u64().and_then(|step| u32::try_from(step).ok()).unwrap_or(usual.step);
    MarkRule { unit: usual.unit, step, rounding }
}

fn mark(value: &Value) -> Mark {
    Mark::from_steps(value.as_i64().unwrap_or_default())
}

fn attempts(values: &Value) -> Vec<Attempt> {
    let attempt = |value: &Value| match value.as_i64() {
        Some(steps) => Attempt::Valid(Mark::from_steps(steps)),
        None => Attempt::NoMark,
    };
    values.as_array().map(|values| values.iter().map(attempt).collect()).unwrap_or_default()
}

fn series(values: &Value) -> Vec<Vec<Attempt>> {
    values.as_array().map(|values| values.iter().map(attempts).collect()).unwrap_or_default()
}

fn steps(mark: Option<Mark>) -> Value {
    json!(mark.map(Mark::steps))
}

fn read(mark: Mark, rule: MarkRule) -> Value {
    json!([mark.steps(), rule.show(mark)])
}

fn refused(fault: &Unreadable) -> Value {
    json!({ "refused": fault.says, "way_out": fault.way_out })
}

/// Of one event, by its place in the table, for many marks at once.
fn points(question: &Value, rule: MarkRule) -> Value {
    let events = if question["events"] == "women" { WOMEN } else { MEN };
    let at = question["event"].as_u64().and_then(|at| usize::try_from(at).ok());
    let Some(event) = at.and_then(|at| events.get(at)) else { return Value::Null };
    let marks = question["marks"].as_array().into_iter().flatten();
    let points: Vec<_> = marks.map(|value| event.formula.points(mark(value), rule)).collect();
    json!({ "name": event.name, "points": points })
}

fn table(question: &Value, better: Better) -> Value {
    let lines = question["table"].as_array().into_iter().flatten();
    let lines = lines.map(|line| {
        let points = line[1].as_u64().and_then(|points| u32::try_from(points).ok());
        (mark(&line[0]), points.unwrap_or_default())
    });
    match PointsTable::new(lines.collect(), better) {
        Ok(table) => json!(table.points(mark(&question["mark"]))),
        Err(unsorted) => json!({ "unsorted": unsorted.0 }),
    }
}

fn change(question: &Value, rule: MarkRule, better: Better) -> Value {
    let change = plan_change(mark(&question["earlier"]), mark(&question["now"]), better);
    json!([change.steps, change.gain, change.show(rule)])
}

fn personal_best(question: &Value, better: Better) -> Value {
    let (earlier, today) = (attempts(&question["earlier"]), attempts(&question["today"]));
    let found = plan_personal_best(&earlier, &today, better);
    json!([found.standing, found.mark.map(Mark::steps)])
}

/// As a family’s entry is read: its steps, null for an attempt without a mark, or the key of the refusal.
fn returned(text: &str, rule: MarkRule) -> Value {
    match read_returned(text, rule) {
        Ok(Attempt::Valid(mark)) => json!([mark.steps(), rule.show(mark)]),
        Ok(Attempt::NoMark) => Value::Null,
        Err(why) => json!(why.key()),
    }
}
