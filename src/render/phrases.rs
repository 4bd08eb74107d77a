//! Sentences that pages and paper share, put together from the catalogue of words.

use crate::pack::{Measure, Need, Part, PartKind, Session, Substitute};
use crate::prose::plain_line;
use crate::read::PartTime;
use crate::read::words::{Effort, Measured, Whereabouts};
use crate::words::{Filling, Words};

/// The key of a kind of part: `warm-up`, `technique` …
pub const fn part_key(kind: PartKind) -> &'static str {
    match kind {
        PartKind::WarmUp => "warm-up",
        PartKind::Technique => "technique",
        PartKind::Challenge => "challenge",
        PartKind::Stretch => "stretch",
        PartKind::CoolDown => "cool-down",
    }
}

/// “Technique 2”, or “Warm-up” where there is one of its kind.
pub fn part_name(part: &Part, words: &Words) -> String {
    let name = words.say(&format!("part-{}", part_key(part.kind)));
    if part.of > 1 { format!("{name} {}", part.number) } else { name }
}

pub fn effort_name(effort: Effort, words: &Words) -> String {
    words.say(&format!("effort-{}", effort.word()))
}

/// “explain 1 min”, “work 30 s”, “rest 30 s”, “4 rounds” …; empty for one plain stretch of work.
pub fn time_pieces(time: &PartTime, words: &Words) -> Vec<String> {
    let mut pieces = Vec::new();
    let mut piece = |key: &str, amount: crate::quantity::Duration| {
        if !amount.is_zero() {
            let amount = amount.to_string();
            pieces.push(words.say_with(key, &[("amount", Filling::Text(&amount))]));
        }
    };
    piece("piece-explain", time.explain);
    piece("piece-set-up", time.set_up);
    piece("piece-work", time.work);
    if time.rounds > 1 {
        piece("piece-rest", time.rest);
    }
    piece("piece-recover", time.recover);
    let has_one = pieces.len() == 1 && time.rounds == 1;
    if time.rounds > 1 {
        pieces.push(words.say_with("piece-rounds", &[("count", Filling::Count(time.rounds))]));
    }
    if let Some((counts, tempo)) = time.counts {
        let filling = [("counts", Filling::Count(counts)), ("tempo", Filling::Count(tempo))];
        pieces.push(words.say_with("piece-counts", &filling));
    } else if has_one {
        pieces.clear();
    }
    pieces
}

/// How a try is measured: “Measure the distance in cm. 3 attempts count. Your best is the most.”
pub fn measure_sentence(measure: &Measure, words: &Words) -> String {
    let unit = measure.unit.as_ref().map(|unit| plain_line(unit)).unwrap_or_default();
    let key = format!("measure-{}", measure.what.word());
    let mut sentences = Vec::new();
    if measure.what.value != Measured::Criteria {
        sentences.push(words.say_with(&key, &[("unit", Filling::Text(&unit))]));
    }
    if let Some(attempts) = &measure.attempts {
        sentences.push(words.say_with("attempts", &[("count", Filling::Count(attempts.value))]));
    }
    if let Some(better) = &measure.better {
        sentences.push(words.say(&format!("better-{}", better.word())));
    }
    if measure.what.value == Measured::Criteria {
        sentences.push(words.say(&key));
    }
    sentences.join(" ")
}

/// “Indoors”, “Outdoors” or “Indoors or outdoors”.
pub fn place_name(whereabouts: &[Whereabouts], words: &Words) -> String {
    match whereabouts {
        [Whereabouts::Indoors] => words.say("place-indoors"),
        [Whereabouts::Outdoors] => words.say("place-outdoors"),
        _ => words.say("place-both"),
    }
}

/// “4 m × 2 m” of a session’s floor.
pub fn floor_size(session: &Session) -> Option<String> {
    session.space.as_ref().map(|space| format!("{} × {}", space.length, space.width))
}

/// “grass, carpet or a mat”, in the session’s own order.
pub fn surface_names(session: &Session, words: &Words) -> String {
    let names: Vec<String> = session
        .space
        .iter()
        .flat_map(|space| &space.surfaces)
        .map(|surface| words.say(&format!("surface-{}", surface.word().replace(' ', "-"))))
        .collect();
    names.join(", ")
}

/// “5 markers”, and “if you have it” where the session works without.
pub fn need_name(need: &Need, words: &Words) -> String {
    let counted = plain_line(&need.counted());
    if need.optional { format!("{counted} ({})", words.say("optional")) } else { counted }
}

/// The name of a stand-in, for one or for several.
pub fn substitute_name(substitute: &Substitute, count: u32) -> String {
    let name = if count > 1 { substitute.plural.as_str() } else { &substitute.thing.value.0 };
    plain_line(name)
}

/// What a thing may weigh and measure: “at most 200 g, 5–25 cm”.
pub fn limits_of(need: &Need) -> Option<String> {
    let mass = need.limits.mass.iter().map(ToString::to_string);
    let size = need.limits.size.iter().map(ToString::to_string);
    let limits: Vec<String> = mass.chain(size).collect();
    (!limits.is_empty()).then(|| limits.join(", "))
}

/// The hardest effort of a session.
pub fn hardest_effort(session: &Session) -> Option<Effort> {
    session.parts.iter().filter_map(|part| part.effort.as_ref()).map(|effort| effort.value).max()
}
