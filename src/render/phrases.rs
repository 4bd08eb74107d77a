//! Sentences that pages and paper share, put together from the catalogue of words.

use crate::pack::{Limits, Measure, Need, Part, PartKind, Session, Space, Substitute};
use crate::place::Placed;
use crate::prose::plain_line;
use crate::quantity::{Duration, Length, Mass, Range};
use crate::read::PartTime;
use crate::read::words::{Effort, Measured, Whereabouts};
use crate::render::quantities::{Said, say_size};
use crate::words::{Filling, Words};

/// The languages written from right to left, by their BCP 47 primary subtag (Unicode CLDR).
const RIGHT_TO_LEFT: [&str; 10] = ["ar", "ckb", "dv", "fa", "he", "ps", "sd", "ug", "ur", "yi"];

/// Whether a language, named by its BCP 47 tag, is written from right to left.
pub fn is_right_to_left(language: &str) -> bool {
    let primary = language.split('-').next().unwrap_or_default().to_ascii_lowercase();
    RIGHT_TO_LEFT.contains(&primary.as_str())
}

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

/// What the time of a part is made of, in words and in order; empty for one plain stretch of work.
pub fn time_pieces(time: &PartTime, words: &Words) -> Vec<String> {
    let is_plain = *time == PartTime::of_work(time.work);
    if is_plain {
        return Vec::new();
    }
    let piece = |key: &str, length: Duration| {
        let amount = length.say(words);
        (!length.is_zero()).then(|| words.say_with(key, &[("amount", Filling::Text(&amount))]))
    };
    let work = time.counts.map_or_else(
        || piece("piece-work", time.work),
        |(counts, tempo)| {
            let with = [("counts", Filling::Count(counts)), ("tempo", Filling::Count(tempo))];
            Some(words.say_with("piece-counts", &with))
        },
    );
    let rounds = (time.rounds > 1)
        .then(|| words.say_with("piece-rounds", &[("count", Filling::Count(time.rounds))]));
    // A rest is only taken between rounds.
    let rest = rounds.as_ref().and_then(|_| piece("piece-rest", time.rest));
    [
        piece("piece-explain", time.explain),
        piece("piece-set-up", time.set_up),
        work,
        rest,
        rounds,
        piece("piece-recover", time.recover),
    ]
    .into_iter()
    .flatten()
    .collect()
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

/// What stands between the things of a list: Arabic and Urdu have a comma of their own.
pub fn comma(words: &Words) -> &'static str {
    if is_right_to_left(words.language()) { "، " } else { ", " }
}

/// What stands between a label and what it names: French keeps a space before it (Imprimerie nationale, Lexique des
/// règles typographiques).
pub fn colon(words: &Words) -> &'static str {
    let is_french = words.language().split('-').next() == Some("fr");
    if is_french { "\u{a0}: " } else { ": " }
}

/// “4 m × 2 m” of floor.
pub fn floor_size(space: &Space, words: &Words) -> String {
    say_size(space.length.value, space.width.value, words)
}

/// A list in words: `grass, carpet or a mat`.
pub fn surface_names(session: &Session, words: &Words) -> String {
    let surfaces =
        session.space.as_ref().map(|space| space.surfaces.as_slice()).unwrap_or_default();
    let mut said: Vec<String> = surfaces
        .iter()
        .map(|s| words.say(&format!("surface-{}", s.word().replace(' ', "-"))))
        .collect();
    match said.pop() {
        Some(last) if !said.is_empty() => {
            let rest = said.join(comma(words));
            words.say_with(
                "list-or",
                &[("rest", Filling::Text(&rest)), ("last", Filling::Text(&last))],
            )
        }
        last => last.unwrap_or_default(),
    }
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

/// What a thing in this place may weigh and measure: “at most 200 g, 5–25 cm, soft”.
pub fn limits_of(limits: &Limits, words: &Words) -> Option<String> {
    let figures = fitness_of(words, limits.mass.as_ref(), limits.size.as_ref(), limits.soft);
    let qualities = limits.qualities.iter().map(|quality| plain_line(quality));
    let all: Vec<String> = figures.into_iter().chain(qualities).collect();
    (!all.is_empty()).then(|| all.join(comma(words)))
}

/// What a thing weighs and measures: “40–100 g, 8–14 cm, soft”.
pub fn fitness_of(
    words: &Words,
    mass: Option<&Placed<Range<Mass>>>,
    size: Option<&Placed<Range<Length>>>,
    soft: Option<bool>,
) -> Option<String> {
    let mut said: Vec<String> = Vec::new();
    said.extend(mass.map(|mass| mass.say(words)));
    said.extend(size.map(|size| size.say(words)));
    said.extend((soft == Some(true)).then(|| words.say("soft")));
    (!said.is_empty()).then(|| said.join(comma(words)))
}

/// Keeps each figure and its unit on one line: “4 min 30 s”.
pub fn hold_together(quantity: &str) -> String {
    let mut held = String::with_capacity(quantity.len() + 4);
    let mut before = ' ';
    let mut letters = quantity.chars().peekable();
    while let Some(letter) = letters.next() {
        let is_inside =
            before.is_ascii_digit() && letters.peek().is_some_and(|next| next.is_alphabetic());
        held.push(if letter == ' ' && is_inside { '\u{a0}' } else { letter });
        before = letter;
    }
    held
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_stay_with_their_units() {
        assert_eq!(hold_together("4 min 30 s"), "4\u{a0}min 30\u{a0}s");
        assert_eq!(hold_together("at most 20 cm"), "at most 20\u{a0}cm");
        assert_eq!(hold_together("4 m × 2 m"), "4\u{a0}m × 2\u{a0}m");
    }
}
