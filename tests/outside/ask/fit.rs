//! Answers a check’s questions about fitting sessions to a home.
//!
//! In: `{"ask": "fit", "stock": [n, …], "most": [n, …], "sessions": [{"slot": s, "parts": [{"least": s, "step": s,
//! "count": n, "essential": b, "worth": n, "is_main": b, "versions": [{"change": n, "uses": [want, …]}]}],
//! "wants": [{"count": n, "optional": b, "suits": [[thing, unsuitability], …]}]}]}`. Out: the best choice of each
//! session or null, and what to lend.

use homeground::fit::{Choice, Model, PartModel, Version, WantModel, plan_choice, plan_lending};
use homeground::plan::assign::Suit;
use homeground::plan::slot_fit::{Lengths, PartOffer};
use homeground::quantity::Duration;
use serde_json::{Value, json};

use crate::assign::{list, read_number, read_numbers};

pub fn answer(question: &Value) -> Value {
    let stock = read_numbers(&question["stock"]);
    let sessions = list(&question["sessions"]).iter();
    let models: Vec<Model> = sessions.map(|session| read_model(session, &stock)).collect();
    let lending = plan_lending(&models, &read_numbers(&question["most"]));
    let choices = models.iter().map(|model| plan_choice(model).ok().map(|choice| show(&choice)));
    json!({
        "choices": choices.collect::<Vec<_>>(),
        "lend": lending.counts,
        "possible": lending.possible,
        "is_proven": lending.is_proven,
    })
}

fn show(choice: &Choice) -> Value {
    let part = |chosen: &Option<homeground::fit::Chosen>| {
        chosen.map(|chosen| (chosen.version, chosen.length.seconds()))
    };
    json!({
        "score": [choice.worth, choice.kept(), choice.changes, choice.missing_optional, choice.unsuitability],
        "parts": choice.parts.iter().map(part).collect::<Vec<_>>(),
        "served": choice.served.iter().map(|served| &served.things).collect::<Vec<_>>(),
        "is_proven": choice.is_proven,
    })
}

fn read_model(session: &Value, stock: &[u32]) -> Model {
    Model {
        parts: list(&session["parts"]).iter().map(read_part).collect(),
        wants: list(&session["wants"]).iter().map(read_want).collect(),
        stock: stock.to_vec(),
        slot: seconds(&session["slot"]),
    }
}

fn read_part(part: &Value) -> PartModel {
    let version = |version: &Value| Version {
        change: read_number(&version["change"]),
        uses: read_numbers(&version["uses"]).into_iter().map(|want| want as usize).collect(),
    };
    let lengths = Lengths {
        least: seconds(&part["least"]),
        step: seconds(&part["step"]),
        count: read_number(&part["count"]),
    };
    let (essential, worth) = (part["essential"] == true, read_number(&part["worth"]));
    PartModel {
        offer: PartOffer { lengths, essential, worth },
        is_main: part["is_main"] == true,
        versions: list(&part["versions"]).iter().map(version).collect(),
    }
}

fn read_want(want: &Value) -> WantModel {
    let suit = |pair: &Value| Suit {
        thing: read_number(&pair[0]) as usize,
        unsuitability: read_number(&pair[1]),
    };
    WantModel {
        count: read_number(&want["count"]),
        optional: want["optional"] == true,
        suits: list(&want["suits"]).iter().map(suit).collect(),
    }
}

fn seconds(value: &Value) -> Duration {
    Duration::from_seconds(read_number(value))
}
