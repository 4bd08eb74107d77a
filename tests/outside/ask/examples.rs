//! The examples of the rules, as the files of the pack that each makes.
//!
//! In: `{"ask": "examples"}`. Out: a list of `{"code", "severity", "bad", "good"}`, where the last two are
//! paths → texts; a file that is no text is left out.

use std::collections::BTreeMap;

use homeground::inspect::{example_pack, rules};
use serde_json::{Value, json};

pub fn answer() -> Value {
    let row = |rule: &homeground::inspect::Rule| {
        json!({
            "code": rule.code,
            "severity": rule.severity.word(),
            "bad": files(rule.bad),
            "good": files(rule.good),
        })
    };
    rules::ALL.iter().filter(|rule| !rule.bad.is_empty()).map(row).collect()
}

fn files(example: &str) -> BTreeMap<String, String> {
    let files = example_pack(example).files.into_iter();
    files.filter_map(|(path, bytes)| Some((path, String::from_utf8(bytes).ok()?))).collect()
}
