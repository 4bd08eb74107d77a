//! Answers a check’s questions about progress: statistics, tables, whole classes.
//!
//! In: `{"ask": "progress", "what": …}`. Out: numbers; cells; or for a class its noise, spread and
//! changes, reckoned from the tries of one measured part, in steps of centimetres.

use std::collections::BTreeMap;

use homeground::plan::marks::{Attempt, Mark};
use homeground::plan::statistics::{
    mean, median, places, pooled_typical_error, quantile, smallest_worthwhile_change,
    standard_deviation, typical_error,
};
use homeground::progress::check_code::check_code;
use homeground::progress::code::{judge_code, read_code};
use homeground::progress::entries::Day;
use homeground::progress::noise::{judge_gain, plan_noise};
use homeground::progress::spreadsheet::safe_cell;
use homeground::progress::table::read_table;
use homeground::progress::words::clean_words;
use serde_json::{Value, json};

pub fn answer(question: &Value) -> Value {
    let text = question["text"].as_str().unwrap_or_default();
    match question["what"].as_str().unwrap_or_default() {
        "statistics" => statistics(&numbers(&question["values"])),
        "pooled" => json!(pooled_typical_error(
            &list(&question["pairs"]).iter().map(numbers).collect::<Vec<_>>()
        )),
        "noise" => noise(question),
        "table" => table(question),
        "safe" => safe_cell(text).into(),
        "code" => json!(read_code(text).is_ok()),
        // As the page of a session asks: the key of what is wrong, null where it is a code.
        "judge code" => json!(judge_code(text.trim())),
        "check code" => check_code(text).into(),
        "words" => clean_words(text).into(),
        other => json!({ "fault": format!("no question “{other}”") }),
    }
}

fn statistics(values: &[f64]) -> Value {
    let shares = [0.0, 0.1, 0.25, 0.5, 0.75, 0.9, 1.0];
    let deviation = standard_deviation(values);
    json!({
        "mean": mean(values),
        "median": median(values),
        "deviation": deviation,
        "quantiles": shares.map(|share| quantile(values, share)),
        "typical error": typical_error(values),
        "smallest": deviation.map(smallest_worthwhile_change),
        "places": places(values),
    })
}

/// `days` are lists of steps, null where a try has no mark; `gains` are judged by their noise.
fn noise(question: &Value) -> Value {
    let day = |tries: &Value| -> Day {
        let attempt = |value: &Value| match value.as_i64() {
            Some(steps) => Attempt::Valid(Mark::from_steps(steps)),
            None => Attempt::NoMark,
        };
        list(tries)
            .iter()
            .map(attempt)
            .enumerate()
            .map(|(at, own)| (at + 1, own))
            .collect::<BTreeMap<_, _>>()
    };
    let days: Vec<Day> = list(&question["days"]).iter().map(day).collect();
    let noise = plan_noise(days.iter(), &numbers(&question["latest"]));
    let gains = list(&question["gains"]);
    let verdicts: Vec<&str> = gains
        .iter()
        .filter_map(Value::as_i64)
        .map(|gain| judge_gain(gain, &noise).word())
        .collect();
    json!([noise.typical_error, noise.pairs, noise.smallest_worthwhile, verdicts])
}

/// The bytes of a file → its rows with their numbers, the names of the columns first.
fn table(question: &Value) -> Value {
    let bytes: Vec<u8> = list(&question["bytes"])
        .iter()
        .filter_map(|byte| byte.as_u64().and_then(|byte| u8::try_from(byte).ok()))
        .collect();
    match read_table(&bytes) {
        Ok(table) => {
            let rows = std::iter::once(table.head).chain(table.rows);
            json!(rows.map(|row| json!([row.number, row.cells])).collect::<Vec<_>>())
        }
        Err(why) => json!({ "refused": why }),
    }
}

fn list(value: &Value) -> &[Value] {
    value.as_array().map_or(&[], Vec::as_slice)
}

fn numbers(value: &Value) -> Vec<f64> {
    list(value).iter().filter_map(Value::as_f64).collect()
}
