//! Sentences about what a home can do and can’t, shared by the teacher’s page and sheet.

use crate::fit::{LeftOut, OneThing, Why};
use crate::homes::HomeNeed;
use crate::pack::{Session, counted};
use crate::plan::HomeThings;
use crate::prose::plain_line;
use crate::quantity::Length;
use crate::read::words::Whereabouts;
use crate::render::equipment_phrases::counted_things;
use crate::render::phrases::{hold_together, place_name};
use crate::words::{Filling, Words};

/// “needs a clear floor of 4 m × 2 m”
pub fn why_phrase(why: &Why, session: &Session, words: &Words) -> String {
    match why {
        Why::Seated => words.say("fit-why-seated"),
        Why::Noise => words.say("fit-why-noise"),
        Why::Surface => words.say("fit-why-surface"),
        Why::Time => words.say("fit-why-time"),
        Why::Short => words.say("fit-why-short"),
        Why::Helpers(count) => {
            words.say_with("fit-why-helpers", &[("count", Filling::Count(*count))])
        }
        Why::Place(place) => say_text(words, "fit-why-place", "place", &place_of(*place, words)),
        Why::Headroom(height) => {
            say_text(words, "fit-why-headroom", "height", &hold_together(&height.to_string()))
        }
        Why::Floor(length, width) => {
            say_text(words, "fit-why-floor", "size", &size_of(*length, *width))
        }
        Why::Things(missing) => {
            let name = |(need, count): &(usize, u32)| {
                let need = &session.needs[*need];
                plain_line(&counted(*count, &need.name, &need.plural))
            };
            let list = missing.iter().map(name).collect::<Vec<_>>().join(", ");
            say_text(words, "fit-why-things", "list", &list)
        }
    }
}

/// “Leaves out Two gulls, The moving nest: it needs … Instead: Nest hands.” Parts with one reason share a
/// sentence.
pub fn left_out_sentences(left_out: &[LeftOut], session: &Session, words: &Words) -> Vec<String> {
    let title = |part: usize| plain_line(&session.parts[part].title);
    let reasons = by_reason(left_out.iter().map(|out| (out.part, &out.why)), session);
    let tell = |(why, parts): (&Why, Vec<String>)| {
        let (list, said) = (parts.join(", "), why_phrase(why, session, words));
        let with = [("part", Filling::Text(&list)), ("why", Filling::Text(&said))];
        let said = words.say_with("fit-left-out", &with);
        let like = left_out.iter().filter(|out| out.why == *why && out.why != Why::Time);
        let mut instead: Vec<usize> = like.filter_map(|out| out.instead).collect();
        instead.sort_unstable();
        instead.dedup();
        if instead.is_empty() {
            return said;
        }
        let titles: Vec<String> = instead.into_iter().map(title).collect();
        format!("{said} {}", say_text(words, "fit-instead", "part", &titles.join(", ")))
    };
    reasons.into_iter().map(tell).collect()
}

/// The titles of parts that share a reason, in the order in which reasons are met.
fn by_reason<'w>(
    parts: impl Iterator<Item = (usize, &'w Why)>,
    session: &Session,
) -> Vec<(&'w Why, Vec<String>)> {
    let mut reasons: Vec<(&Why, Vec<String>)> = Vec::new();
    for (part, why) in parts {
        let title = plain_line(&session.parts[part].title);
        match reasons.iter_mut().find(|(known, _)| *known == why) {
            Some((_, parts)) => parts.push(title),
            None => reasons.push((why, vec![title])),
        }
    }
    reasons
}

/// Why a session can’t be done, and the one thing that would make it fit.
pub fn unfit_sentences(
    why: &[(usize, Why)],
    one_thing: Option<&OneThing>,
    session: &Session,
    words: &Words,
) -> Vec<String> {
    let mut said: Vec<String> = Vec::new();
    let reasons = by_reason(why.iter().map(|(part, why)| (*part, why)), session);
    for (why, parts) in reasons {
        let (list, why) = (parts.join(", "), why_phrase(why, session, words));
        let with = [("list", Filling::Text(&list)), ("why", Filling::Text(&why))];
        said.push(words.say_with("fit-cannot", &with));
    }
    said.push(match one_thing {
        Some(one) => say_text(words, "fit-one-thing", "thing", &one_thing_phrase(one, words)),
        None => words.say("fit-no-one-thing"),
    });
    said
}

fn one_thing_phrase(one: &OneThing, words: &Words) -> String {
    match one {
        OneThing::Lend(things) => counted_things(things),
        OneThing::Minutes(minutes) => {
            say_text(words, "fit-one-minutes", "time", &hold_together(&minutes.to_string()))
        }
        OneThing::MoreFloor { floor, by } => {
            let (floor, by) =
                (u32::try_from(*floor + 1).unwrap_or(1), hold_together(&by.to_string()));
            let with = [("floor", Filling::Count(floor)), ("by", Filling::Text(&by))];
            words.say_with("fit-one-more-floor", &with)
        }
        OneThing::Floor { length, width, place } => {
            let (size, place) = (size_of(*length, *width), place_of(*place, words));
            let with = [("size", Filling::Text(&size)), ("place", Filling::Text(&place))];
            words.say_with("fit-one-floor", &with)
        }
        OneThing::Helper => words.say("fit-one-helper"),
        OneThing::Version(need) => words.say(match need {
            HomeNeed::Quiet => "fit-one-version-quiet",
            HomeNeed::Seated | HomeNeed::LowVision => "fit-one-version-seated",
        }),
    }
}

/// “4 pairs of rolled socks, 1 beanbag”
pub fn things_list(things: &[HomeThings]) -> String {
    things.iter().map(counted_things).collect::<Vec<_>>().join(", ")
}

fn size_of(length: Length, width: Length) -> String {
    hold_together(&format!("{length} × {width}"))
}

fn place_of(place: Whereabouts, words: &Words) -> String {
    place_name(&[place], words).to_lowercase()
}

fn say_text(words: &Words, key: &str, name: &str, text: &str) -> String {
    words.say_with(key, &[(name, Filling::Text(text))])
}
