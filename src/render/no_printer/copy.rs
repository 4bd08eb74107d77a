//! The card to copy by hand: title, minutes, things, cautions, and a line for each part.
//!
//! Adults copy about 22 words a minute by hand (C. M. Brown, “Human-Computer Interface Design
//! Guidelines”, 1988; the figure is from memory), so five minutes are 110 words. What must not be
//! missing stands there in any case: every part, the first caution, the first throw’s rules, and
//! that the rest is to be read first. Then come a key point for each part and the other cautions,
//! each whole or not at all.

use crate::pack::{Pack, Part, Session};
use crate::plan::Plans;
use crate::prose::{plain_line, plain_words};
use crate::render::phrases::{colon, comma, hold_together, need_name};
use crate::render::quantities::Said as _;
use crate::words::{Filling, Words};

/// Words a minute.
const SPEED: usize = 22;

/// Words that five minutes are enough for.
pub const MOST_WORDS: usize = 5 * SPEED;

/// The minutes that copying takes, the last one begun counted whole.
pub fn copy_minutes(lines: &[String]) -> u32 {
    let words: usize = lines.iter().map(|line| count_words(line)).sum();
    u32::try_from(words.div_ceil(SPEED)).unwrap_or(u32::MAX)
}

/// The lines to copy.
pub fn copy_lines(session: &Session, plans: &Plans, pack: &Pack, words: &Words) -> Vec<String> {
    let mut card = Card::of(session, plans, pack, words);
    let mut room = MOST_WORDS.saturating_sub(card.count());
    for (line, part) in card.parts.iter_mut().zip(&session.parts) {
        let Some(point) = part.key_points.first() else { continue };
        let point = format!(" – {}", plain_line(point));
        take_if_room(&mut room, &point, |text| line.push_str(&text));
    }
    for caution in cautions_of(session, pack).into_iter().skip(1) {
        take_if_room(&mut room, &caution, |text| card.cautions.push(text));
    }
    card.lines(words)
}

/// The pieces of a card, each a line.
struct Card {
    head: String,
    things: Option<String>,
    cautions: Vec<String>,
    rules: Option<String>,
    /// That all cautions are to be read before.
    read_first: String,
    parts: Vec<String>,
}

impl Card {
    /// With only what must not be missing.
    fn of(session: &Session, plans: &Plans, pack: &Pack, words: &Words) -> Self {
        let slot = hold_together(&session.slot.say(words));
        let spans = session.parts.iter().zip(&plans.time.spans).zip(1..);
        Self {
            head: format!("{}{}{slot}", plain_line(&session.title), comma(words)),
            things: things_of(session, words),
            cautions: cautions_of(session, pack).into_iter().take(1).collect(),
            rules: session.parts.iter().find_map(|part| rules_of(part, words)),
            read_first: words.say("no-printer-read"),
            parts: spans
                .map(|((part, span), number)| {
                    let time = hold_together(&span.total.say(words));
                    format!("{number}. {}{}{time}", plain_line(&part.title), comma(words))
                })
                .collect(),
        }
    }

    fn count(&self) -> usize {
        let texts = self.parts.iter().chain(&self.cautions).chain(&self.rules).chain(&self.things);
        let ends = [&self.head, &self.read_first];
        let texts = texts.chain(ends);
        LABEL + texts.map(|text| count_words(text)).sum::<usize>()
    }

    fn lines(self, words: &Words) -> Vec<String> {
        let care = self.cautions.into_iter().chain(self.rules).chain([self.read_first]);
        let care = care.collect::<Vec<_>>().join(" ");
        let care = format!("{}{}{care}", words.say("cautions"), colon(words));
        let before = [Some(self.head), self.things, Some(care)].into_iter().flatten();
        before.chain(self.parts).collect()
    }
}

/// “Take care:” before the cautions; no language here needs more words for it.
const LABEL: usize = 3;

fn take_if_room(room: &mut usize, text: &str, take: impl FnOnce(String)) {
    let length = count_words(text);
    if length <= *room {
        *room -= length;
        take(text.to_owned());
    }
}

/// What stands between spaces and holds a letter or a figure.
fn count_words(text: &str) -> usize {
    text.split_whitespace().filter(|word| word.contains(char::is_alphanumeric)).count()
}

/// “You need: 4 markers, a mat.”
pub(super) fn things_of(session: &Session, words: &Words) -> Option<String> {
    let names: Vec<String> = session.needs.iter().map(|need| need_name(need, words)).collect();
    let list = names.join(comma(words));
    (!list.is_empty())
        .then(|| words.say_with("no-printer-needs", &[("list", Filling::Text(&list))]))
}

/// The session’s own cautions, or the pack’s usual ones where it has none.
pub(super) fn cautions_of(session: &Session, pack: &Pack) -> Vec<String> {
    let own = if session.safety.is_empty() { &pack.cautions } else { &session.safety };
    own.iter().map(|caution| plain_words(caution)).collect()
}

/// Where things may land and when they are fetched, each under its name.
pub(super) fn rules_of(part: &Part, words: &Words) -> Option<String> {
    let rules = part.throw.as_ref()?;
    let rows =
        [("landing-zone", &rules.landing_zone), ("stop-and-collect", &rules.stop_and_collect)];
    let said: Vec<String> = rows
        .into_iter()
        .filter_map(|(key, rule)| {
            let rule = plain_line(rule.as_ref()?);
            Some(format!("{}{}{}.", words.say(key), colon(words), rule.trim_end_matches('.')))
        })
        .collect();
    (!said.is_empty()).then(|| said.join(" "))
}
