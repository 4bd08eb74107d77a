//! What the search on the front page looks in: the words of every session, as one small script that is
//! fetched when a family first searches, and that a page opened by double click can fetch too.
//!
//! A line a word, in order: one letter for how many letters it shares with the word before, the rest of it,
//! a tab, and the sessions it stands in. A session is its place in the list on the page; of places in order
//! the steps are written, five bits a letter, the lowest first; letters from the second half of the alphabet
//! below say that more bits follow. Words are in lower case; accents are folded by the page (`search.js`),
//! for both sides at once, so that the rule stands in one place.

use std::collections::{BTreeMap, BTreeSet};

use super::Site;
use crate::pack::Session;
use crate::prose::plain_line;

/// The path of the index below the folder of its language.
pub(super) const INDEX: &str = "static/words.js";

/// Thirty-two letters that end a step and thirty-two that do not.
const LETTERS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

/// How many letters two words can be said to share.
const MOST_SHARED: usize = 63;

/// The index of sessions in the order of the list.
pub(super) fn render_index<'s>(
    site: &Site<'_>,
    sessions: impl Iterator<Item = &'s Session>,
) -> Vec<u8> {
    let mut places: BTreeMap<String, Vec<usize>> = BTreeMap::new();
    for (place, session) in sessions.enumerate() {
        for word in words_of(site, session) {
            places.entry(word).or_default().push(place);
        }
    }
    // The lines hold letters, digits, tabs and line ends alone: nothing in them ends the quotes.
    format!("self.homegroundWords = `{}`;\n", lines_of(&places)).into_bytes()
}

fn lines_of(places: &BTreeMap<String, Vec<usize>>) -> String {
    let mut lines = String::new();
    let mut before = "";
    for (word, places) in places {
        let shared = shared_letters(before, word);
        let rest: String = word.chars().skip(shared).collect();
        lines.push(char::from(LETTERS[shared]));
        lines.push_str(&rest);
        lines.push('\t');
        let mut last = 0;
        for place in places {
            push_step(&mut lines, place - last);
            last = *place;
        }
        lines.push('\n');
        before = word;
    }
    lines
}

fn shared_letters(one: &str, other: &str) -> usize {
    let alike = one.chars().zip(other.chars()).take_while(|(a, b)| a == b).count();
    alike.min(MOST_SHARED)
}

fn push_step(lines: &mut String, mut step: usize) {
    while step > 31 {
        lines.push(char::from(LETTERS[32 + step % 32]));
        step /= 32;
    }
    lines.push(char::from(LETTERS[step]));
}

/// The words a family may look for: what it is called, what it is about, what it takes.
fn words_of(site: &Site<'_>, session: &Session) -> BTreeSet<String> {
    let mut texts = vec![plain_line(&session.title), plain_line(&session.summary)];
    texts.push(site.words.say(&format!("activity-{}", session.activity.word())));
    texts.extend(session.objectives.iter().map(|line| plain_line(line)));
    for need in &session.needs {
        texts.push(plain_line(&need.name));
        texts.extend(need.substitutes.iter().map(|other| plain_line(&other.thing)));
    }
    for part in &session.parts {
        texts.push(plain_line(&part.title));
        texts.extend(part.key_points.iter().map(|cue| plain_line(cue)));
    }
    let split = |c: char| !(c.is_alphanumeric() || is_mark(c));
    let words = texts.iter().flat_map(|text| text.split(split));
    words.map(str::to_lowercase).filter(|word| word.chars().count() > 1).collect()
}

/// Marks that combine with the letter before them, in the scripts that labels are shipped in (Unicode
/// general category Mn).
fn is_mark(c: char) -> bool {
    matches!(c, '\u{300}'..='\u{36f}' | '\u{610}'..='\u{61a}' | '\u{64b}'..='\u{65f}' | '\u{670}')
}

#[cfg(test)]
#[allow(clippy::cast_precision_loss, clippy::cast_possible_truncation, clippy::cast_sign_loss)]
mod tests {
    use super::*;

    #[test]
    fn words_share_their_beginnings_and_places_are_steps() {
        let places =
            BTreeMap::from([("jump".to_owned(), vec![0, 3, 40]), ("jumper".to_owned(), vec![1])]);
        // 37 is 5 and once 32: “5 and more”, then 1.
        assert_eq!(lines_of(&places), "Ajump\tADlB\nEer\tB\n");
    }

    /// Words fall off with their rank (Zipf): drawn so from the list of English words, 120 to a session, which
    /// is more than the sessions of the demo pack have.
    #[test]
    fn a_thousand_sessions_stay_under_300_kilobytes() {
        let list = include_str!("../../plan/reading/syllable_words.txt");
        let known: Vec<&str> = list
            .split(|c: char| !c.is_alphabetic())
            .filter(|word| word.chars().count() > 1)
            .collect();
        assert!(known.len() > 3000);
        let (mut seed, mut places) = (7_u64, BTreeMap::<String, Vec<usize>>::new());
        for place in 0..1000 {
            let mut words = BTreeSet::new();
            while words.len() < 120 {
                seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
                let chance = f64::from(u32::try_from(seed >> 33).unwrap()) / f64::from(1_u32 << 31);
                let rank = (known.len() as f64).powf(chance) as usize;
                words.insert(known[rank.min(known.len() - 1)].to_lowercase());
            }
            for word in words {
                places.entry(word).or_default().push(place);
            }
        }
        let bytes = lines_of(&places).len();
        assert!((50_000..300_000).contains(&bytes), "{bytes} bytes");
    }

    #[test]
    fn steps_of_any_length_are_written() {
        let mut lines = String::new();
        for step in [0, 31, 32, 1000] {
            push_step(&mut lines, step);
            lines.push(' ');
        }
        assert_eq!(lines, "A f gB of ");
    }
}
