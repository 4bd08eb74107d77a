//! Where a line of running text may break on paper, and where it must not: styled words → the same
//! words with soft hyphens inside long ones, and figures tied to their units.
//!
//! Syllables by Liang’s patterns (F. M. Liang, “Word hy-phen-a-tion by com-put-er”, 1983) for the
//! language, as the `hypher` crate has them; its English ones are American, so that British English has its own. How long a word must be and how narrow a column are
//! common practice. The shaper shows a soft hyphen only at the end of a line that breaks there.

use std::borrow::Cow;

use hypher::{Lang, hyphenate_bounded};

use super::bidi::is_arabic;
use super::british;
use super::scale::Type;
use super::shaper::{ShapedLine, Shaper};
use crate::prose::Run;

/// Invisible; a line may break after it and then ends in a hyphen.
pub const SOFT_HYPHEN: char = '\u{ad}';

const NO_BREAK_SPACE: char = '\u{a0}';

/// Shorter words stay whole: a child reads whole words best.
const SHORTEST: usize = 8;

/// Letters that stay together before and after a break.
const BEFORE: usize = 3;
const AFTER: usize = 3;

/// Lines of so many letters have room enough for whole words.
const WIDE: f32 = 45.0;

/// A line filled less than this is ragged; a fuller one is left as it is.
const RAGGED: f32 = 0.8;

/// A word broken on one line moves the lines after it: so often they are looked at anew.
const PASSES: usize = 4;

/// How wide a letter is on average, in sizes of the type.
const LETTER: f32 = 0.5;

/// What stays with the figure before it.
const UNITS: [&str; 12] = ["m", "cm", "mm", "km", "s", "min", "h", "g", "kg", "ml", "l", "°"];

/// Where English is written and broken as in the United States.
const AMERICAN: [&str; 3] = ["US", "CA", "PH"];

/// What words of a language are broken by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Hyphens {
    British,
    Of(Lang),
}

impl Hyphens {
    /// For a language by its BCP 47 tag; `None` where there are no patterns.
    pub fn of(tag: &str) -> Option<Self> {
        let mut subtags = tag.split(['-', '_']);
        let primary = subtags.next()?.to_ascii_lowercase();
        let is_american = subtags.any(|tag| AMERICAN.iter().any(|us| us.eq_ignore_ascii_case(tag)));
        if primary == "en" && !is_american {
            return Some(Self::British);
        }
        Lang::from_iso(primary.as_bytes().try_into().ok()?).map(Self::Of)
    }

    /// A word with a soft hyphen wherever it may break.
    fn soften(self, word: &str) -> String {
        match self {
            Self::British => {
                let mut softened = word.to_owned();
                for place in british::find_breaks(word, BEFORE, AFTER).into_iter().rev() {
                    softened.insert(place, SOFT_HYPHEN);
                }
                softened
            }
            Self::Of(language) => {
                hyphenate_bounded(word, language, BEFORE, AFTER).collect::<Vec<_>>().join("\u{ad}")
            }
        }
    }
}

/// Running text in lines. A long word is broken only where a line would else stay far too short.
/// Bold type is for what must be read at a glance: key points, labels and titles stay whole, and so
/// do links and addresses.
pub fn shape_running(
    shaper: &mut Shaper<'_>,
    runs: &[Run],
    kind: Type,
    width: f32,
) -> Vec<ShapedLine> {
    let mut runs = hold_figures(runs);
    if shaper.is_rtl() {
        runs = hold_directions(runs);
    }
    let mut lines = shaper.shape(&runs, kind, width);
    let is_narrow = width < WIDE * LETTER * kind.size;
    if !is_narrow || kind.is_bold {
        return lines;
    }
    for _ in 0..PASSES {
        // From the end, so that the places before stay where they are.
        let ragged = lines.iter().rev().skip(1).filter(|line| line.width < width * RAGGED);
        let places: Vec<usize> = ragged.map(|line| line.end).collect();
        if places.is_empty() {
            break;
        }
        let Some(hyphens) = shaper.passages.hyphens_of(&runs, shaper.hyphens) else { break };
        let softened =
            places.into_iter().filter(|at| soften_at(runs.to_mut(), *at, hyphens)).count();
        if softened == 0 {
            break;
        }
        lines = shaper.shape(&runs, kind, width);
    }
    lines
}

/// Each figure stays with the unit after it.
fn hold_figures(runs: &[Run]) -> Cow<'_, [Run]> {
    let has_figure = |run: &Run| held_spaces(&run.text).next().is_some();
    if !runs.iter().any(has_figure) {
        return Cow::Borrowed(runs);
    }
    runs.iter().map(|run| Run { text: hold_units(&run.text), ..run.clone() }).collect()
}

/// Runs from left to right though it is no letter, and is never drawn (Unicode, UAX 9).
pub const FROM_LEFT: char = '\u{200e}';

/// The same from right to left.
pub const FROM_RIGHT: char = '\u{200f}';

/// Latin words within a paragraph that runs from right to left keep to themselves: their full stop stays at their own end,
/// not at the paragraph’s, and a number that goes with the Arabic word after it is not drawn to them.
pub fn hold_directions(runs: Cow<'_, [Run]>) -> Cow<'_, [Run]> {
    let is_latin = |run: &Run| run.text.contains(|c: char| c.is_ascii_alphabetic());
    let is_arabic_run = |run: &Run| run.text.contains(is_arabic);
    if !runs.iter().any(is_arabic_run) || !runs.iter().any(is_latin) {
        return runs;
    }
    let letters: Vec<char> = runs.iter().flat_map(|run| run.text.chars()).collect();
    let (mut at, mut is_among_latin) = (0, false);
    let held = runs.iter().map(|run| {
        let mut text = String::with_capacity(run.text.len() + 6);
        for letter in run.text.chars() {
            let is_number = letter.is_ascii_digit() && !follows_digit(&letters[..at]);
            if is_number && is_among_latin && leads_to_arabic(&letters[at..]) {
                text.push(FROM_RIGHT);
            }
            if letter.is_alphabetic() {
                is_among_latin = !is_arabic(letter);
            }
            text.push(letter);
            at += 1;
        }
        if is_latin(run) && !is_arabic_run(run) {
            let end = text.trim_end_matches(' ').len();
            if text[..end].ends_with(['.', '!', '?', '…']) {
                text.insert(end, FROM_LEFT);
            }
        }
        Run { text, ..run.clone() }
    });
    held.collect()
}

/// Whether what follows goes on with a number.
fn follows_digit(before: &[char]) -> bool {
    before.iter().rev().find(|c| !matches!(c, '.' | ',')).is_some_and(char::is_ascii_digit)
}

/// Whether the next letter is an Arabic one.
fn leads_to_arabic(after: &[char]) -> bool {
    after.iter().find(|c| c.is_alphabetic()).is_some_and(|c| is_arabic(*c))
}

/// Lets the word that begins at a place of the whole text break; whether it can.
fn soften_at(runs: &mut [Run], at: usize, hyphens: Hyphens) -> bool {
    let mut start = 0;
    for run in runs {
        let end = start + run.text.len();
        if (start..end).contains(&at) {
            let (before, rest) = run.text.split_at(at - start);
            let length = rest.find(char::is_whitespace).unwrap_or(rest.len());
            let (word, after) = rest.split_at(length);
            let softened = soften_word(word, hyphens);
            let is_changed = run.link.is_none() && softened.len() > word.len();
            if is_changed {
                run.text = format!("{before}{softened}{after}");
            }
            return is_changed;
        }
        start = end;
    }
    false
}

/// “5 m” with a space that does not break.
fn hold_units(text: &str) -> String {
    let mut held = String::with_capacity(text.len() + 4);
    let mut from = 0;
    for space in held_spaces(text) {
        held.push_str(&text[from..space]);
        held.push(NO_BREAK_SPACE);
        from = space + 1;
    }
    held.push_str(&text[from..]);
    held
}

/// Where a space stands between a figure and its unit, or beside the sign of “3 m × 2 m”.
fn held_spaces(text: &str) -> impl Iterator<Item = usize> {
    let spaces = text.bytes().enumerate().filter(|(_, byte)| *byte == b' ').map(|(at, _)| at);
    spaces.filter(|at| {
        let (before, after) = (&text[..*at], &text[at + 1..]);
        let is_unit =
            before.as_bytes().last().is_some_and(u8::is_ascii_digit) && begins_with_unit(after);
        is_unit || before.ends_with('×') || after.starts_with('×')
    })
}

fn begins_with_unit(text: &str) -> bool {
    UNITS.iter().filter_map(|unit| text.strip_prefix(unit)).any(|after| {
        // “5 min” and “5 m²”, but not “5 more”; “20 °C”.
        text.starts_with('°') || !after.starts_with(char::is_alphabetic)
    })
}

/// A piece between spaces with a soft hyphen wherever it may break: one word with its signs around it,
/// or something that is no word (an address, a figure, a word with a hyphen of its own) and stays.
fn soften_word(piece: &str, hyphens: Hyphens) -> String {
    let is_sign = |c: char| !c.is_alphanumeric();
    let word = piece.trim_matches(is_sign);
    let is_word = word.chars().count() >= SHORTEST
        && word.chars().all(char::is_alphabetic)
        && !word.chars().all(char::is_uppercase);
    if !is_word {
        return piece.to_owned();
    }
    piece.replacen(word, &hyphens.soften(word), 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_long_words_may_break() {
        let broken = |word| soften_word(word, Hyphens::British).replace(SOFT_HYPHEN, "|");
        assert_eq!(broken("(extensive,"), "(extens|ive,");
        for whole in ["forward", "EXTENSIVE", "https://example.org/extensive", "side-stepping"] {
            assert_eq!(broken(whole), whole);
        }
    }

    #[test]
    fn the_word_at_the_place_breaks_but_no_link() {
        let link = Run { link: Some("a.html".into()), ..Run::plain("extensive") };
        let mut runs = [Run::plain("an extensive leap, "), link];
        assert!(soften_at(&mut runs, 3, Hyphens::British));
        assert_eq!(runs[0].text, "an extens\u{ad}ive leap, ");
        let end = runs[0].text.len();
        assert!(!soften_at(&mut runs, end, Hyphens::British));
    }

    #[test]
    fn latin_words_keep_to_themselves_among_arabic_ones() {
        let held = |runs: &[Run]| -> Vec<String> {
            hold_directions(Cow::Borrowed(runs)).iter().map(|run| run.text.clone()).collect()
        };
        let runs = ["قريب مدة 30 دقيقة. ", "Stay within call. ", "(2.4 m)"].map(Run::plain);
        assert_eq!(held(&runs), ["قريب مدة 30 دقيقة. ", "Stay within call.\u{200e} ", "(2.4 m)"]);
        let runs = ["المهارة 1: ", "Quiet mud", " · 12.5 دقائق"].map(Run::plain);
        assert_eq!(held(&runs), ["المهارة 1: ", "Quiet mud", " · \u{200f}12.5 دقائق"]);
        let latin = [Run::plain("Stay within call for 3 min.")];
        assert_eq!(held(&latin), [latin[0].text.clone()]);
    }

    #[test]
    fn figures_stay_with_their_units() {
        assert_eq!(hold_units("for 10 s, 5 more"), "for 10\u{a0}s, 5 more");
        assert_eq!(hold_units("of 3 m × 2.5 m"), "of 3\u{a0}m\u{a0}×\u{a0}2.5\u{a0}m");
        assert_eq!(
            hold_units("at 20 °C on 3 m² of 2 mats"),
            "at 20\u{a0}°C on 3\u{a0}m² of 2 mats"
        );
    }

    #[test]
    fn english_is_broken_as_it_is_spoken_there() {
        let broken =
            |tag| soften_word("important", Hyphens::of(tag).unwrap()).replace(SOFT_HYPHEN, "-");
        assert_eq!(["en-GB", "en", "en-IE"].map(broken), ["import-ant"; 3]);
        assert_eq!(["en-US", "en-Latn-CA"].map(broken), ["impor-tant"; 2]);
    }

    #[test]
    fn languages_without_patterns_keep_their_words() {
        assert_eq!(Hyphens::of("cy"), None);
        assert_eq!(Hyphens::of("ckb"), None);
        assert_eq!(Hyphens::of("de-AT"), Some(Hyphens::Of(Lang::German)));
    }
}
