//! Answers a check’s questions about units of work.
//!
//! `unit_order`: `{"items": [{session, vigorous, things, active, grounds}], "places": [{day, fixed}]}` → the items
//! in order and what they cost. `unit_cover`: `{"asked": [n, …], "candidates": [{covers, seconds}], "at_most": n}`
//! → what is chosen. `unit_returns`: `{"meetings": [{day, questions}], "after_days", "growth", "a_day"}` → the
//! questions that come back at each meeting as `[question, time]`.

use homeground::pack::BringBack;
use homeground::plan::unit::{
    Candidate, Meeting, OrderItem, OrderPlace, plan_cover, plan_order, plan_returns,
};
use serde_json::{Value, json};

use super::assign::list;

pub fn order(question: &Value) -> Value {
    let items: Vec<OrderItem> = list(&question["items"]).iter().map(read_item).collect();
    let places: Vec<OrderPlace> = list(&question["places"])
        .iter()
        .map(|place| OrderPlace {
            day: number(&place["day"]),
            fixed: place["fixed"].as_u64().map(at),
        })
        .collect();
    let order = plan_order(&items, &places);
    let cost = order.cost;
    json!({
        "items": order.items,
        "cost": [
            cost.grounds_later,
            cost.vigorous_running,
            cost.same_running,
            cost.things_changed,
            cost.active_lost
        ],
        "is_best": order.is_best,
    })
}

fn read_item(item: &Value) -> OrderItem {
    OrderItem {
        session: at(item["session"].as_u64().unwrap_or(0)),
        is_vigorous: item["vigorous"].as_bool().unwrap_or(false),
        things: numbers(&item["things"]).into_iter().collect(),
        active: u32::try_from(item["active"].as_u64().unwrap_or(0)).unwrap_or(0),
        grounds: list(&item["grounds"]).iter().map(numbers).collect(),
    }
}

pub fn cover(question: &Value) -> Value {
    let set = |numbers: Vec<usize>| numbers.into_iter().fold(0_u128, |all, at| all | 1 << at);
    let candidates: Vec<Candidate> = list(&question["candidates"])
        .iter()
        .map(|candidate| Candidate {
            covers: set(numbers(&candidate["covers"])),
            seconds: u32::try_from(candidate["seconds"].as_u64().unwrap_or(0)).unwrap_or(0),
        })
        .collect();
    let at_most = at(question["at_most"].as_u64().unwrap_or(0));
    let choice = plan_cover(set(numbers(&question["asked"])), &candidates, at_most);
    let covered: Vec<usize> = (0..128).filter(|at| choice.covered & (1 << at) != 0).collect();
    json!({ "chosen": choice.chosen, "covered": covered, "is_best": choice.is_best })
}

pub fn returns(question: &Value) -> Value {
    let figure = |key: &str| u32::try_from(question[key].as_u64().unwrap_or(0)).unwrap_or(0);
    let spacing = BringBack {
        after_days: figure("after_days"),
        growth: figure("growth"),
        a_day: figure("a_day"),
    };
    let meetings: Vec<Meeting> = list(&question["meetings"])
        .iter()
        .map(|meeting| Meeting {
            day: number(&meeting["day"]),
            questions: numbers(&meeting["questions"]),
        })
        .collect();
    let planned = plan_returns(&meetings, spacing);
    let shown = planned.iter().map(|back| {
        back.iter().map(|back| json!([back.question, back.time])).collect::<Vec<Value>>()
    });
    json!(shown.collect::<Vec<_>>())
}

fn numbers(value: &Value) -> Vec<usize> {
    list(value).iter().filter_map(Value::as_u64).map(at).collect()
}

fn at(number: u64) -> usize {
    usize::try_from(number).unwrap_or(usize::MAX)
}

fn number(value: &Value) -> i32 {
    value.as_i64().and_then(|number| i32::try_from(number).ok()).unwrap_or(0)
}
