//! Answers a check’s questions about assigning household things.
//!
//! In: `{"ask": "assign", "stock": [n, …], "wants": [{"count": n, "from": m, "to": m, "optional": b,
//! "suits": [[thing, unsuitability], …]}, …]}`. Out: things and missing numbers of each want, the sum of
//! unsuitability, and whether that is proven best.

use homeground::plan::assign::{Served, Suit, Want, plan_assignment};
use serde_json::{Value, json};

pub fn answer(question: &Value) -> Value {
    let wants = read_wants(&question["wants"]);
    let assignment = plan_assignment(&wants, &read_numbers(&question["stock"]));
    json!({
        "served": assignment.served.iter().map(show).collect::<Vec<_>>(),
        "missing_needed": assignment.missing_needed(&wants),
        "missing_optional": assignment.missing_optional(&wants),
        "unsuitability": assignment.unsuitability,
        "is_proven": assignment.is_proven,
    })
}

pub fn read_wants(value: &Value) -> Vec<Want> {
    list(value).iter().map(read_want).collect()
}

pub fn read_numbers(value: &Value) -> Vec<u32> {
    list(value).iter().map(read_number).collect()
}

pub fn list(value: &Value) -> &[Value] {
    value.as_array().map_or(&[], Vec::as_slice)
}

pub fn read_number(value: &Value) -> u32 {
    value.as_u64().and_then(|number| u32::try_from(number).ok()).unwrap_or(u32::MAX)
}

fn read_want(want: &Value) -> Want {
    let suit = |pair: &Value| Suit {
        thing: read_number(&pair[0]) as usize,
        unsuitability: read_number(&pair[1]),
    };
    Want {
        count: read_number(&want["count"]),
        from: read_number(&want["from"]) as usize,
        to: read_number(&want["to"]) as usize,
        optional: want["optional"] == true,
        suits: list(&want["suits"]).iter().map(suit).collect(),
    }
}

fn show(served: &Served) -> Value {
    json!({ "things": served.things, "missing": served.missing })
}
