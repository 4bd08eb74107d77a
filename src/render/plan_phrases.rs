//! Sentences about plans, shared by pages and paper: setting out, other slots, effort.

use crate::pack::Session;
use crate::plan::{EffortPlan, Fitted, MarksPlan, OtherSlot, TapeStep};
use crate::prose::plain_line;
use crate::quantity::{Duration, Length};
use crate::read::words::Better;
use crate::render::phrases::comma;
use crate::render::quantities::{Said, say_amount};
use crate::words::{Filling, Words};

/// “From the middle of the line, measure 6 m twice …”
pub fn tape_sentence(step: &TapeStep, words: &Words) -> String {
    let (key, lengths): (&str, Vec<(&str, Length)>) = match step {
        TapeStep::Line { length } => ("tape-line", vec![("length", *length)]),
        TapeStep::RightAngle { along, away, across } => {
            ("tape-right-angle", vec![("along", *along), ("away", *away), ("across", *across)])
        }
        TapeStep::Diagonals { length, width, diagonal } => (
            "tape-diagonals",
            vec![("length", *length), ("width", *width), ("diagonal", *diagonal)],
        ),
        TapeStep::SectorLines { along, apart } => {
            ("tape-sector", vec![("along", *along), ("apart", *apart)])
        }
        TapeStep::Reach { reach, margin } => {
            ("tape-reach", vec![("reach", *reach), ("margin", *margin)])
        }
        TapeStep::Around { margin } => ("tape-around", vec![("margin", *margin)]),
        TapeStep::Wait { behind } => ("tape-wait", vec![("behind", *behind)]),
    };
    let said: Vec<(&str, String)> =
        lengths.into_iter().map(|(name, length)| (name, length.say(words))).collect();
    let with: Vec<(&str, Filling<'_>)> =
        said.iter().map(|(name, text)| (*name, Filling::Text(text))).collect();
    words.say_with(key, &with)
}

/// “20 min”
pub fn slot_name(slot: Duration, words: &Words) -> String {
    slot.say(words)
}

/// What to leave out and what to change: “Leave out Leap again. The widening brook: 4 min (3 rounds).”
pub fn slot_sentence(other: &OtherSlot, session: &Session, words: &Words) -> String {
    let fitted = match &other.fit {
        Ok(fitted) => fitted,
        Err(short) => {
            let by = short.by.say(words);
            return words.say_with("slot-too-short", &[("by", Filling::Text(&by))]);
        }
    };
    let mut sentences = Vec::new();
    let pairs = || session.parts.iter().zip(&fitted.parts);
    let dropped: Vec<String> = pairs()
        .filter(|(_, fitted)| **fitted == Fitted::Dropped)
        .map(|(part, _)| plain_line(&part.title))
        .collect();
    if !dropped.is_empty() {
        let list = dropped.join(comma(words));
        sentences.push(words.say_with("slot-drop", &[("list", Filling::Text(&list))]));
    }
    for (part, fitted) in pairs() {
        let Fitted::Changed(length, rounds) = fitted else { continue };
        let (title, time) = (plain_line(&part.title), length.say(words));
        let mut with = vec![("part", Filling::Text(&title)), ("time", Filling::Text(&time))];
        let key = match rounds {
            Some(rounds) => {
                with.push(("rounds", Filling::Count(*rounds)));
                "slot-change-rounds"
            }
            None => "slot-change",
        };
        sentences.push(words.say_with(key, &with));
    }
    if fitted.unfilled >= Duration::from_minutes(1) {
        let left = fitted.unfilled.say(words);
        sentences.push(words.say_with("slot-left", &[("time", Filling::Text(&left))]));
    }
    if sentences.is_empty() { words.say("slot-same") } else { sentences.join(" ") }
}

/// “Points: 1 from 100 cm, 2 from 120 cm.”; nothing without a table.
pub fn points_sentence(marks: &MarksPlan, words: &Words) -> Option<String> {
    let key = if marks.better == Better::More { "points-from" } else { "points-within" };
    let steps: Vec<String> = marks
        .steps
        .iter()
        .map(|(mark, points)| {
            let mark = say_amount(&marks.rule.show(*mark), words);
            let with = [("points", Filling::Count(*points)), ("mark", Filling::Text(&mark))];
            words.say_with(key, &with)
        })
        .collect();
    let list = steps.join(comma(words));
    (!steps.is_empty()).then(|| words.say_with("points-list", &[("list", Filling::Text(&list))]))
}

/// The longest time with nobody moving: “1 min 10 s, in Heron and pike”.
pub fn still_sentence(effort: &EffortPlan, session: &Session, words: &Words) -> String {
    let still = effort.longest_still;
    let time = still.length.say(words);
    let part =
        session.parts.get(still.part).map(|part| plain_line(&part.title)).unwrap_or_default();
    words
        .say_with("effort-still", &[("time", Filling::Text(&time)), ("part", Filling::Text(&part))])
}
