//! Answers questions to the plans, one JSON object a line, so that the outside checks can compare each
//! computation with an independent one: `{"ask": "flight", …}`.

#![allow(clippy::print_stdout, reason = "the answers are this program’s output")]

mod assign;
mod examples;
mod figure;
mod fit;
mod flight;
mod gather_once;
mod marks;
mod progress;
mod reading;
mod slot_fit;
mod space;
mod units;

use std::io::{self, BufRead, Write};

use serde_json::{Value, json};

fn main() -> io::Result<()> {
    let mut out = io::BufWriter::new(io::stdout().lock());
    for line in io::stdin().lock().lines() {
        let answer = match serde_json::from_str::<Value>(&line?) {
            Ok(question) => answer(&question),
            Err(fault) => json!({ "fault": fault.to_string() }),
        };
        writeln!(out, "{answer}")?;
    }
    out.flush()
}

fn answer(question: &Value) -> Value {
    match question["ask"].as_str() {
        Some("assign") => assign::answer(question),
        Some("examples") => examples::answer(),
        Some("figure") => figure::answer(question),
        Some("fit") => fit::answer(question),
        Some("flight") => flight::answer(question),
        Some("gather_once") => gather_once::answer(question),
        Some("marks") => marks::answer(question),
        Some("progress") => progress::answer(question),
        Some("reading") => reading::answer(question),
        Some("slot_fit") => slot_fit::answer(question),
        Some("space") => space::answer(question),
        Some("unit_order") => units::order(question),
        Some("unit_cover") => units::cover(question),
        Some("unit_returns") => units::returns(question),
        _ => json!({ "fault": "no such plan" }),
    }
}
