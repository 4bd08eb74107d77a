//! Answers a check’s questions about fitting a session to a slot.
//!
//! In: `{"ask": "slot_fit", "slots": [s, …], "parts": [{"least": s, "step": s, "count": n, "essential": b,
//! "worth": w}, …]}`. Out: a list with, for each slot, the choices and sums, or by how much it is too short.

use homeground::plan::slot_fit::{
    Lengths, PartOffer, SlotFit, TooShort, plan_slot_fit, plan_slot_fits,
};
use homeground::quantity::Duration;
use serde_json::{Value, json};

pub fn answer(question: &Value) -> Value {
    let parts: Vec<PartOffer> = list(&question["parts"]).iter().map(read_part).collect();
    let slots: Vec<Duration> = list(&question["slots"]).iter().map(read_seconds).collect();
    let fits = plan_slot_fits(&parts, &slots);
    let alone: Vec<_> = slots.iter().map(|slot| plan_slot_fit(&parts, *slot)).collect();
    json!({ "fits": fits.iter().map(show).collect::<Vec<_>>(), "alone_too": fits == alone })
}

fn list(value: &Value) -> &[Value] {
    value.as_array().map_or(&[], Vec::as_slice)
}

fn read_number(value: &Value) -> u32 {
    value.as_u64().and_then(|number| u32::try_from(number).ok()).unwrap_or(u32::MAX)
}

fn read_seconds(value: &Value) -> Duration {
    Duration::from_seconds(read_number(value))
}

fn read_part(part: &Value) -> PartOffer {
    let (least, step) = (read_seconds(&part["least"]), read_seconds(&part["step"]));
    PartOffer {
        lengths: Lengths { least, step, count: read_number(&part["count"]) },
        essential: part["essential"] == true,
        worth: read_number(&part["worth"]),
    }
}

fn show(fit: &Result<SlotFit, TooShort>) -> Value {
    match fit {
        Ok(fit) => json!({
            "choices": fit.choices.iter().map(|c| c.map(Duration::seconds)).collect::<Vec<_>>(),
            "total": fit.total.seconds(),
            "worth": fit.worth,
            "unfilled": fit.unfilled.seconds(),
        }),
        Err(short) => json!({ "too_short": short.by.seconds() }),
    }
}
