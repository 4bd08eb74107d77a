use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::reading::LongWord;
use crate::plan::{Plans, TextReading};

pub const RULE: Rule = Rule {
    code: "long-words-many",
    severity: Severity::Advice,
    asks: "Few words that a child reads have three or more syllables: at most 15 in a hundred.",
    why: "A word of the trade such as “balance” or “repetition” is worth learning; five in one sentence bury the \
          task. English only.",
    source: "Three syllables: McLaughlin 1969; the share is our own choice",
    bad: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: >-
    Gradually elevate both arms. Maintain every position motionless, breathing comfortably and
    continuously. Alternate the sides and finally relax your shoulders.
",
    good: "\
cool_down:
  title: Slow reach
  time: 4 min
  effort: light
  movements: [stretching]
  how: >-
    Slowly lift both arms. Hold each position still, and keep breathing out as long as it feels good.
    Change sides, and at the end let your shoulders hang.
",
    check: Check::Session(check),
};

/// Of a hundred words.
const MOST: u32 = 15;
/// In fewer words than this a share says nothing.
const FEWEST_WORDS: u32 = 20;
/// How many of them are named.
const NAMED: usize = 5;

fn check(session: &Session, plans: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    for text in plans.reading(session, pack).into_iter().flat_map(|reading| &reading.texts) {
        check_text(text, pack, notes);
    }
}

fn check_text(text: &TextReading, pack: &Pack, notes: &mut Notes<'_>) {
    let report = text.report();
    let (long, words) = (report.long_word_count(), report.counts.words);
    if words < FEWEST_WORDS || long * 100 <= MOST * words {
        return;
    }
    notes.find(
        pack.files.place_within(text.place, &report.long_words[0].word),
        format!(
            "{long} of the {words} words in this text have three or more syllables: {}.",
            named(&report.long_words)
        ),
        "Say it as you would in the hall, with short words, and keep the long ones that the session teaches.",
    );
}

/// “gradually”, “elevate”, …
fn named(words: &[LongWord]) -> String {
    let mut names: Vec<String> =
        words.iter().take(NAMED).map(|word| format!("“{}”", word.word)).collect();
    if words.len() > NAMED {
        names.push("…".into());
    }
    names.join(", ")
}
