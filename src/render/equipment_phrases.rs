//! Sentences about things at home, shared by pages and paper.

use crate::pack::{MisfitFault as Fault, Refused, Session, counted};
use crate::plan::{EquipmentPlan, HomeThings};
use crate::prose::plain_line;
use crate::quantity::Ages;
use crate::render::quantities::Said;
use crate::words::{Filling, Words};

/// “4 pairs of rolled socks”
pub fn counted_things(things: &HomeThings) -> String {
    plain_line(&counted(things.count, &things.name, &things.plural))
}

/// What serves each need that something must stand in for: “4 pairs of rolled socks as marker”.
pub fn home_list(session: &Session, plan: &EquipmentPlan, words: &Words) -> Vec<String> {
    let served = session.needs.iter().zip(&plan.served);
    served
        .filter(|(_, served)| !served.things.is_empty())
        .map(|(need, served)| {
            let things: Vec<String> = served.things.iter().map(counted_things).collect();
            let things = things.join(" + ");
            let is_itself = served.things.iter().all(|thing| thing.name == need.name.value.0);
            if is_itself {
                return things;
            }
            let need = plain_line(&need.counted());
            let with = [("things", Filling::Text(&things)), ("need", Filling::Text(&need))];
            words.say_with("things-as", &with)
        })
        .collect()
}

/// “too heavy: 1.2 kg, at most 500 g for ages 8–11”
pub fn fault_sentence(fault: &Fault, ages: Ages, words: &Words) -> String {
    let (key, found, asked) = match fault {
        Fault::TooHeavy(found, asked) => ("misfit-heavy", found.say(words), asked.say(words)),
        Fault::TooLight(found, asked) => ("misfit-light", found.say(words), asked.say(words)),
        Fault::TooLarge(found, asked) => ("misfit-large", found.say(words), asked.say(words)),
        Fault::TooSmall(found, asked) => ("misfit-small", found.say(words), asked.say(words)),
        Fault::NotSoft => ("misfit-hard", String::new(), String::new()),
        Fault::Lacks(quality) => ("misfit-lacks", String::new(), quality.clone()),
    };
    let ages = ages.to_string();
    let with = [
        ("found", Filling::Text(&found)),
        ("asked", Filling::Text(&asked)),
        ("ages", Filling::Text(&ages)),
    ];
    words.say_with(key, &with)
}

/// “Slipper: too large: …; not said to be soft”
pub fn refusal_sentence(refusal: &Refused, session: &Session, words: &Words) -> String {
    let reasons: Vec<String> = refusal
        .reasons
        .iter()
        .map(|misfit| fault_sentence(&misfit.fault, session.ages.value, words))
        .collect();
    format!("{}: {}", plain_line(&refusal.thing), reasons.join("; "))
}
