//! A session as text messages: first what to gather and to take care of, then one for each part, after
//! its rules where something flies.
//!
//! Each is numbered “2/8” and fits one message ([`super::gsm`]). Key points are whole or left out;
//! how a part is done is cut at the end of a word, with three points. Cautions are never cut: they
//! go on in the next message.

use super::copy::{cautions_of, rules_of, things_of};
use super::gsm::{fits, plain_signs};
use crate::pack::{Pack, Part, Session};
use crate::plan::Plans;
use crate::prose::{plain_line, plain_words};
use crate::render::phrases::{colon, comma};
use crate::render::quantities::Said as _;
use crate::words::Words;

/// Where words are left out.
const CUT: &str = "...";

/// The longest number before a message, held free while its place is not yet known.
const LONGEST_NUMBER: &str = "999/999 ";

/// The messages of a session, in order.
pub fn write_messages(session: &Session, plans: &Plans, pack: &Pack, words: &Words) -> Vec<String> {
    let mut texts = opening_messages(session, pack, words);
    let spans = session.parts.iter().zip(&plans.time.spans);
    for (part, span) in spans {
        texts.extend(rule_messages(part, words));
        texts.push(part_message(part, &span.total.say(words), words));
    }
    let total = texts.len();
    texts.iter().zip(1..).map(|(text, number)| format!("{number}/{total} {text}")).collect()
}

/// Title, minutes, things and cautions: as many messages as they need.
fn opening_messages(session: &Session, pack: &Pack, words: &Words) -> Vec<String> {
    let mut said =
        vec![format!("{}{}{}.", plain_line(&session.title), comma(words), session.slot.say(words))];
    said.extend(things_of(session, words));
    let care = cautions_of(session, pack).into_iter();
    let care = care.chain([words.say("no-printer-read")]).collect::<Vec<_>>().join(" ");
    said.push(format!("{}{}{care}", words.say("cautions"), colon(words)));
    said.push(words.say("no-printer-rules"));
    fill_messages(&said.join(" "))
}

/// What holds before anything flies, sent before the part itself.
fn rule_messages(part: &Part, words: &Words) -> Vec<String> {
    let rules = rules_of(part, words);
    let said = rules.map(|rules| format!("{} - {rules}", plain_line(&part.title)));
    said.map_or_else(Vec::new, |said| fill_messages(&said))
}

/// A text over as many messages as it needs, cut at the ends of words.
fn fill_messages(text: &str) -> Vec<String> {
    let mut messages = vec![String::new()];
    let plain = plain_signs(text);
    for word in plain.split_whitespace().flat_map(pieces_of_word) {
        let last = messages.last_mut().expect("there is one from the start");
        let longer = if last.is_empty() { word.clone() } else { format!("{last} {word}") };
        if has_room(&longer) {
            *last = longer;
        } else {
            messages.push(word);
        }
    }
    messages
}

/// A word, or the pieces of one that is longer than a message.
fn pieces_of_word(word: &str) -> Vec<String> {
    let mut pieces = vec![String::new()];
    for letter in word.chars() {
        let longer = format!("{}{letter}", pieces[pieces.len() - 1]);
        if has_room(&longer) {
            pieces.pop();
            pieces.push(longer);
        } else {
            pieces.push(letter.to_string());
        }
    }
    pieces
}

fn has_room(text: &str) -> bool {
    fits(&format!("{LONGEST_NUMBER}{text}"))
}

/// “Quick feet, 5 min: how it is done. Key point; key point.” The first key point comes before more
/// of the how, the others after it.
fn part_message(part: &Part, time: &str, words: &Words) -> String {
    let head = plain_signs(&format!(
        "{}{}{time}{}",
        plain_line(&part.title),
        comma(words),
        colon(words).trim_end()
    ));
    let head = if has_room(&head) { head } else { cut_to_room(&head, "", "") };
    let how = plain_signs(&plain_words(&part.how));
    let points: Vec<String> = part.key_points.iter().map(|p| plain_signs(&plain_line(p))).collect();
    let first = points.first().filter(|point| leaves_room(&head, &how, point));
    let mut kept = first.cloned().unwrap_or_default();
    let how = cut_to_room(&how, &head, &kept);
    for point in points.iter().skip(1).filter(|_| first.is_some()) {
        let longer = format!("{kept}; {point}");
        if has_room(&joined(&head, &how, &longer)) {
            kept = longer;
        }
    }
    joined(&head, &how, &kept)
}

/// Letters of the how that a key point must leave room for.
const LEAST_HOW: usize = 40;

fn leaves_room(head: &str, how: &str, point: &str) -> bool {
    let beside = cut_to_room(how, head, point);
    beside.chars().count() >= how.chars().count().min(LEAST_HOW)
}

/// The three pieces of a message with a space between two that are there.
fn joined(head: &str, how: &str, points: &str) -> String {
    [head, how, points].into_iter().filter(|piece| !piece.is_empty()).collect::<Vec<_>>().join(" ")
}

/// As many whole words of a text as fit between what stands before and after it.
fn cut_to_room(text: &str, before: &str, after: &str) -> String {
    if has_room(&joined(before, text, after)) {
        return text.to_owned();
    }
    let mut kept = String::new();
    for word in text.split_whitespace() {
        let longer = if kept.is_empty() { word.to_owned() } else { format!("{kept} {word}") };
        if !has_room(&joined(before, &format!("{longer}{CUT}"), after)) {
            break;
        }
        kept = longer;
    }
    let is_sentence = kept.ends_with(['.', '!', '?']);
    if kept.is_empty() || is_sentence { kept } else { format!("{kept}{CUT}") }
}
